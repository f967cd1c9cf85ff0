import type { Leg } from '../adjusters/adjuster'
import { readLeverage, type LeverageFacts } from '../compute/leverage/leverage'
import type { Point } from '../compute/leverage/monotoneCurve'
import { toBase } from '../notation/units'
import { factAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt, scalarAt } from '../notebook/tree'
import { isMissing, type Outcome } from '../compute/working/result'
import { countAt, slotsFor } from './countAt'

/** The springs of the fork by leg, N/mm; a leg without one is absent. */
export type ForkSprings = Partial<Record<Leg, number>>

const legs: readonly Leg[] = ['left', 'right']

/** The fork springs in this entry: as an adjuster for the springs stands, else as the machine has them. */
export function forkSpringsOf(notebook: Notebook, entry: Entry): ForkSprings {
  const path = ['machine', 'front', 'spring_rate']
  const whole = factAt(notebook, path, 'stiffness')?.base
  const fitted: ForkSprings = {}
  for (const leg of legs) {
    const rate = fittedRate(notebook, entry, 'fork', leg) ?? whole ?? factAt(notebook, [...path, leg], 'stiffness')?.base
    if (rate !== undefined && rate > 0) fitted[leg] = rate
  }
  return fitted
}

/** The shock's spring in this entry and how many there are of it. */
export function shockSpringOf(notebook: Notebook, entry: Entry): { rateNPerMm: number | undefined; count: number } {
  const rate = fittedRate(notebook, entry, 'shock', undefined) ?? factAt(notebook, ['machine', 'rear', 'spring_rate'], 'stiffness')?.base
  const springs = scalarAt(notebook.root, ['machine', 'rear', 'springs'])?.value
  return { rateNPerMm: rate !== undefined && rate > 0 ? rate : undefined, count: springs === 2 ? 2 : 1 }
}

function fittedRate(notebook: Notebook, entry: Entry, on: 'fork' | 'shock', leg: Leg | undefined): number | undefined {
  const slot = slotsFor(notebook, 'spring_rate', on).find((each) => each.leg === undefined || each.leg === leg)
  const count = slot && countAt(entry, slot)
  return count === undefined ? undefined : toBase(count, slot!.adjuster.counts)
}

/** How the shock is driven: the measured table where there is one, else the constant ratio. */
export function leverageOf(notebook: Notebook): LeverageFacts | undefined {
  const rear = ['machine', 'rear']
  const list = nodeAt(notebook.root, [...rear, 'leverage'])
  if (list?.kind === 'list' && list.items.length > 0) {
    const table = list.items.map((_, row): Point => [0, 1].map((side) => numberAt(notebook, [...rear, 'leverage', row, side]) ?? NaN) as unknown as Point)
    return { table }
  }
  const motionRatio = numberAt(notebook, [...rear, 'motion_ratio'])
  return motionRatio === undefined ? undefined : { motionRatio }
}

/** Shock travel for one mm of wheel travel at a place of the travel, mm at the wheel. */
export function motionRatioAt(notebook: Notebook, wheelMm: number): Outcome<{ ratio: number }> {
  const drive = readLeverage(leverageOf(notebook))
  if (isMissing(drive)) return drive
  const point = drive.at(wheelMm)
  return point && point.slope > 0 ? { ratio: point.slope } : { missing: [`a leverage table that reaches ${Math.round(wheelMm)} mm of wheel travel`] }
}

function numberAt(notebook: Notebook, path: readonly (string | number)[]): number | undefined {
  const value = scalarAt(notebook.root, path)?.value
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined
}
