import { say } from '../../words/say'
import { isMissing, type Outcome } from '../working/result'
import { readLeverage, type LeverageFacts } from './leverage'

export interface WheelSag {
  sagMm: number
  toppedOut: boolean
}

/**
 * Where the rear comes to rest under a sprung load, mm at the wheel, with the leverage as it really is: the place where
 * k · (p + s(z)) · s′(z) = load, found by halving.
 *
 * Assumes a force that rises with travel; of several places the first from the top is near enough found.
 * Missing where the spring does not carry the load within the travel. Source: force balance.
 */
export function wheelSag({ springRateNPerMm, preloadMm, leverage, travelMm, loadN }: {
  springRateNPerMm: number
  preloadMm: number
  leverage: LeverageFacts | undefined
  travelMm: number
  loadN: number
}): Outcome<WheelSag> {
  const drive = readLeverage(leverage)
  if (isMissing(drive)) return drive
  if (![springRateNPerMm, preloadMm, travelMm, loadN].every(Number.isFinite)) return { missing: [say('spring, travel and load of this end')] }
  const end = Math.min(travelMm, drive.toMm)
  const surplus = (z: number) => {
    const point = drive.at(z)!
    return springRateNPerMm * (preloadMm + point.value) * point.slope - loadN
  }
  if (!(end > 0) || !(springRateNPerMm > 0)) return { missing: [say('a travel and a spring rate above zero')] }
  if (surplus(0) >= 0) return { sagMm: 0, toppedOut: true }
  if (surplus(end) < 0) return { missing: [say('a spring that carries the load within the travel')] }
  let [above, below] = [0, end]
  for (let halving = 0; halving < 60; halving++) {
    const middle = (above + below) / 2
    if (surplus(middle) < 0) above = middle
    else below = middle
  }
  return { sagMm: (above + below) / 2, toppedOut: false }
}
