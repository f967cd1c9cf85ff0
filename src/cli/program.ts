import { disk } from './disk'
import { mayColour, onThisMachine } from './onThisMachine'
import { start } from './run'

/**
 * Runs the command line on this machine.
 *
 * @param script the program itself, to be started again as a thread
 */
export function program(args: readonly string[], script: string): Promise<void> {
  return onThisMachine(() => start(args, { ...disk, threadScript: script, colour: mayColour() }))
}
