import { parseArgs } from 'node:util'
import { turnList } from '../core/compare/turnList'
import { turnListText } from '../core/compare/turnListText'
import { areOneMachine } from '../core/compare/oneMachine'
import { oneOf } from './check'
import { areVersions } from './compare'
import { UsageError, type Outcome, type World } from './outcome'
import { readTwoStates } from './readState'
import { toSnakeCase } from './toSnakeCase'
import { forTerminal } from './forTerminal'

/** `detent turns`. */
export function turns(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: { format: { type: 'string', default: 'text' } } })
  const format = oneOf(values.format!, ['text', 'json'] as const, '--format')
  const [a, b] = readTwoStates('turns', positionals, world)
  for (const { ref } of [a, b]) if (ref.notebook.entries.length === 0) throw new UsageError(`${ref.file} has no entries yet`)
  const list = turnList(a.ref, b.ref, { oneMachine: areVersions(a, b) || areOneMachine(a.ref.notebook, b.ref.notebook) })
  if (list.refused !== undefined) throw new UsageError(list.refused)
  return { out: format === 'json' ? `${JSON.stringify(toSnakeCase({ version: 1, turn_list: list }), null, 2)}\n` : forTerminal(turnListText(list)), code: list.cannot.length > 0 ? 1 : 0 }
}
