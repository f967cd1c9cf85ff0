import { judgePlausible, plausibleSteering } from '../compute/geometry/plausibleSteering'
import { printNumber } from '../notation/amount'
import { factAt } from '../notebook/machine'
import { say } from '../words/say'
import type { NotebookRule } from './rule'

export const unusualSteering: NotebookRule = {
  code: 'unusual-steering',
  severity: 'info',
  says: 'The rake that is written lies outside of what any machine has.',
  why: 'It is worth a second look, no more: an angle told from the horizontal, the angle of the fork instead of the steering axis, a slip of the pen.',
  checkNotebook: (notebook) => {
    const rake = factAt(notebook, ['machine', 'geometry', 'rake'], 'angle')
    const { anyRake } = plausibleSteering
    // What cannot be is told as such.
    if (!rake || Math.abs(rake.base) >= 90 || judgePlausible(rake.base, anyRake) === 'within') return []
    const upright = judgePlausible(90 - rake.base, anyRake) === 'within' ? say`; if it was told from the horizontal, it is ${printNumber(90 - rake.base, 2)}°` : ''
    return [{ message: say`a rake of ${printNumber(rake.base, 2)}° lies outside of ${anyRake.low} to ${anyRake.high}°, where machines lie (${say(anyRake.source)})${upright}`, range: rake.range }]
  },
}
