import type { LogReport, LogRequest } from '../../core/logs/analyseLog'

/** How the bytes of a log are got at and worked on, away from what is typed. Both fail with a sentence where the file cannot be read. */
export interface LogReader {
  /** One and the same for two files of the same content. */
  fingerprint(file: LogFile, signal: AbortSignal): Promise<string>
  /** Its first bytes, unpacked, as many as tell how it is written. */
  head(file: LogFile): Promise<Uint8Array>
  /** `progress` hears how many bytes are done. */
  analyse(file: LogFile, request: LogRequest, how: { signal: AbortSignal; progress: (bytes: number) => void }): Promise<LogReport>
  dispose(): void
}

/** A log as it was found: its place, as VS Code and as this machine call it, and how it looked from outside. */
export interface LogFile {
  uri: string
  /** Its path on this machine; absent where the file is on none. */
  path?: string
  size: number
  changed: number
}

/** Thrown where a reading was ended early, by a person or because nobody wants it any more. */
export class Stopped extends Error {}
