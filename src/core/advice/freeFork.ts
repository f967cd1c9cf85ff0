import { frictionZone, judgeFriction } from '../compute/sag/friction'
import { found } from '../compute/working/result'
import { frictionOf, useOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import type { Advisor } from './advice'

/** A fork that binds is freed before anything is set by its sag. */
export const freeFork: Advisor = (notebook, entry) => {
  const use = useOf(notebook)
  const zone = use && frictionZone('front', use)
  const band = found(frictionOf(notebook, entry, 'front'))
  if (!zone || !band || judgeFriction(band.value, zone) !== 'high') return undefined
  return {
    topic: 'friction', kind: 'measure', step: 'free the front before setting anything by its sag: loosen the axle clamp, bounce the fork straight, tighten to the manual, and measure again',
    evidence: [`${entry.key}: the fork comes to rest ${printNumber(band.value, 1)} mm apart after lifting and after pushing; ${zone.lowMm} to ${zone.highMm} mm is usual (${zone.source})`],
    expect: [`a friction band of ${zone.highMm} mm or less; if it stays, seals, bushes and tubes are next`], assumes: [],
  }
}
