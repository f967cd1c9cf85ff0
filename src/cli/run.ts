import { advise, adviseUsage } from './advise'
import { check, checkUsage } from './check'
import { compare, compareUsage } from './compare'
import { exportFile, exportUsage } from './export'
import { merge, mergeUsage } from './merge'
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
}

const usage = `detent: setup notebooks for motorcycle suspension

${Object.values(commands).map((command) => command.usage.split('\n')[0]).join('\n')}

detent COMMAND --help tells more.`

/** Runs a command line. Everything a person can get wrong ends in exit code 2 and a sentence, never in a stack. */
export function run(args: readonly string[], world: World): Outcome {
  const [name, ...rest] = args
  if (name === undefined) return { out: '', err: `${usage}\n`, code: 2 }
  if (name === '--help' || name === '-h' || name === 'help') return { out: `${usage}\n`, code: 0 }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined
  if (!command) return { out: '', err: `detent: there is no command ‘${name}’; there are ${Object.keys(commands).join(', ')}\n`, code: 2 }
  if (rest.includes('--help') || rest.includes('-h')) return { out: `${command.usage}\n`, code: 0 }
  try {
    return command.run(rest, world)
  } catch (error) {
    if (error instanceof UsageError || isOptionError(error)) return { out: '', err: `detent ${name}: ${(error as Error).message}\n`, code: 2 }
    throw error
  }
}

/** parseArgs throws these for options it does not know. */
function isOptionError(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')
}
