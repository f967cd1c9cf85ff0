import { forTerminal } from './forTerminal'
import { isUsageError, type Outcome } from './outcome'

export function wantsHelp(args: readonly string[]): boolean {
  return args.includes('--help') || args.includes('-h')
}

/** What the person has to put right is told; anything else is ours, and thrown on. */
export function toldOrThrown(name: string, error: unknown): Outcome {
  if (isUsageError(error) || isOptionError(error)) return { out: '', err: `detent ${name}: ${forTerminal((error as Error).message)}\n`, code: 2 }
  throw error
}

/** parseArgs throws these for options it does not know. */
function isOptionError(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')
}
