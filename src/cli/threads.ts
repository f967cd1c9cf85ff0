// What runs on a thread of its own: the rows of a large log for the command line, whole logs for the editor, beside which
// this program alone ships.
import { isMainThread, workerData } from 'node:worker_threads'
import { speak, type Catalogue } from '../core/words/say'
import { serveLogs } from './logThread'
import { serveRows } from './rowsThread'

if (!isMainThread) {
  const begunWith = workerData as { rows?: unknown; words?: Catalogue } | null
  if (begunWith?.rows) serveRows()
  else {
    // A thread knows nothing of what was said to the others, also not of the language.
    speak(begunWith?.words)
    serveLogs()
  }
}
