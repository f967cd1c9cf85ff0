import { phrase, say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, reasons, type Amount, type Outcome, type Result } from '../working/result'

export type TravelVerdict = 'bottomed' | 'nearlyAll' | 'wellUsed' | 'reserve' | 'littleUsed'

export interface TravelUsed {
  usedPercent: Result
  reserveMm: Result
  verdict: TravelVerdict
  /** What it suggests, in the order to look: a starting point, never a promise. */
  suggests: string[]
}

/**
 * Where one verdict turns into the next, as share of the travel used, and how near to the end counts as bottomed.
 * Our own choice, settable: no published figure in mm or percent was found.
 */
export interface TravelBounds {
  bottomedWithinMm: number
  nearlyAllPercent: number
  wellUsedPercent: number
  littleUsedPercent: number
}

export const usualTravelBounds: TravelBounds = { bottomedWithinMm: 2, nearlyAllPercent: 95, wellUsedPercent: 80, littleUsedPercent: 50 }

const suggestions: Record<TravelVerdict, string[]> = {
  bottomed: [
    phrase('check that sag is in its window: too little preload uses travel up before the ride'),
    phrase('the spring may be too soft for this load'),
    phrase('if only the end of the stroke is too soft: more oil (a smaller gap), so that the air holds it'),
    phrase('more compression damping if it bottoms in fast strokes only'),
  ],
  nearlyAll: [phrase('nearly all of the travel is used: as it should be at the hardest place of the ride')],
  wellUsed: [phrase('travel is well used, with a reserve for a harder place')],
  reserve: [phrase('travel is left over: fine if the ride was an easy one')],
  littleUsed: [
    phrase('check that sag is in its window and the end moves freely'),
    phrase('the spring may be too stiff for this load and pace'),
    phrase('less oil (a larger gap) if the first half feels right and the end is out of reach'),
    phrase('less compression damping if it feels harsh'),
  ],
}

/**
 * Travel used by a ride, from a cable tie on the tube or from a log: 100 · used / travel, and the reserve in mm.
 *
 * Used more than there is counts as bottomed: bump stops give, ties slip. Missing for numbers below zero.
 * Source: S. Brouggy, Suspension part 4 – measuring the travel (tie at the end: too soft; only half way: too hard; only
 * slightly less than all of it is ideal); the bounds between are our own choice.
 * @example travelUsed({ usedMm: 104, travelMm: 120 }) // 86.7 %, 16 mm in reserve
 */
export function travelUsed({ usedMm, travelMm, bounds = usualTravelBounds }: {
  usedMm: Amount | undefined
  travelMm: Amount | undefined
  bounds?: TravelBounds
}): Outcome<TravelUsed> {
  const common = {
    from: { used: given(say('travel used'), 'mm', usedMm), travel: given(say('travel of this end'), 'mm', travelMm) },
    unless: (v: { used: number; travel: number }) => (v.travel <= 0 ? say('a travel above zero') : v.used < 0 ? say('travel used of zero or more') : undefined),
    source: 'S. Brouggy, Suspension part 4 – measuring the travel; bounds are our own choice',
  }
  const usedPercent = derive({ formula: 'share = 100 · used / travel', unit: '%', by: (v) => (100 * v.used) / v.travel, ...common })
  const reserveMm = derive({ formula: 'reserve = travel − used', unit: 'mm', by: (v) => v.travel - v.used, ...common })
  if (isMissing(usedPercent) || isMissing(reserveMm)) return { missing: reasons(usedPercent, reserveMm) }
  const verdict = judge(usedPercent.value, reserveMm.value, bounds)
  return { usedPercent, reserveMm, verdict, suggests: suggestions[verdict] }
}

function judge(percent: number, reserveMm: number, bounds: TravelBounds): TravelVerdict {
  if (reserveMm <= bounds.bottomedWithinMm) return 'bottomed'
  if (percent >= bounds.nearlyAllPercent) return 'nearlyAll'
  if (percent >= bounds.wellUsedPercent) return 'wellUsed'
  return percent > bounds.littleUsedPercent ? 'reserve' : 'littleUsed'
}
