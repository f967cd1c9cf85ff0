import { frictionZone, judgeFriction } from '../compute/sag/friction'
import { found } from '../compute/working/result'
import { frictionOf, useOf } from '../derived/sagOf'
import { printShown, sayIn } from '../notation/displayUnits'
import { say } from '../words/say'
import type { Advisor } from './advice'

/** A fork that binds is freed before anything is set by its sag. */
export const freeFork: Advisor = (notebook, entry, units) => {
  const figure = sayIn(units)
  const use = useOf(notebook)
  const zone = use && frictionZone('front', use)
  const band = found(frictionOf(notebook, entry, 'front'))
  if (!zone || !band || judgeFriction(band.value, zone) !== 'high') return undefined
  return {
    topic: 'friction', kind: 'measure', step: say('free the front before setting anything by its sag: loosen the axle clamp, bounce the fork straight, tighten to the manual, and measure again'),
    evidence: [say`${entry.key}: the fork comes to rest ${figure(band.value, 'mm')} apart after lifting and after pushing; ${printShown({ value: zone.lowMm }, 'mm', 1, units)} to ${figure(zone.highMm, 'mm')} is usual (${say(zone.source)})`],
    expect: [say`a friction band of ${figure(zone.highMm, 'mm')} or less; if it stays, seals, bushes and tubes are next`], assumes: [],
  }
}
