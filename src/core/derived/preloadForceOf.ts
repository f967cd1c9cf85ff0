import type { End } from '../compute/sag/loadCase'
import { preloadForce } from '../compute/springs/preloadForce'
import { isMissing, type Outcome } from '../compute/working/result'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { assuming } from './assuming'
import { forkSpringAmountsOf, shockSpringOf } from './springsFitted'
import { springPreloadOf } from './springPreloadOf'

/** What each spring of an end pushes with while its end is fully extended, N; for unequal legs the mean of both. */
export function preloadForceOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const preload = springPreloadOf(notebook, entry, end)
  const rates = end === 'front' ? Object.values(forkSpringAmountsOf(notebook, entry)) : [shockSpringOf(notebook, entry).amount]
  const [first, second] = rates
  const same = second === undefined || JSON.stringify(first) === JSON.stringify(second)
  const rateNPerMm = same ? first : meanOf(rates.map((rate) => (typeof rate === 'number' ? rate : rate?.value ?? NaN)))
  const force = preloadForce({ rateNPerMm, preloadMm: isMissing(preload) ? undefined : preload.mm })
  if (isMissing(preload)) return { missing: [...preload.missing, ...(rateNPerMm === undefined ? [say('spring rate')] : [])] }
  return same ? force : assuming(force, [say('the mean of unequal legs')])
}

const meanOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0) / numbers.length
