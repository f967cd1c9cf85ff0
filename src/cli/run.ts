import { advise, adviseUsage } from './advise'
import { check, checkUsage, checkWithLogs } from './check'
import { compare, compareUsage } from './compare'
import { exportFile, exportUsage } from './export'
import { forTerminal } from './forTerminal'
import { log, logUsage } from './log'
import { merge, mergeUsage } from './merge'
import { migrate, migrateUsage } from './migrate'
import { newNotebook, newUsage } from './newNotebook'
import { UsageError, type Outcome, type World } from './outcome'
import { show, showUsage } from './show'
import { turns, turnsUsage } from './turns'

/** The commands by name: what each prints on --help, and what it does. */
const commands: Record<string, { usage: string; run: (args: readonly string[], world: World) => Outcome }> = {
  check: { usage: checkUsage, run: check },
  show: { usage: showUsage, run: show },
  compare: { usage: compareUsage, run: compare },
  turns: { usage: turnsUsage, run: turns },
  new: { usage: newUsage, run: newNotebook },
  export: { usage: exportUsage, run: exportFile },
  merge: { usage: mergeUsage, run: merge },
  advise: { usage: adviseUsage, run: advise },
  migrate: { usage: migrateUsage, run: migrate },
}

/** Commands that read a file as it comes, which takes its time; `check` is one of both, with logs and without. */
const streaming: Record<string, { usage: string; run: (args: readonly string[], world: World) => Promise<Outcome> }> = {
  log: { usage: logUsage, run: log },
  check: { usage: checkUsage, run: checkWithLogs },
}

const usage = `detent: setup notebooks for motorcycle suspension

${Object.values({ ...commands, ...streaming }).map((command) => command.usage.split('\n')[0]).join('\n')}

detent COMMAND --help tells more.`

/** Runs a command line, also one that reads a file as it comes. */
export async function start(args: readonly string[], world: World): Promise<Outcome> {
  const [name = '', ...rest] = args
  const command = Object.hasOwn(streaming, name) ? streaming[name] : undefined
  if (!command) return run(args, world)
  if (wantsHelp(rest)) return { out: `${command.usage}\n`, code: 0 }
  try {
    return await command.run(rest, world)
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
  if (!command) return { out: '', err: `detent: there is no command ‘${forTerminal(name)}’; there are ${Object.keys({ ...commands, ...streaming }).join(', ')}\n`, code: 2 }
  if (wantsHelp(rest)) return { out: `${command.usage}\n`, code: 0 }
  try {
    return command.run(rest, world)
  } catch (error) {
    return toldOrThrown(name, error)
  }
}

function wantsHelp(args: readonly string[]): boolean {
  return args.includes('--help') || args.includes('-h')
}

/** What the person has to put right is told; anything else is ours, and thrown on. */
function toldOrThrown(name: string, error: unknown): Outcome {
  if (error instanceof UsageError || isOptionError(error)) return { out: '', err: `detent ${name}: ${forTerminal((error as Error).message)}\n`, code: 2 }
  throw error
}

/** parseArgs throws these for options it does not know. */
function isOptionError(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')
}
