import { frictionZone, judgeFriction } from '../compute/sag/friction'
import { found } from '../compute/working/result'
import { frictionOf, sagLengthsOf, useOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import type { EntryRule } from './rule'

export const frictionBand: EntryRule = {
  code: 'friction-band',
  severity: 'warning',
  says: 'The fork comes to rest further apart after lifting and after pushing than is usual for its use.',
  why: 'So much friction means that something binds or is worn: an axle clamped askew, bent tubes, dry seals or bushes. No setting makes up for it.',
  checkEntry: (entry, notebook) => {
    const use = useOf(notebook)
    const zone = use && frictionZone('front', use)
    const band = found(frictionOf(notebook, entry, 'front'))
    const of = (['rider', 'bike'] as const).map((load) => sagLengthsOf(entry, 'front', load)).find(({ lifted, pushed }) => lifted && pushed)
    if (!zone || !band || !of?.pushed || judgeFriction(band.value, zone) !== 'high') return []
    const usual = say`${zone.lowMm} to ${zone.highMm} mm is usual (${say(zone.source)})`
    return [{ message: say`Front: a friction band of ${printNumber(band.value, 1)} mm, where ${usual}; free the axle clamp and bounce it straight, then look at seals, bushes and tubes`, range: of.pushed.range, row: of.pushed.key }]
  },
}
