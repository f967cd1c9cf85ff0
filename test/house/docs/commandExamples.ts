import { readFileSync } from 'node:fs'
import { run } from '../../../src/cli/run'
import type { World } from '../../../src/cli/outcome'

/** A command line on the samples with what it really prints. */
export function commandExample(...args: string[]): string {
  const world: World = { find: () => [], create: () => undefined, write: () => undefined, today: () => '2026-04-18', read: (path) => readFileSync(path, 'utf8') }
  const { out, code } = run(args, world)
  if (code !== 0) throw new Error(`detent ${args.join(' ')} does not run`)
  return ['```', `$ detent ${args.join(' ')}`, out.trimEnd(), '```'].join('\n')
}
