import { parseArgs } from 'node:util'
import { exportNotebook } from '../core/export/exportNotebook'
import { toCsv } from '../core/export/toCsv'
import { oneOf } from './check'
import { readWhole } from './readWhole'
import { UsageError, type Outcome, type World } from './outcome'

export const exportUsage = `detent export FILE [--format json|csv]

Prints every entry with where everything stands and what follows from its measurements. Names carry their units, and
<name>_u is the standard uncertainty of <name>. A number that is not known is left out (json) or empty (csv).
Under derived: front and rear static_sag_mm, rider_sag_mm, static_sag_pct, rider_sag_pct, friction_mm,
wheel_rate_n_per_mm; geometry rake_deg, trail_mm, normal_trail_mm, wheelbase_mm; bounce front and rear damping_ratio,
damped_hz, natural_hz. Under ride: front_travel_used_mm, rear_travel_used_mm and log, the path of the ride's log.`

/** `detent export`. */
export function exportFile(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: { format: { type: 'string', default: 'json' } } })
  const format = oneOf(values.format!, ['json', 'csv'] as const, '--format')
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('export: name one file')
  const exported = exportNotebook(readWhole(path, world))
  return { out: format === 'json' ? `${JSON.stringify(exported, null, 2)}\n` : toCsv(exported), code: 0 }
}
