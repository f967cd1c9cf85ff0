import type { CheckedFile } from './checkedFile'
import type { RowsThread } from './rowsThread'

/** What a command came to: what it prints and its exit code. Commands print nothing themselves, so that they are tested without a process. */
export interface Outcome {
  out: string
  err?: string
  /** 0 clean, 1 findings at or above the threshold, 2 usage or unreadable input. */
  code: 0 | 1 | 2
}

/** Something the person has to put right: told on standard error, exit code 2. */
export class UsageError extends Error {
  override name = 'UsageError'
}

/** By its name, for what is loaded by a file of its own has a class of its own. */
export function isUsageError(error: unknown): error is UsageError {
  return error instanceof Error && error.name === 'UsageError'
}

/** The world as commands see it. */
export interface World {
  /** @throws UsageError where it cannot be read */
  read: (path: string) => string
  /**
   * The bytes of a file as they come, unpacked where it is packed; each chunk is good until the next is asked for.
   * Absent where commands get no bytes. @throws UsageError where it cannot be read
   */
  stream?: (path: string) => AsyncIterable<Uint8Array>
  /** Another thread that waits for the rows of a large log, to be stopped by whoever reads them; absent where it is not worth one. */
  rows?: RowsThread
  /** Checks many files on several threads; `undefined` where that is not worth it. @throws UsageError where one cannot be read */
  checks?: (script: string, paths: readonly string[], logs: boolean) => Promise<CheckedFile[]> | undefined
  /** The program that serves as such a thread. */
  threadScript?: string
  /**
   * Where a log lies that a notebook names, or why it must not be opened; `undefined` where there is no such file.
   * Links are not followed: they would lead out of the folder.
   */
  logBeside?: (notebook: string, log: string) => { path: string } | { why: string } | undefined
  /** Whether two paths are one file. */
  isSame?: (one: string, other: string) => boolean
  /** Whether what is printed may be coloured: it goes to a terminal, and nobody has said no. */
  colour?: boolean
  /** Writes a new file. @throws UsageError where one is there already, or it cannot be written */
  create: (path: string, text: string) => void
  /** Writes a file, over what is there. @throws UsageError where it cannot be written */
  write: (path: string, text: string) => void
  /** This day, `YYYY-MM-DD`. */
  today: () => string
  /** The notebooks under files and folders, sorted; a file named itself is taken whatever its name. */
  find: (paths: readonly string[]) => string[]
  /** Absent where commands get no sight of revisions. */
  git?: Git
}

/** The revisions of files. */
export interface Git {
  /** The nearest folder above a path that exists, as it was typed (empty for this one), and the rest of the path with `/` between. */
  folderOf: (path: string) => { folder: string; rest: string }
  /** Runs git in a folder; `undefined` where there is no git on this machine. */
  run: (folder: string, args: readonly string[]) => GitAnswer | undefined
}

/** What git said: its exit code and what it printed. */
export interface GitAnswer {
  code: number
  out: string
  err: string
}
