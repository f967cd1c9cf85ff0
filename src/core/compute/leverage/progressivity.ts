import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, type Outcome } from '../working/result'
import { readLeverage, type LeverageFacts } from './leverage'

export interface Progressivity {
  /** Shock over wheel travel at full extension and at the end of the travel. */
  ratioAtTop: number
  ratioAtEnd: number
  /** How much the motion ratio rises over the travel, percent of its value at the top; below zero for a falling one. */
  percent: number
}

/**
 * How much a leverage stiffens over the travel: 100 · (m_end − m_top) / m_top.
 * Of the motion ratio itself; the first term of the wheel rate goes with its square.
 * Source: common practice, no source.
 */
export function progressivity(facts: LeverageFacts | undefined, travelMm: number | undefined): Outcome<Progressivity> {
  const drive = readLeverage(facts)
  if (isMissing(drive)) return drive
  if (travelMm === undefined || !(travelMm > 0)) return { missing: [say('wheel travel')] }
  const [top, end] = [drive.at(0), drive.at(travelMm)]
  if (!top || !end) return { missing: [say`a leverage table that reaches ${travelMm} mm of wheel travel`] }
  if (!(top.slope > 0)) return { missing: [say('a leverage table that moves the shock from the start')] }
  return { ratioAtTop: top.slope, ratioAtEnd: end.slope, percent: (100 * (end.slope - top.slope)) / top.slope }
}

/** The same as a number with its working, percent. */
export function ratioProgress({ ratioAtTop, ratioAtEnd }: Pick<Progressivity, 'ratioAtTop' | 'ratioAtEnd'>): Outcome {
  return derive({
    formula: 'progressivity = 100 · (end − top) / top', unit: '%',
    from: { top: given(say('motion ratio, fully extended'), '', ratioAtTop), end: given(say('motion ratio at the end of the travel'), '', ratioAtEnd) },
    by: ({ top, end }) => (100 * (end - top)) / top,
    assumptions: [say('a smooth curve through the measured leverage')], source: say('common practice, no source'),
  })
}
