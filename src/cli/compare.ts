import { parseArgs } from 'node:util'
import { compareStates } from '../core/compare/compareStates'
import { heldAs } from '../core/compare/heldAs'
import { areOneMachine } from '../core/compare/oneMachine'
import { comparisonReport } from '../core/compare/report/comparisonReport'
import type { Block } from '../core/compare/report/report'
import { reportMarkdown } from '../core/compare/report/reportMarkdown'
import { reportText } from '../core/compare/report/reportText'
import { reviewReport } from '../core/compare/report/reviewReport'
import { reviewNotebooks } from '../core/compare/reviewNotebooks'
import { logPathsOf } from '../core/derived/logOf'
import type { LogAtHand } from '../core/logs/atHand'
import { oneOf } from './check'
import { withLogsBeside } from './logsBeside'
import { UsageError, type Outcome, type World } from './outcome'
import { readTwoStates, type ReadState } from './readState'
import { toSnakeCase } from './toSnakeCase'

const printers: Record<'text' | 'markdown', (blocks: readonly Block[]) => string> = { text: reportText, markdown: reportMarkdown }

interface Plan {
  sides: [ReadState, ReadState]
  format: 'text' | 'markdown' | 'json'
  logs: boolean
}

/** `detent compare`, without a look at logs. */
export function compare(args: readonly string[], world: World): Outcome {
  return report(planOf(args, world))
}

/** `detent compare`, with the logs of the entries it is about, where they lie beside the notebook now. */
export async function compareWithLogs(args: readonly string[], world: World): Promise<Outcome> {
  const plan = planOf(args, world)
  return report(plan.logs ? { ...plan, sides: await withLogsOf(plan.sides, world) } : plan)
}

function planOf(args: readonly string[], world: World): Plan {
  const { values, positionals } = parseArgs({
    args: [...args], allowPositionals: true, options: { format: { type: 'string', default: 'text' }, 'no-logs': { type: 'boolean', default: false } },
  })
  const format = oneOf(values.format!, ['text', 'markdown', 'json'] as const, '--format')
  return { sides: readTwoStates('compare', positionals, world), format, logs: !values['no-logs'] }
}

function report({ sides: [a, b], format }: Plan): Outcome {
  if (isReview(a, b)) {
    const review = reviewNotebooks(a.ref, b.ref)
    return { out: format === 'json' ? asJson({ review }) : printers[format](reviewReport(review)), code: 0 }
  }
  for (const { ref } of [a, b]) if (ref.notebook.entries.length === 0) throw new UsageError(`${ref.file} has no entries yet`)
  const comparison = compareStates(a.ref, b.ref, { oneMachine: isOneMachine(a, b) })
  return { out: format === 'json' ? asJson({ comparison }) : printers[format](comparisonReport(comparison)), code: 0 }
}

const isOneMachine = (a: ReadState, b: ReadState): boolean => areVersions(a, b) || areOneMachine(a.ref.notebook, b.ref.notebook)

/** Two versions of one notebook as a whole. */
const isReview = (a: ReadState, b: ReadState): boolean => isOneMachine(a, b) && a.spec.entry === undefined && b.spec.entry === undefined

async function withLogsOf([a, b]: Plan['sides'], world: World): Promise<Plan['sides']> {
  if (logPathsOf(a.ref.notebook).length + logPathsOf(b.ref.notebook).length === 0) return [a, b]
  const keys = isReview(a, b) ? new Set(reviewNotebooks(a.ref, b.ref).entries.flatMap(({ key, from, was }) => [key, from, was])) : undefined
  const known = new Map<string, LogAtHand>()
  const read = async ({ spec, ref }: ReadState): Promise<ReadState> => {
    const { entries } = ref.notebook
    const wanted = keys ? entries.filter(({ key }) => keys.has(key)) : [ref.entry ?? entries.at(-1)].filter((entry) => entry !== undefined)
    if (logPathsOf({ entries: wanted }).length === 0) return { spec, ref }
    const notebook = await withLogsBeside(spec.path, ref.notebook, world, { entries: wanted, known })
    const readOnly = spec.revision === undefined || !notebook.logs ? {} : { readOnly: heldAs(notebook, spec.revision || undefined) }
    return { spec, ref: { ...ref, notebook, ...readOnly } }
  }
  return [await read(a), await read(b)]
}

/** One path at two times is one machine, whatever it was called then. */
export function areVersions(a: ReadState, b: ReadState): boolean {
  return a.spec.path === b.spec.path
}

function asJson(told: object): string {
  return `${JSON.stringify(toSnakeCase({ version: 1, ...told }), null, 2)}\n`
}
