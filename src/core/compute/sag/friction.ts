import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Outcome } from '../working/result'
import type { End, Use } from './loadCase'
import type { Readings } from './sag'

const source = 'Thede & Parks, Motorcycle Suspension Bible (stiction zones)'

/**
 * The friction band in mm: how far apart the end comes to rest after lifting and after pushing.
 *
 * friction = |L2 − L3|; the order of the readings only changes the sign. A single reading says nothing about friction.
 * @example friction([118, 110]) // 8 mm
 */
export function friction(readingsMm: Readings | undefined): Outcome {
  if (readingsMm?.length !== 2) return { missing: [say('a reading after lifting and one after pushing')] }
  const [lift, push] = readingsMm.map((reading) => given(say('length'), 'mm', reading).measured?.value)
  const swapped = lift !== undefined && push !== undefined && push > lift
  return derive({
    formula: swapped ? 'friction = L3 − L2' : 'friction = L2 − L3', unit: 'mm',
    from: { L2: given(say('length after lifting'), 'mm', readingsMm[0]), L3: given(say('length after pushing'), 'mm', readingsMm[1]) },
    by: ({ L2, L3 }) => (swapped ? L3 - L2 : L2 - L3),
    assumptions: swapped ? [say('the reading after pushing is the longer one, so the two were likely swapped')] : [],
    source: '5 Steps to Setting Sag, Motorcycle & Powersports News (the difference of the two readings is friction)',
  })
}

export interface FrictionZone {
  lowMm: number
  highMm: number
  source: string
}

/** Published zones of what is usual in a fork; none was found for the rear. */
const forkZones: Record<Use, readonly [lowMm: number, highMm: number, as: string]> = {
  road: [5, 15, 'street'],
  touring: [5, 15, 'street'],
  track: [5, 15, 'road race'],
  motocross: [10, 25, 'full-size dirt'],
  enduro: [10, 25, 'full-size dirt'],
  adventure: [10, 25, 'full-size dirt'],
}

export function frictionZone(end: End, use: Use): FrictionZone | undefined {
  if (end !== 'front') return undefined
  const [lowMm, highMm, as] = forkZones[use]
  return { lowMm, highMm, source: `${source}: ${as}` }
}

/** Where a friction band lies against its zone: above it, something binds or is worn. Both bounds count as within. */
export function judgeFriction(bandMm: number, zone: FrictionZone): 'low' | 'usual' | 'high' {
  if (bandMm > zone.highMm) return 'high'
  return bandMm < zone.lowMm ? 'low' : 'usual'
}
