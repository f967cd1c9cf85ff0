import { say } from '../../words/say'
import { derive, given } from './derive'
import type { Outcome, Result } from './result'

/**
 * How a number changed, now less then, in its own unit. Without an uncertainty: what both were computed from is shared,
 * and would count twice. Source: definition of a difference.
 */
export function changeSince(now: Result, then: Result, when: string): Outcome {
  return derive({
    formula: 'change = now − then', unit: now.unit,
    from: { now: given(say('now'), now.unit, now.value), then: given(`in ${when}`, then.unit, then.value) },
    by: (v) => v.now - v.then,
    assumptions: [say('what both are computed from is the same, so its uncertainty is in neither')], source: say('difference'),
  })
}
