import { progressivity, ratioProgress } from '../compute/leverage/progressivity'
import { wheelSpring } from '../compute/leverage/wheelRate'
import { found, isMissing, reasons, type Outcome } from '../compute/working/result'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { assuming } from './assuming'
import { sagOf, travelOf } from './sagOf'
import { leverageOf, shockSpringOf } from './springsFitted'
import { springPreloadOf } from './springPreloadOf'

/** How much the rear's motion ratio rises over its travel, percent. */
export function leverageProgressOf(notebook: Notebook): Outcome {
  const leverage = leverageOf(notebook)
  const progress = progressivity(leverage, travelOf(notebook, 'rear'))
  return isMissing(progress) ? progress : ratioProgress(progress)
}

/** The rate of the rear springs at the wheel at this entry's rider sag, N/mm, with the term of the changing leverage. */
export function rateAtRiderSagOf(notebook: Notebook, entry: Entry): Outcome {
  const sag = sagOf(notebook, entry, 'rear', 'rider')
  const preload = springPreloadOf(notebook, entry, 'rear')
  if (isMissing(sag) || isMissing(preload)) return { missing: reasons(sag, preload) }
  const { amount, count } = shockSpringOf(notebook, entry)
  const springs = amount === undefined ? undefined : typeof amount === 'number' ? amount * count : { ...amount, value: amount.value * count, ...(amount.u === undefined ? {} : { u: amount.u * count }) }
  const spring = wheelSpring({ springRateNPerMm: springs, preloadMm: preload.mm, leverage: leverageOf(notebook), wheelMm: sag.value })
  return isMissing(spring) ? spring : assuming(spring.rate, [...(count === 2 ? [say('k is both springs together')] : []), say`at a rider sag of ${Math.round(10 * found(sag)!.value) / 10} mm`])
}
