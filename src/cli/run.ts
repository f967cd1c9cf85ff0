import { advise } from './advise'
import { check, checkWithLogs } from './check'
import { compare, compareWithLogs } from './compare'
import { exportFile } from './export'
import { log } from './log'
import { merge } from './merge'
import { forTerminal } from './forTerminal'
import { migrate } from './migrate'
import { kindList, newNotebook } from './newNotebook'
import type { Outcome, World } from './outcome'
import { show } from './show'
import { toldOrThrown, wantsHelp } from './toldOrThrown'
import { completion } from './completion'
import { turns } from './turns'
import { usage, usages } from './usages'

/** The commands by name. */
const commands: Record<string, (args: readonly string[], world: World) => Outcome> = {
  check,
  show,
  compare,
  turns,
  new: newNotebook,
  export: exportFile,
  merge,
  advise,
  migrate,
  completion,
}

/** Commands that read a file as it comes, which takes its time; `check` and `compare` are of both, with logs and without. */
const streaming: Record<string, (args: readonly string[], world: World) => Promise<Outcome>> = {
  log,
  check: checkWithLogs,
  compare: compareWithLogs,
}

/** Runs a command line, also one that reads a file as it comes. */
export async function start(args: readonly string[], world: World): Promise<Outcome> {
  const [name = '', ...rest] = args
  const command = Object.hasOwn(streaming, name) ? streaming[name] : undefined
  if (!command) return run(args, world)
  if (wantsHelp(rest)) return { out: helpOf(name), code: 0 }
  try {
    return await command(rest, world)
  } catch (error) {
    return toldOrThrown(name, error)
  }
}

/** Runs a command line at once. Everything a person can get wrong ends in exit code 2 and a sentence, never in a stack. */
export function run(args: readonly string[], world: World): Outcome {
  const [name, ...rest] = args
  if (name === undefined) return { out: '', err: `${usage}\n`, code: 2 }
  if (name === '--help' || name === '-h' || name === 'help') return { out: `${usage}\n`, code: 0 }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined
  if (!command) return { out: '', err: `detent: there is no command ‘${forTerminal(name)}’; there are ${Object.keys(usages).join(', ')}\n`, code: 2 }
  if (wantsHelp(rest)) return { out: helpOf(name), code: 0 }
  try {
    return command(rest, world)
  } catch (error) {
    return toldOrThrown(name, error)
  }
}

function helpOf(name: string): string {
  return `${usages[name]}\n${name === 'new' ? `\n${kindList()}\n` : ''}`
}
