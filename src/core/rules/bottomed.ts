import { found } from '../compute/working/result'
import { travelUsedOf } from '../derived/travelUsedOf'
import { printNumber } from '../notation/amount'
import { measured } from '../notebook/fields'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { ends, endWord } from './sagEnds'

export const bottomed: EntryRule = {
  code: 'bottomed',
  severity: 'info',
  says: 'A ride used all the travel of an end.',
  why: 'An end on its stop springs no more, and the tyre takes the rest. Once at the hardest place of a ride is as it should be; more is for sag, spring, oil and compression damping, in that order.',
  checkEntry: (entry, notebook) => ends.flatMap((end) => {
    const at = measured(entry, `ride.${end}_travel_used`)
    const used = at && found(travelUsedOf(notebook, entry, end))
    if (!at || used?.verdict !== 'bottomed') return []
    const left = used.reserveMm.value
    const how = left < 0 ? say`${printNumber(-left, 1)} mm more than there is: the tie slipped, the stop gave, or the travel is noted wrong` : say`${printNumber(left, 1)} mm left`
    return [{ message: say`${endWord(end)}: the travel was used up (${how}); ${say(used.suggests[0]!)}`, range: at.range, row: at.key }]
  }),
}
