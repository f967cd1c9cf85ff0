// What runs on a thread of its own: the rows of a large log for the command line, whole logs for the editor, beside which
// this program alone ships.
import { isMainThread, workerData } from 'node:worker_threads'
import { serveLogs } from './logThread'
import { serveRows } from './rowsThread'

if (!isMainThread) {
  if ((workerData as { rows?: unknown } | null)?.rows) void serveRows()
  else serveLogs()
}
