import { logPathsOf, logRequestOf, withLogs } from '../core/derived/logOf'
import { analyseLog, type LogReport } from '../core/logs/analyseLog'
import type { LogAtHand } from '../core/logs/atHand'
import { told } from '../core/logs/problem'
import type { Entry, Notebook } from '../core/notebook/notebook'
import { isUsageError, type World } from './outcome'

/** Of which entries logs are wanted, where not of all, and what is known of logs already, for whoever asks several times. */
interface Wanted {
  entries?: readonly Entry[]
  known?: Map<string, LogAtHand>
}

/**
 * A notebook with the logs its entries name, as far as they lie beside it: one that is elsewhere says nothing here, for
 * logs need not travel to where notebooks are checked. Without a `logger` none is read.
 */
export async function withLogsBeside(path: string, notebook: Notebook, world: World, { entries = notebook.entries, known = new Map() }: Wanted = {}): Promise<Notebook> {
  const request = logRequestOf(notebook)
  if (!request || !world.stream || !world.logBeside || path === '-') return notebook
  const logs = new Map<string, LogAtHand>()
  for (const log of logPathsOf({ entries })) {
    const found = world.logBeside(path, log)
    if (!found) continue
    const key = JSON.stringify([found, request])
    const atHand: LogAtHand = known.get(key) ?? ('why' in found ? { state: 'unread', stamp: log, why: found.why } : await read(found.path, request, world))
    known.set(key, atHand)
    logs.set(log, atHand)
  }
  return withLogs(notebook, logs.size > 0 ? logs : undefined)
}

async function read(path: string, request: Parameters<typeof analyseLog>[0], world: World): Promise<LogAtHand> {
  try {
    const analysis = analyseLog(request)
    for await (const chunk of world.stream!(path)) if (!analysis.feed(chunk)) break
    return atHand(analysis.end(), path)
  } catch (error) {
    if (!isUsageError(error)) throw error
    return { state: 'unread', stamp: path, why: error.message.replace(`${path}: `, '') }
  }
}

/** What a report says, as what is known of a log. */
export function atHand({ statistics, ...report }: LogReport, stamp: string): LogAtHand {
  return statistics ? { ...report, statistics, state: 'read', stamp } : { state: 'unread', stamp, why: told(report.problem!) }
}
