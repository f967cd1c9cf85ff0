import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { loadCaseNames, type LoadCase } from './loadCase'

/** The loaded lengths of one load case, mm: after lifting and after pushing, or one reading of either sort. */
export type Readings = readonly [Amount] | readonly [afterLift: Amount, afterPush: Amount]

export interface SagLengths {
  load: LoadCase
  /** Length with the wheel off the ground, mm. */
  extendedMm: Amount | undefined
  readingsMm: Readings | undefined
}

const source = 'Ask the Geek: Set Your Static Sag, Sport Rider (friction averaged over a lifted and a pushed reading)'

/**
 * Sag in mm: how much shorter the end is under the load than with its wheel off the ground.
 *
 * sag = L1 − (L2 + L3) / 2, with L2 read after lifting and letting down, L3 after pushing and letting up.
 * One reading instead of the pair is taken as it is, friction included.
 *
 * Assumes that both readings are of the same load case, and lengths that shrink as the end sags: along the fork tubes in
 * front, vertically above the axle at the rear (a slanted line reads low). No sag without an extended length, and none
 * where the loaded length is the longer one.
 * @example sag({ load: 'rider', extendedMm: 152, readingsMm: [118, 110] }) // 38 mm
 */
export function sag({ load, extendedMm, readingsMm }: SagLengths): Outcome {
  const whose = say(loadCaseNames[load])
  const extended = given(say('length with the wheel off the ground'), 'mm', extendedMm)
  if (readingsMm?.length === 2) {
    return derive({
      formula: 'sag = L1 − (L2 + L3) / 2', unit: 'mm',
      from: {
        L1: extended,
        L2: given(say`length after lifting, ${whose}`, 'mm', readingsMm[0]),
        L3: given(say`length after pushing, ${whose}`, 'mm', readingsMm[1]),
      },
      by: ({ L1, L2, L3 }) => L1 - (L2 + L3) / 2,
      unless: ({ L1, L2, L3 }) => shorterUnderLoad(L1, (L2 + L3) / 2),
      assumptions: [say('friction acts alike in both directions')],
      source,
    })
  }
  return derive({
    formula: 'sag = L1 − L2', unit: 'mm',
    from: { L1: extended, L2: given(say`length, ${whose}`, 'mm', readingsMm?.[0]) },
    by: ({ L1, L2 }) => L1 - L2,
    unless: ({ L1, L2 }) => shorterUnderLoad(L1, L2),
    assumptions: [say('a single reading, so friction is in the number and not in its uncertainty')],
    source: 'a manufacturer’s competition handbook of 2007, p. 94 (unloaded less loaded length)',
  })
}

function shorterUnderLoad(extended: number, loaded: number): string | undefined {
  return loaded > extended ? say('a loaded length that is not longer than the extended one') : undefined
}
