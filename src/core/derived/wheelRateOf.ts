import { impliedWheelRate } from '../compute/sag/impliedWheelRate'
import type { End } from '../compute/sag/loadCase'
import { compareRates, type RateComparison } from '../compute/springs/compareRates'
import { forkRateAlongTubes } from '../compute/springs/forkWheelRate'
import { meanRate } from '../compute/springs/meanRate'
import { shockMeanWheelRate } from '../compute/springs/shockMeanWheelRate'
import { shockWheelRate } from '../compute/springs/shockWheelRate'
import { found, isMissing, reasons, type Outcome } from '../compute/working/result'
import { factAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { hasAir } from './airOf'
import { assuming } from './assuming'
import { endForceOf, totalForce } from './endForce'
import { riderLoadOf } from './loadsOf'
import { perEntry } from './perEntry'
import { readingsOf, sagOf } from './sagOf'
import { forkSpringAmountsOf, leverageOf, shockSpringOf } from './springsFitted'
import { springPreloadOf } from './springPreloadOf'
import { hasStack } from './stackOf'

/** The rate that both sags of this entry imply at one end, N/mm, with the assumptions its load stands on. */
export const impliedRateOf = perEntry((notebook, entry, end: End): Outcome => {
  const load = riderLoadOf(notebook, entry, end)
  const rate = impliedWheelRate({
    riderLoadN: found(load), bikeMm: readingsOf(notebook, entry, end, 'bike'), riderMm: readingsOf(notebook, entry, end, 'rider'),
  })
  if (!isMissing(load)) return assuming(rate, load.working.assumptions)
  // Why the load is missing says more than that it is.
  return isMissing(rate) ? { missing: [...load.missing, ...rate.missing.slice(1)] } : load
})

/**
 * The rate of the springs fitted in this entry as the sags would see it, N/mm: along the tubes in front, at the wheel in
 * the rear. Where it is no straight line (air, a stack, a measured leverage), its mean between both sags.
 */
export const fittedRateOf = perEntry((notebook, entry, end: End): Outcome => {
  if (end === 'front') {
    const legRatesNPerMm = Object.values(forkSpringAmountsOf(notebook, entry))
    const isStraight = !hasAir(notebook) && !(legRatesNPerMm.length === 0 && hasStack(notebook, 'front'))
    return isStraight ? forkRateAlongTubes({ legRatesNPerMm, rakeDeg: rakeOf(notebook) }) : meanRateOf(notebook, entry, end)
  }
  const { amount, rateNPerMm, count } = shockSpringOf(notebook, entry)
  if (amount === undefined && hasStack(notebook, 'rear')) return meanRateOf(notebook, entry, end)
  const leverage = leverageOf(notebook)
  if (!leverage || 'motionRatio' in leverage) return shockWheelRate({ springRateNPerMm: amount, motionRatio: leverage?.motionRatio, springs: count })
  const [bike, rider] = [sagOf(notebook, entry, 'rear', 'bike'), sagOf(notebook, entry, 'rear', 'rider')]
  if (isMissing(bike) || isMissing(rider)) return { missing: reasons(bike, rider) }
  const preload = springPreloadOf(notebook, entry, 'rear')
  if (isMissing(preload)) return preload
  return shockMeanWheelRate({ springRateNPerMm: rateNPerMm, preloadMm: preload.mm, leverage, springs: count, fromMm: bike.value, toMm: rider.value })
})

function meanRateOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const force = endForceOf(notebook, entry, end, 'slow')
  const [bike, rider] = [sagOf(notebook, entry, end, 'bike'), sagOf(notebook, entry, end, 'rider')]
  if (isMissing(force) || isMissing(bike) || isMissing(rider)) return { missing: reasons(force, bike, rider) }
  const [force1N, force2N] = [totalForce(force, bike.value), totalForce(force, rider.value)]
  if (force1N === undefined || force2N === undefined) return { missing: [say('a leverage table that reaches both sags')] }
  const names = force.parts.map(({ name }) => name).join(say(' and '))
  return meanRate({
    force1N, force2N, fromMm: bike.value, toMm: rider.value, ...(end === 'front' ? { rakeDeg: { value: rakeOf(notebook) } } : {}),
    assumptions: [say`forces of ${names}${end === 'front' ? say(', both legs together, along the tubes') : say(', at the wheel')}`, ...force.assumptions],
  })
}

/** What the sags imply against what is fitted. */
export const rateComparisonOf = perEntry((notebook, entry, end: End): Outcome<RateComparison> => {
  const [implied, fitted] = [impliedRateOf(notebook, entry, end), fittedRateOf(notebook, entry, end)]
  if (isMissing(implied) || isMissing(fitted)) return { missing: reasons(implied, fitted) }
  return compareRates({ impliedNPerMm: implied, fittedNPerMm: fitted })
})

/** The machine's rake as written, degrees. */
export function rakeOf(notebook: Notebook): number | undefined {
  return factAt(notebook, ['machine', 'geometry', 'rake'], 'angle')?.base
}
