import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { logPathsOf, logRequestOf, withLogs } from '../../src/core/derived/logOf'
import { analyseLog } from '../../src/core/logs/analyseLog'
import type { LogAtHand } from '../../src/core/logs/atHand'
import { told } from '../../src/core/logs/problem'
import type { Notebook } from '../../src/core/notebook/notebook'

const read = new Map<string, LogAtHand>()

/** A notebook with its logs at hand, as they lie below a folder; as it is where not one of them is there. */
export function withLogsFrom(folder: string, notebook: Notebook): Notebook {
  const paths = logPathsOf(notebook)
  return withLogs(notebook, paths.some((path) => existsSync(join(folder, path))) ? new Map(paths.map((path) => [path, readOnce(join(folder, path), notebook)])) : undefined)
}

function readOnce(path: string, notebook: Notebook): LogAtHand {
  const request = logRequestOf(notebook)
  const key = path + JSON.stringify(request)
  const log = read.get(key) ?? readLog(path, request)
  read.set(key, log)
  return log
}

function readLog(path: string, request: ReturnType<typeof logRequestOf>): LogAtHand {
  const stamp = path
  if (!existsSync(path)) return { state: 'unread', stamp, absent: true, why: 'there is no such file' }
  if (!request) return { state: 'unread', stamp, why: 'the notebook does not say which column is what' }
  const analysis = analyseLog(request)
  analysis.feed(readFileSync(path))
  const { statistics, ...report } = analysis.end()
  return statistics ? { ...report, statistics, state: 'read', stamp } : { state: 'unread', stamp, why: told(report.problem!) }
}
