import { parseArgs } from 'node:util'
import { compareStates } from '../core/compare/compareStates'
import { areOneMachine } from '../core/compare/oneMachine'
import { comparisonReport } from '../core/compare/report/comparisonReport'
import type { Block } from '../core/compare/report/report'
import { reportMarkdown } from '../core/compare/report/reportMarkdown'
import { reportText } from '../core/compare/report/reportText'
import { reviewReport } from '../core/compare/report/reviewReport'
import { reviewNotebooks } from '../core/compare/reviewNotebooks'
import { oneOf } from './check'
import { UsageError, type Outcome, type World } from './outcome'
import { readTwoStates, type ReadState } from './readState'
import { toSnakeCase } from './toSnakeCase'

const printers: Record<'text' | 'markdown', (blocks: readonly Block[]) => string> = { text: reportText, markdown: reportMarkdown }

/** `detent compare`. */
export function compare(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: { format: { type: 'string', default: 'text' } } })
  const format = oneOf(values.format!, ['text', 'markdown', 'json'] as const, '--format')
  const [a, b] = readTwoStates('compare', positionals, world)
  const oneMachine = areVersions(a, b) || areOneMachine(a.ref.notebook, b.ref.notebook)
  if (oneMachine && a.spec.entry === undefined && b.spec.entry === undefined) {
    const review = reviewNotebooks(a.ref, b.ref)
    return { out: format === 'json' ? asJson({ review }) : printers[format](reviewReport(review)), code: 0 }
  }
  for (const { ref } of [a, b]) if (ref.notebook.entries.length === 0) throw new UsageError(`${ref.file} has no entries yet`)
  const comparison = compareStates(a.ref, b.ref, { oneMachine })
  return { out: format === 'json' ? asJson({ comparison }) : printers[format](comparisonReport(comparison)), code: 0 }
}

/** One path at two times is one machine, whatever it was called then. */
export function areVersions(a: ReadState, b: ReadState): boolean {
  return a.spec.path === b.spec.path
}

function asJson(told: object): string {
  return `${JSON.stringify(toSnakeCase({ version: 1, ...told }), null, 2)}\n`
}
