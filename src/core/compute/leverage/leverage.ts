import { say } from '../../words/say'
import type { Outcome } from '../working/result'
import { monotoneCurve, type CurvePoint, type Point } from './monotoneCurve'

/** How a shock is driven: one ratio for the whole travel, or what was measured, wheel travel and shock travel in mm. */
export type LeverageFacts = { motionRatio: number } | { table: readonly Point[] }

/** Shock travel (value, mm), motion ratio (slope) and its change per mm (curvature, 1/mm) over vertical wheel travel. */
export interface Leverage {
  /** How far the table reaches, mm at the wheel; Infinity for a constant ratio. */
  toMm: number
  /** `undefined` beyond what was measured: nothing is guessed past the ends of a table. */
  at(wheelMm: number): CurvePoint | undefined
}

/**
 * Reads leverage: a constant motion ratio, or a table with a smooth monotone curve through it.
 *
 * Motion ratio is shock travel over wheel travel, so below 1 on nearly every machine; tables start at full extension.
 * Says what is wrong with a table whose wheel or shock travel does not rise from row to row.
 */
export function readLeverage(facts: LeverageFacts | undefined): Outcome<Leverage> {
  if (!facts) return { missing: [say('motion ratio or leverage table')] }
  if ('motionRatio' in facts) return constant(facts.motionRatio)
  const { table } = facts
  if (table.length < 2) return { missing: [say('a leverage table of at least two rows')] }
  const rising = table.every(([, shock], row) => row === 0 || shock > table[row - 1]![1])
  const curve = monotoneCurve(table)
  if (!curve || !rising) return { missing: [say('a leverage table whose wheel and shock travel rise from row to row')] }
  // Shock travel counts from full extension, whatever the first row was measured from.
  const start = curve.at(curve.from)!.value
  return {
    toMm: curve.to - curve.from,
    at(wheelMm) {
      const point = curve.at(withinRounding(curve.from + wheelMm, curve.to))
      return point && { ...point, value: point.value - start }
    },
  }
}

/** A place that is past the end by no more than the rounding of a sum counts as the end. */
function withinRounding(x: number, end: number): number {
  return x > end && x - end < 1e-9 ? end : x
}

function constant(motionRatio: number): Outcome<Leverage> {
  if (!(motionRatio > 0) || !Number.isFinite(motionRatio)) return { missing: [say('a motion ratio above zero')] }
  return { toMm: Infinity, at: (wheelMm) => ({ value: motionRatio * wheelMm, slope: motionRatio, curvature: 0 }) }
}

/** The motion ratio told as wheel travel over shock travel, turned round. @example invertRatio(2) // 0.5 */
export function invertRatio(wheelOverShock: number): number | undefined {
  return wheelOverShock > 0 ? 1 / wheelOverShock : undefined
}
