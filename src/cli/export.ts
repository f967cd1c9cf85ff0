import { parseArgs } from 'node:util'
import { exportNotebook } from '../core/export/exportNotebook'
import { toCsv } from '../core/export/toCsv'
import { oneOf } from './check'
import { readWhole } from './readWhole'
import { UsageError, type Outcome, type World } from './outcome'

/** `detent export`. */
export function exportFile(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: { format: { type: 'string', default: 'json' } } })
  const format = oneOf(values.format!, ['json', 'csv'] as const, '--format')
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('export: name one file')
  const exported = exportNotebook(readWhole(path, world))
  return { out: format === 'json' ? `${JSON.stringify(exported, null, 2)}\n` : toCsv(exported), code: 0 }
}
