import { propagate } from '../working/propagate'
import { isMissing } from '../working/result'
import type { Point } from './monotoneCurve'
import { wheelSpring, type WheelRateFacts } from './wheelRate'

/**
 * How uncertain the wheel rate is because the shock travel in the table was read to ± something, N/mm: every row of the
 * table moved by its own standard uncertainty `uShockMm`, to first order.
 *
 * It shows how much the second term can be trusted: rows 10 mm apart and read to half a millimetre say little about it.
 * Assumes independent rows. Source: JCGM 100:2008, 5.1.2. `undefined` where there is no rate, or a moved row breaks the table.
 */
export function wheelRateTableUncertainty(facts: WheelRateFacts & { leverage: { table: readonly Point[] } }, uShockMm: number): number | undefined {
  const { table } = facts.leverage
  const rateWith = (shock: readonly number[]) => {
    const outcome = wheelSpring({ ...facts, leverage: { table: table.map(([wheel], row): Point => [wheel, shock[row]!]) } })
    return isMissing(outcome) ? NaN : outcome.rate.value
  }
  return propagate(rateWith, table.map(([, shock]) => ({ value: shock, u: uShockMm })))?.u
}
