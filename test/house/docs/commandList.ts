import type { World } from '../../../src/cli/outcome'
import { run } from '../../../src/cli/run'

/** The commands of the command line, each with its options, as `detent --help` prints them. */
export function commandList(): string {
  const world: World = { find: () => [], create: () => undefined, write: () => undefined, today: () => '2026-04-18', read: () => '' }
  const lines = run(['--help'], world).out.split('\n').filter((line) => line.startsWith('detent ') && !line.includes('COMMAND'))
  if (lines.length < 2) throw new Error('detent --help names no commands')
  return ['```', ...lines, '```'].join('\n')
}
