import { judgeSpring, type SpringJudgement } from '../compute/preload/judgeSpring'
import type { End } from '../compute/sag/loadCase'
import type { SagTarget } from '../compute/sag/sagTarget'
import { nearestRates, usualRateStepsNPerMm, type NearestRates } from '../compute/springs/nearestRates'
import { shockSpringFor, forkSpringFor } from '../compute/springs/springAtDamper'
import { targetRate } from '../compute/springs/targetRate'
import { isMissing, reasons, type Outcome, type Result } from '../compute/working/result'
import type { Entry, Notebook } from '../notebook/notebook'
import { assuming } from './assuming'
import { riderLoadOf } from './loadsOf'
import { perEntry } from './perEntry'
import { sagOf, sagTargetOf } from './sagOf'
import { forkSpringsOf, motionRatioAt, shockSpringOf } from './springsFitted'
import { rakeOf } from './wheelRateOf'

/** Whether the springs of one end suit the load, by both sags of this entry against both windows. */
export const springVerdictOf = perEntry((notebook, entry, end: End): Outcome<SpringJudgement> => {
  const [bike, rider] = [sagOf(notebook, entry, end, 'bike'), sagOf(notebook, entry, end, 'rider')]
  const [bikeWindow, riderWindow] = [sagTargetOf(notebook, end, 'bike'), sagTargetOf(notebook, end, 'rider')]
  if (isMissing(bike) || isMissing(rider) || isMissing(bikeWindow) || isMissing(riderWindow)) return { missing: reasons(bike, rider, bikeWindow, riderWindow) }
  return judgeSpring({ bikeSagMm: bike, riderSagMm: rider, bikeWindow, riderWindow })
})

export interface SpringWanted {
  /** Rate of each spring, N/mm, with which both sags just reach their windows. */
  rate: Result
  /** The usual steps around it. */
  sold: NearestRates
}

/**
 * The spring nearest to the one fitted that would bring both sags of one end into their windows with this rider: rider
 * sag at the nearest place of its window, bike sag then at the nearest place of its own. The middles of both would ask
 * for more than is needed, and where the windows lie close for something no one sells.
 */
export const springWantedOf = perEntry((notebook, entry, end: End): Outcome<SpringWanted> => {
  const load = riderLoadOf(notebook, entry, end)
  const [bike, rider] = [sagTargetOf(notebook, end, 'bike'), sagTargetOf(notebook, end, 'rider')]
  const [verdict, riderSag] = [springVerdictOf(notebook, entry, end), sagOf(notebook, entry, end, 'rider')]
  if (isMissing(load) || isMissing(bike) || isMissing(rider) || isMissing(verdict) || isMissing(riderSag)) return { missing: reasons(load, bike, rider, verdict, riderSag) }
  const nearest = (mm: number, { lowMm, highMm }: SagTarget) => Math.min(highMm, Math.max(lowMm, mm))
  const riderSagMm = nearest(riderSag.value, rider)
  const wheelRate = assuming(targetRate({ riderLoadN: load, bikeSagMm: nearest(verdict.bikeSagThenMm, bike), riderSagMm }), load.working.assumptions)
  if (isMissing(wheelRate)) return wheelRate
  const spring = assuming(atSpring(notebook, entry, end, wheelRate, riderSagMm), wheelRate.working.assumptions)
  if (isMissing(spring)) return spring
  const sold = nearestRates(spring.value, usualRateStepsNPerMm[end === 'front' ? 'fork' : 'shock'])
  return sold ? { rate: spring, sold } : { missing: ['a spring rate above zero'] }
})

function atSpring(notebook: Notebook, entry: Entry, end: End, wheelRate: Result, sagMm: number): Outcome {
  if (end === 'front') {
    const legs = Object.keys(forkSpringsOf(notebook, entry)).length
    return legs === 0 ? { missing: ['spring rate of the fork'] } : forkSpringFor({ rateAlongTubesNPerMm: wheelRate, rakeDeg: rakeOf(notebook), legs: legs === 1 ? 1 : 2 })
  }
  const ratio = motionRatioAt(notebook, sagMm)
  if (isMissing(ratio)) return ratio
  const { count } = shockSpringOf(notebook, entry)
  return shockSpringFor({ wheelRateNPerMm: { value: wheelRate.value / count, ...(wheelRate.u === undefined ? {} : { u: wheelRate.u / count }) }, motionRatio: ratio.ratio })
}
