import type { End } from '../compute/sag/loadCase'
import { nearestRates, usualRateStepsNPerMm, type NearestRates } from '../compute/springs/nearestRates'
import { found, isMissing } from '../compute/working/result'
import { hasPreloadRoom, preloadOf } from '../derived/preloadOf'
import { forkSpringsOf, shockSpringOf } from '../derived/springsFitted'
import { springVerdictOf, springWantedOf } from '../derived/springVerdict'
import { rateComparisonOf } from '../derived/wheelRateOf'
import { printNumber } from '../notation/amount'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { Advice, Advisor } from './advice'
import { sagEvidence } from './sagEvidence'
import { isStuck } from './setSag'

/** A spring that both sags call wrong, surely enough to spend money on. */
export const chooseSpring: Advisor = (notebook, entry, units) => springAt(notebook, entry, 'front', units) ?? springAt(notebook, entry, 'rear', units)

function springAt(notebook: Notebook, entry: Entry, end: End, units: DisplayUnits): Advice | undefined {
  const read = sagEvidence(notebook, entry, end, 'rider')
  if (!read) return undefined
  const comparison = found(rateComparisonOf(notebook, read, end))
  if (comparison?.agree === false) return contradicted(read, end, comparison.difference.value)
  const judged = found(springVerdictOf(notebook, read, end))
  const preload = found(preloadOf(notebook, read, end, units))
  const stuck = preload && isStuck(preload) ? preload.plan.limits : []
  if (!judged || !((judged.verdict === 'tooSoft' || judged.verdict === 'tooStiff') && judged.then.sure !== false)) return stuck.length > 0 ? atEnd(read, end, stuck) : undefined
  const wanted = springWantedOf(notebook, read, end)
  if (isMissing(wanted)) return undefined
  const softer = judged.verdict === 'tooStiff'
  // A softer spring needs more preload to stand as high, a stiffer one less: an adjuster at its end has none to give.
  if (!hasPreloadRoom(notebook, read, end, softer ? 'more' : 'less')) return undefined
  const figure = sayIn(units)
  const rate = stepFrom(fittedAt(notebook, read, end), end, softer, wanted.sold)
  return {
    topic: 'springs', kind: 'change', step: say`consider ${softer ? say('softer') : say('stiffer')} springs at the ${say(end)}: ${figure(rate, 'N/mm', 2)}${end === 'front' ? say(' each leg') : ''} is the usual step to start with; then set the sag anew`,
    evidence: [say`${read.key}: with the rider’s sag in its window the bike alone would sag ${figure(judged.bikeSagThenMm, 'mm')}, ${figure(judged.then.byMm, 'mm')} ${say(judged.then.where)} its window`, ...stuck],
    expect: [say`${figure(wanted.rate.value, 'N/mm', 2)} would bring both sags just into their windows`],
    assumes: wanted.rate.working.assumptions,
  }
}

/** The step sold that the sum asks for, and at least one step away from what is fitted. */
function stepFrom(fitted: number | undefined, end: End, softer: boolean, sold: NearestRates): number {
  const step = usualRateStepsNPerMm[end === 'front' ? 'fork' : 'shock']
  const around = fitted === undefined ? undefined : nearestRates(fitted, step)
  if (fitted === undefined || !around) return softer ? sold.below : sold.above
  if (softer) return Math.min(sold.below, around.below < fitted ? around.below : fitted - step)
  return Math.max(sold.above, around.above > fitted ? around.above : fitted + step)
}

/** The rate of each spring fitted at one end, N/mm; the mean of unequal legs. */
function fittedAt(notebook: Notebook, entry: Entry, end: End): number | undefined {
  if (end === 'rear') return shockSpringOf(notebook, entry).rateNPerMm
  const legs = Object.values(forkSpringsOf(notebook, entry))
  return legs.length === 0 ? undefined : legs.reduce((sum, rate) => sum + rate, 0) / legs.length
}

function atEnd(read: Entry, end: End, limits: readonly string[]): Advice {
  return {
    topic: 'springs', kind: 'measure', step: say`preload of the ${say(end)} is at its end: measure both sags there once more, then look at spring and spacer`, evidence: limits.map((limit) => `${read.key}: ${limit}`),
    expect: [say('whether it is the spring or its spacer')], assumes: [],
  }
}

function contradicted(read: Entry, end: End, percent: number): Advice {
  return {
    topic: 'springs', kind: 'measure', step: say`read the lengths of the ${say(end)} again, and look at loads, motion ratio and the mark on the spring, before anything is built on them`,
    evidence: [say`${read.key}: both sags imply a rate ${printNumber(Math.abs(percent), 0)} % ${percent < 0 ? say('below') : say('above')} the springs fitted, more than twice the uncertainty`],
    expect: [say('a rate that agrees with the springs')], assumes: [],
  }
}
