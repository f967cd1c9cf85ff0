import { say } from '../../words/say'
import { derive, given, type Given } from '../working/derive'
import type { Outcome } from '../working/result'
import type { Readings } from './sag'

/**
 * How much further the end sinks when the rider gets on, in mm: mean of the readings without less mean with the rider.
 *
 * The extended length is in neither, so its uncertainty does not count here as it does in the two sags.
 * With `difference = rider's load / wheel rate`, preload does not change it while the end is off its top stop.
 * @example sagDifference({ bikeMm: [128, 122], riderMm: [118, 110] }) // 11 mm
 */
export function sagDifference({ bikeMm, riderMm }: { bikeMm: Readings | undefined; riderMm: Readings | undefined }): Outcome {
  const bike = named('B', say('bike alone'), bikeMm)
  const rider = named('R', say('rider aboard'), riderMm)
  return derive({
    formula: `difference = ${meanOf(bike)} − ${meanOf(rider)}`, unit: 'mm',
    from: { ...bike, ...rider },
    by: (values) => mean(bike, values) - mean(rider, values),
    assumptions: [say('friction shifts both means alike')],
    source: say('common practice, no source; the formula is the difference of two sags with the same extended length'),
  })
}

function named(letter: string, whose: string, readings: Readings | undefined): Record<string, Given> {
  if (readings?.length !== 2) return { [letter]: given(say`length, ${whose}`, 'mm', readings?.[0]) }
  return {
    [`${letter}1`]: given(say`length after lifting, ${whose}`, 'mm', readings[0]),
    [`${letter}2`]: given(say`length after pushing, ${whose}`, 'mm', readings[1]),
  }
}

function meanOf(readings: Record<string, Given>): string {
  const symbols = Object.keys(readings)
  return symbols.length === 1 ? symbols[0]! : `(${symbols.join(' + ')}) / 2`
}

function mean(readings: Record<string, Given>, values: Record<string, number>): number {
  const symbols = Object.keys(readings)
  return symbols.reduce((sum, symbol) => sum + values[symbol]!, 0) / symbols.length
}
