import { found } from '../compute/working/result'
import { solvedSteeringOf } from '../derived/geometryOf'
import { printNumber } from '../notation/amount'
import { factAt } from '../notebook/machine'
import { say } from '../words/say'
import type { NotebookRule } from './rule'

export const geometryContradiction: NotebookRule = {
  code: 'geometry-contradiction',
  severity: 'warning',
  says: 'The trail that is written is not the one that rake, offset and tyre radius make.',
  why: 'One of the figures is wrong, or they are of different stances or tyres. Which one cannot be told from here; the numbers are computed from rake, offset and radius.',
  checkNotebook: (notebook) => {
    const contradiction = found(solvedSteeringOf(notebook))?.contradiction
    const trail = factAt(notebook, ['machine', 'geometry', 'trail'], 'length')
    if (!contradiction || !trail) return []
    const computed = `${printNumber(contradiction.computed, 1)} mm`
    return [{ message: say`a trail of ${printNumber(contradiction.written, 1)} mm is written, but rake, offset and tyre radius make ${computed}; look at all four again`, range: trail.range }]
  },
}
