import type { CompareSide } from '../../../src/core/compare/comparison'
import type { CompareView, SideName, StateSource } from '../../../src/protocol'
import { say } from '../strings'

export const sideNames = ['left', 'right'] as const

export const otherSide = (side: SideName): SideName => (side === 'left' ? 'right' : 'left')

/** Whether a side has a state that can be compared. */
export const isReadable = ({ entry, trouble, missing }: CompareSide): boolean => entry !== undefined && !trouble && missing === undefined

/** What a side is called in a word or two: its entry; where both have the same, with what tells them apart. */
export function sideName({ comparison, sources }: CompareView, side: SideName): string {
  const [mine, other] = [comparison[side], comparison[otherSide(side)]]
  if (!mine.entry) return fileName(mine.file)
  if (mine.entry.key !== other.entry?.key) return mine.entry.key
  const version = versionWords(sources[side]) || (sources.left.uri === sources.right.uri ? '' : fileName(mine.file))
  return version ? say('side.named', mine.entry.key, version) : mine.entry.key
}

function versionWords({ revision, saved }: StateSource): string {
  if (revision === undefined) return saved ? say('side.saved') : ''
  return revision === '' ? say('side.staged') : say('side.at', /^[0-9a-f]{40}$/.test(revision) ? revision.slice(0, 7) : revision)
}

function fileName(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1)
}

/** The facts under a side's name, in one line. */
export function sideFacts({ entry }: CompareSide): string[] {
  if (!entry) return []
  return [
    entry.date,
    entry.from ? say('side.from', entry.from) : '',
    entry.asFound ? say('side.asFound') : '',
    entry.baseline ? say('side.baseline') : '',
    entry.verdict ? say('side.verdict', entry.verdict) : '',
  ].filter(Boolean)
}

/** What there is to say first: how many positions differ, and what became of the findings. */
export function summaryOf(view: CompareView): string {
  const { comparison } = view
  const readable = sideNames.filter((side) => isReadable(comparison[side]))
  if (readable.length === 0) return say('sum.neither')
  if (readable.length === 1) return say('sum.alone', sideName(view, readable[0]!))
  const { findings, changes } = comparison
  const parts = [
    changes === 0 ? say('sum.changes.none') : counted('sum.changes', changes),
    ...(findings.new.length > 0 ? [counted('sum.new', findings.new.length)] : []),
    ...(findings.gone.length > 0 ? [counted('sum.gone', findings.gone.length)] : []),
  ]
  return parts.join(', ')
}

/** Words for so many of something. */
export function counted(key: 'sum.changes' | 'sum.new' | 'sum.gone' | 'sum.rows' | 'sum.hidden', count: number): string {
  return count === 1 ? say(`${key}.one`) : say(`${key}.many`, count)
}
