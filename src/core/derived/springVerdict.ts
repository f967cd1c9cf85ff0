import { judgeSpring, type SpringJudgement } from '../compute/preload/judgeSpring'
import type { End } from '../compute/sag/loadCase'
import type { SagTarget } from '../compute/sag/sagTarget'
import { preloadAtSpring } from '../compute/preload/preloadChange'
import { nearestRates, usualRateStepsNPerMm, type NearestRates } from '../compute/springs/nearestRates'
import { rateLessAir } from '../compute/springs/rateLessAir'
import { shockSpringFor, forkSpringFor } from '../compute/springs/springAtDamper'
import { springForTargets } from '../compute/springs/springForTargets'
import { targetRate } from '../compute/springs/targetRate'
import { isMissing, reasons, type Outcome, type Result } from '../compute/working/result'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { airAt, forkAirOf, hasAir } from './airOf'
import { assuming } from './assuming'
import { riderLoadOf, sprungLoadOf } from './loadsOf'
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
  /** The preload that goes with it, mm at each spring; it alone needs the load of the bike. Below zero where no spring meets both. */
  preload: Outcome
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
  const targets = { bikeSagMm: nearest(verdict.bikeSagThenMm, bike), riderSagMm }
  const wheelRate = assuming(targetRate({ riderLoadN: load, ...targets }), load.working.assumptions)
  if (isMissing(wheelRate)) return wheelRate
  const spring = assuming(atSpring(notebook, entry, end, { wheelRate, ...targets }), wheelRate.working.assumptions)
  if (isMissing(spring)) return spring
  const sold = nearestRates(spring.value, usualRateStepsNPerMm[end === 'front' ? 'fork' : 'shock'])
  const preload = preloadWith(notebook, entry, end, { wheelRate, ...targets })
  return sold ? { rate: spring, sold, preload } : { missing: [say('a spring rate above zero')] }
})

/** A rate that meets two sags, and those. */
interface Wanted {
  wheelRate: Result
  bikeSagMm: number
  riderSagMm: number
}

function atSpring(notebook: Notebook, entry: Entry, end: End, wanted: Wanted): Outcome {
  const { wheelRate, riderSagMm } = wanted
  if (end === 'front') {
    const legs = Object.keys(forkSpringsOf(notebook, entry)).length
    if (legs === 0) return { missing: [say('spring rate of the fork')] }
    const left = hasAir(notebook) ? withoutAir(notebook, entry, wanted) : wheelRate
    return isMissing(left) ? left : forkSpringFor({ rateAlongTubesNPerMm: left, rakeDeg: rakeOf(notebook), legs: legs === 1 ? 1 : 2, withAir: hasAir(notebook) })
  }
  const ratio = motionRatioAt(notebook, riderSagMm)
  if (isMissing(ratio)) return ratio
  const { count } = shockSpringOf(notebook, entry)
  return shockSpringFor({ wheelRateNPerMm: { value: wheelRate.value / count, ...(wheelRate.u === undefined ? {} : { u: wheelRate.u / count }) }, motionRatio: ratio.ratio })
}

/** What the springs of a fork have left to do once its air has done its part. */
function withoutAir(notebook: Notebook, entry: Entry, { wheelRate, bikeSagMm, riderSagMm }: Wanted): Outcome {
  const air = forkAirOf(notebook, entry)
  const force = (mm: number) => airAt(notebook, entry, 'force', { mm, stroke: 'slow' })
  const [here, there] = [force(bikeSagMm), force(riderSagMm)]
  if (isMissing(air) || isMissing(here) || isMissing(there)) return { missing: reasons(air, here, there) }
  return rateLessAir({ rateNPerMm: wheelRate, airForce1N: here.value * air.legs, airForce2N: there.value * air.legs, fromMm: bikeSagMm, toMm: riderSagMm, rakeDeg: rakeOf(notebook) })
}

/** The preload at each spring that goes with the rate, for straight lines only: a fork with air has none that is told so simply. */
function preloadWith(notebook: Notebook, entry: Entry, end: End, { bikeSagMm, riderSagMm }: Wanted): Outcome {
  if (end === 'front' && hasAir(notebook)) return { missing: [say('a fork whose springs carry alone')] }
  const [bikeLoad, riderLoad] = [sprungLoadOf(notebook, entry, end, 'bike'), riderLoadOf(notebook, entry, end)]
  const ratio = end === 'front' ? { ratio: 1 } : motionRatioAt(notebook, riderSagMm)
  if (isMissing(bikeLoad) || isMissing(riderLoad) || isMissing(ratio)) return { missing: reasons(bikeLoad, riderLoad, ratio) }
  const targets = springForTargets({ bikeLoadN: bikeLoad, riderLoadN: riderLoad, bikeSagMm, riderSagMm })
  if (isMissing(targets) || isMissing(targets.wheelPreload)) return { missing: reasons(targets, isMissing(targets) ? targets : targets.wheelPreload) }
  return preloadAtSpring({ wheelPreloadMm: targets.wheelPreload, motionRatio: ratio.ratio })
}
