// `detent check` by itself: hooks and pipelines run it over and over, and most of what the other commands load is nothing to it.
import { checkWithLogs } from './check'
import { checks, serveChecks } from './checkThreads'
import { files } from './files'
import { mayColour, onThisMachine } from './onThisMachine'
import { toldOrThrown } from './toldOrThrown'

/** What it does on each of its further threads. */
export const serve = (): Promise<void> => serveChecks(files)

/** Runs `detent check` with its arguments; what `program` does with all others, which knows it too. */
export function checkProgram(args: readonly string[], script: string): Promise<void> {
  return onThisMachine(() => checkWithLogs(args, { ...files, checks, threadScript: script, colour: mayColour() }).catch((error) => toldOrThrown('check', error)))
}
