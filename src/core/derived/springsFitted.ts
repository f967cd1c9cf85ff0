import type { Leg } from '../adjusters/adjuster'
import { readLeverage, type LeverageFacts } from '../compute/leverage/leverage'
import type { End } from '../compute/sag/loadCase'
import type { Point } from '../compute/leverage/monotoneCurve'
import { toBase } from '../notation/units'
import { factAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt, scalarAt } from '../notebook/tree'
import { found, isMissing, type Amount, type Outcome } from '../compute/working/result'
import { say } from '../words/say'
import { countAt, slotsFor } from './countAt'
import { rateFromCoil } from './coilOf'
import { numberAt } from './numberAt'
import { perNotebook } from './perEntry'

/** The springs of the fork by leg, N/mm; a leg without one is absent. */
export type ForkSprings = Partial<Record<Leg, number>>

const legs: readonly Leg[] = ['left', 'right']

/**
 * The fork springs in this entry, N/mm: as an adjuster for the springs stands, else as the machine has them, else as their
 * wire says. A leg of which the machine says nothing has none where it speaks of the other. None of them for a stack.
 */
export function forkSpringAmountsOf(notebook: Notebook, entry: Entry): Partial<Record<Leg, Amount>> {
  const { whole, own, sprung, coil } = forkSpringsToldOf(notebook)
  const fitted: Partial<Record<Leg, Amount>> = {}
  for (const leg of legs) {
    const rate = fittedRate(notebook, entry, 'fork', leg, sprung) ?? whole ?? own[leg] ?? coil
    if (rate !== undefined && valueOf(rate) > 0) fitted[leg] = rate
  }
  return fitted
}

/** What the machine says of its fork springs. */
const forkSpringsToldOf = perNotebook((notebook) => {
  const path = ['machine', 'front', 'spring_rate']
  const whole = factAt(notebook, path, 'stiffness')?.base
  const own = Object.fromEntries(legs.map((leg) => [leg, factAt(notebook, [...path, leg], 'stiffness')?.base])) as Partial<Record<Leg, number>>
  const sprung = legs.filter((leg) => own[leg] !== undefined)
  return { whole, own, sprung, coil: whole === undefined && sprung.length === 0 ? coilRate(notebook, 'front') : undefined }
})

/** The same as plain numbers. */
export function forkSpringsOf(notebook: Notebook, entry: Entry): ForkSprings {
  return Object.fromEntries(Object.entries(forkSpringAmountsOf(notebook, entry)).map(([leg, rate]) => [leg, valueOf(rate)]))
}

/** The shock's spring in this entry, N/mm, and how many there are of it; no rate for a stack. */
export function shockSpringOf(notebook: Notebook, entry: Entry): { rateNPerMm: number | undefined; amount: Amount | undefined; count: number } {
  const rate = fittedRate(notebook, entry, 'shock', undefined, []) ?? factAt(notebook, ['machine', 'rear', 'spring_rate'], 'stiffness')?.base ?? coilRate(notebook, 'rear')
  const amount = rate !== undefined && valueOf(rate) > 0 ? rate : undefined
  const springs = scalarAt(notebook.root, ['machine', 'rear', 'springs'])?.value
  return { rateNPerMm: amount === undefined ? undefined : valueOf(amount), amount, count: springs === 2 ? 2 : 1 }
}

const valueOf = (amount: Amount): number => (typeof amount === 'number' ? amount : amount.value)

/** The rate that the wire of a single spring makes. */
function coilRate(notebook: Notebook, end: End): Amount | undefined {
  if (nodeAt(notebook.root, ['machine', end, 'stack'])) return undefined
  const rate = found(rateFromCoil(notebook, end))
  return rate && { value: rate.value, ...(rate.u === undefined ? {} : { u: rate.u }) }
}

/** What an adjuster says is fitted. One without legs speaks of every leg with a spring: of those that the machine names, if any. */
function fittedRate(notebook: Notebook, entry: Entry, on: 'fork' | 'shock', leg: Leg | undefined, sprung: readonly Leg[]): number | undefined {
  const slot = slotsFor(notebook, 'spring_rate', on).find(({ adjuster, leg: own }) => adjuster.counts.dimension === 'stiffness' && (own === undefined || own === leg))
  if (slot && slot.leg === undefined && leg !== undefined && sprung.length > 0 && !sprung.includes(leg)) return undefined
  const count = slot && countAt(entry, slot)
  return count === undefined ? undefined : toBase(count, slot!.adjuster.counts)
}

/** How the shock is driven: the measured table where there is one, else the constant ratio. */
export const leverageOf = perNotebook((notebook): LeverageFacts | undefined => {
  const rear = ['machine', 'rear']
  const list = nodeAt(notebook.root, [...rear, 'leverage'])
  if (list?.kind === 'list' && list.items.length > 0) {
    const table = list.items.map((_, row): Point => [0, 1].map((side) => numberAt(notebook, [...rear, 'leverage', row, side]) ?? NaN) as unknown as Point)
    return { table }
  }
  const motionRatio = numberAt(notebook, [...rear, 'motion_ratio'])
  return motionRatio === undefined ? undefined : { motionRatio }
})

/** Shock travel for one mm of wheel travel at a place of the travel, mm at the wheel. */
export function motionRatioAt(notebook: Notebook, wheelMm: number): Outcome<{ ratio: number }> {
  const drive = readLeverage(leverageOf(notebook))
  if (isMissing(drive)) return drive
  const point = drive.at(wheelMm)
  return point && point.slope > 0 ? { ratio: point.slope } : { missing: [say`a leverage table that reaches ${Math.round(wheelMm)} mm of wheel travel`] }
}

