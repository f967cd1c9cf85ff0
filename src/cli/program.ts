import type { Worker } from 'node:worker_threads'
import { disk } from './disk'
import { mayColour, onThisMachine } from './onThisMachine'
import { rowsFrom } from './rowsThread'
import { start } from './run'

/**
 * Runs the command line on this machine.
 *
 * @param script the program itself, to be started again as a thread
 * @param thread waits for the rows of a large log, where one is asked for
 */
export function program(args: readonly string[], script: string, thread: Worker | undefined): Promise<void> {
  return onThisMachine(() => start(args, { ...disk, threadScript: script, ...(thread ? { rows: rowsFrom(thread) } : {}), colour: mayColour() }))
}
