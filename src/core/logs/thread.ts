import type { LogReport, LogRequest } from './analyseLog'

/** What a thread of its own is asked about a log, one after the other. */
export type LogTask = { id: number; path: string } & ({ kind: 'fingerprint' } | { kind: 'head' } | { kind: 'analyse'; request: LogRequest })

/** What it answers: how far it is, then what it found, or why the file cannot be read. */
export type LogAnswer = { id: number } & ({ bytes: number } | { fingerprint: string } | { head: Uint8Array } | { report: LogReport } | { unreadable: string })
