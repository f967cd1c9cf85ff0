import { found } from '../compute/working/result'
import { solvedSteeringOf } from '../derived/geometryOf'
import { printNumber } from '../notation/amount'
import type { Advisor } from './advice'

/** Geometry last, and only to have figures that can be trusted: what a rider wants of the steering no figure tells. */
export const checkFigures: Advisor = (notebook) => {
  const contradiction = found(solvedSteeringOf(notebook))?.contradiction
  if (!contradiction) return undefined
  return {
    topic: 'geometry', kind: 'measure', step: 'measure rake, offset, tyre radius and trail again before steering is changed by them',
    evidence: [`a trail of ${printNumber(contradiction.written, 1)} mm is written, the other figures make ${printNumber(contradiction.computed, 1)} mm`], expect: [], assumes: [],
  }
}
