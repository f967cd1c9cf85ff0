import { found } from '../compute/working/result'
import { solvedSteeringOf } from '../derived/geometryOf'
import { sayIn } from '../notation/displayUnits'
import { say } from '../words/say'
import type { Advisor } from './advice'

/** Geometry last, and only to have figures that can be trusted: what a rider wants of the steering no figure tells. */
export const checkFigures: Advisor = (notebook, _entry, units) => {
  const contradiction = found(solvedSteeringOf(notebook))?.contradiction
  if (!contradiction) return undefined
  const figure = sayIn(units)
  return {
    topic: 'geometry', kind: 'measure', step: say('measure rake, offset, tyre radius and trail again before steering is changed by them'),
    evidence: [say`a trail of ${figure(contradiction.written, 'mm')} is written, the other figures make ${figure(contradiction.computed, 'mm')}`], expect: [], assumes: [],
  }
}
