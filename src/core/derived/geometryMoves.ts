import { standsAt } from '../adjusters/positionWords'
import { movementWords } from '../adjusters/changeWords'
import { slotKey, type Slot } from '../adjusters/adjuster'
import { raiseAtWheel } from '../compute/geometry/raiseAtWheel'
import { isMissing, type Outcome } from '../compute/working/result'
import { factIn } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { oncePer } from '../notebook/oncePer'
import { say } from '../words/say'
import { countAt, millimetresFor, slotsFor } from './countAt'
import { nearestOnLine } from './nearestOnLine'
import { motionRatioAt } from './springsFitted'

/**
 * What moved since the machine's geometry figures were taken. The datum is the place where an adjuster was first
 * recorded in the notebook, whichever entry that was: the figures hold there. It is said with every number.
 */
export interface GeometryMoves {
  forkUpMm: number
  rearRaisedMm: number
  frontRadiusMm?: number
  rearRadiusMm?: number
  /** Whether nothing moved at all, so that the figures hold as they are written. */
  none: boolean
  assumptions: string[]
}

export function geometryMovesOf(notebook: Notebook, entry: Entry): Outcome<GeometryMoves> {
  const fork = movedSince(notebook, entry, 'fork_height')
  const shock = movedSince(notebook, entry, 'ride_height')
  if (isMissing(fork)) return fork
  if (isMissing(shock)) return shock
  const raised = raiseOf(notebook, shock.mm)
  if (isMissing(raised)) return raised
  const radii = radiiOf(entry)
  return {
    forkUpMm: fork.mm, rearRaisedMm: raised.mm, ...radii,
    none: fork.mm === 0 && raised.mm === 0 && Object.keys(radii).length === 0,
    assumptions: [...fork.datum, ...shock.datum],
  }
}

/** How far the rear wheel came down against the chassis for a longer shock, mm. */
function raiseOf(notebook: Notebook, shockLongerMm: number): Outcome<{ mm: number }> {
  if (shockLongerMm === 0) return { mm: 0 }
  const ratio = motionRatioAt(notebook, 0)
  if (isMissing(ratio)) return ratio
  const raise = raiseAtWheel({ shockLongerMm, motionRatio: ratio.ratio })
  return isMissing(raise) ? raise : { mm: raise.value }
}

interface Moved {
  mm: number
  datum: string[]
}

/** How far the adjusters of a control stand from where they were first recorded, mm towards more; the mean over the legs. */
function movedSince(notebook: Notebook, entry: Entry, control: 'fork_height' | 'ride_height'): Outcome<Moved> {
  const slots = (['fork', 'shock', 'chassis'] as const).flatMap((on) => slotsFor(notebook, control, on))
  const moves: number[] = []
  const datum = new Set<string>()
  for (const slot of slots) {
    const first = firstRecord(notebook, slot)
    const now = countAt(entry, slot)
    if (!first) continue
    datum.add(say`the geometry figures hold for ${slot.adjuster.label} at ${standsAt(first.count, slot.adjuster)}, as first recorded in ${first.entry.key}`)
    if (now === undefined) continue
    const moved = millimetresFor(slot.adjuster, now - first.count)
    if (moved.count === undefined) return { missing: [say`${moved.missing}, for its ${movementWords(slot.adjuster, now - first.count)}`] }
    moves.push(moved.count)
  }
  return { mm: moves.length === 0 ? 0 : moves.reduce((sum, mm) => sum + mm, 0) / moves.length, datum: [...datum] }
}

/**
 * Where every adjuster of the geometry was first recorded, as a text that is another wherever another of them counts. All
 * geometry of a notebook stands on it, also that of entries which do not come from those.
 */
export function geometryDatum(notebook: Notebook): string {
  const slots = (['fork_height', 'ride_height'] as const).flatMap((control) => (['fork', 'shock', 'chassis'] as const).flatMap((on) => slotsFor(notebook, control, on)))
  return slots.map((slot) => {
    const first = firstRecord(notebook, slot)
    return `${slotKey(slot.adjuster.id, slot.leg)} ${first?.entry.key ?? ''} ${first?.count ?? ''}`
  }).join('\n')
}

const firstRecordsOf = oncePer((_: Notebook) => new Map<string, { entry: Entry; count: number } | undefined>())

/** Looked for once a version of a text: where a thing is never recorded, all entries were looked through for it. */
function firstRecord(notebook: Notebook, slot: Slot): { entry: Entry; count: number } | undefined {
  const known = firstRecordsOf(notebook)
  const key = slotKey(slot.adjuster.id, slot.leg)
  if (known.has(key)) return known.get(key)
  for (const entry of notebook.entries) {
    const count = entry.settings.has(key) ? countAt(entry, slot) : undefined
    if (count === undefined) continue
    known.set(key, { entry, count })
    return { entry, count }
  }
  known.set(key, undefined)
  return undefined
}

/** The radii of the tyres that this entry, or the nearest before it on its line, says came on. */
const radiusOf = {
  front: nearestOnLine((entry) => factIn(entry.node, ['tyres', 'front_radius'], 'length')?.base),
  rear: nearestOnLine((entry) => factIn(entry.node, ['tyres', 'rear_radius'], 'length')?.base),
}

function radiiOf(entry: Entry): { frontRadiusMm?: number; rearRadiusMm?: number } {
  const [front, rear] = [radiusOf.front(entry), radiusOf.rear(entry)]
  return { ...(front === undefined ? {} : { frontRadiusMm: front }), ...(rear === undefined ? {} : { rearRadiusMm: rear }) }
}
