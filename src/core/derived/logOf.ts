import type { CloserLook, LogAtHand, LogsAtHand, ReadLog } from '../logs/atHand'
import type { LogRequest } from '../logs/analyseLog'
import type { EndName } from '../logs/mapping/mapping'
import type { EndStatistics } from '../logs/statistics/logStatistics'
import type { Outcome } from '../compute/working/result'
import { readLogPath } from '../notation/logPath'
import { fieldNode } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import type { MapNode } from '../notebook/tree'
import { say } from '../words/say'
import { loggerOf, logFactsOf, logGeometryOf } from './loggerOf'

const paths = new WeakMap<MapNode, { path: string | undefined }>()

/** The log an entry names, from the notebook's folder down; `undefined` for none, and for one that must not be opened. */
export function logPathOf(entry: Entry): string | undefined {
  const known = paths.get(entry.node)
  if (known) return known.path
  const node = fieldNode(entry, 'ride.log')
  const path = node && readLogPath(node.text).value
  paths.set(entry.node, { path })
  return path
}

/** Every log that entries name, each once, in their order. */
export function logPathsOf({ entries }: Pick<Notebook, 'entries'>): string[] {
  return [...new Set(entries.flatMap((entry) => logPathOf(entry) ?? []))]
}

/** How a log of this machine is to be read; `undefined` where the notebook does not say which column is what. */
export function logRequestOf(notebook: Notebook): LogRequest | undefined {
  const [mapping, geometry] = [loggerOf(notebook), logGeometryOf(notebook)]
  return mapping && { mapping, facts: logFactsOf(notebook), ...(geometry ? { geometry } : {}) }
}

/** The notebook with what is known of its logs; the same one where there is nothing to know. */
export function withLogs(notebook: Notebook, logs: LogsAtHand | undefined): Notebook {
  return logs ? { ...notebook, logs } : notebook
}

/** The notebook with a closer look at one of its logs; the same one where that log is not read. */
export function withCloserLook(notebook: Notebook, path: string, closer: CloserLook | 'reading'): Notebook {
  const log = notebook.logs?.get(path)
  return log?.state === 'read' ? { ...notebook, logs: new Map([...notebook.logs!, [path, { ...log, closer }]]) } : notebook
}

/** What is known of the log of an entry; `undefined` where it names none, or nobody looks for logs. */
export function logAtHandOf({ logs }: Notebook, entry: Entry): LogAtHand | undefined {
  if (!logs) return undefined
  const path = logPathOf(entry)
  return path === undefined ? undefined : logs.get(path)
}

/** The log of an entry that was read. */
export function readLogOf(notebook: Notebook, entry: Entry): Outcome<ReadLog> {
  const log = logAtHandOf(notebook, entry)
  if (!log) return { missing: [say('a log of this ride')] }
  switch (log.state) {
    case 'reading': return { missing: [say('the log, which is being read')] }
    case 'unread': return { missing: [say`a log that can be read: ${say(log.why)}`] }
    case 'read': return log
  }
}

/** One end of it. */
export function endOfLog(notebook: Notebook, entry: Entry, end: EndName): Outcome<{ log: ReadLog; end: EndStatistics }> {
  const log = readLogOf(notebook, entry)
  if ('missing' in log) return log
  const found = log.statistics[end]
  return found ? { log, end: found } : { missing: [say`a column of the ${say(end)} in the log`] }
}
