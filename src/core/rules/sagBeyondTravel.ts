import { found } from '../compute/working/result'
import { sagLengthsOf, sagOf, travelOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { endWord, loads, measuredEnds } from './sagEnds'

export const sagBeyondTravel: EntryRule = {
  code: 'sag-beyond-travel',
  severity: 'error',
  says: 'A sag is more than the travel of its end.',
  why: 'The end would stand on its bump stop. A length or the travel is wrong.',
  checkEntry: (entry, notebook) =>
    measuredEnds(entry).flatMap((end) => {
      const travel = travelOf(notebook, end)
      return loads.flatMap((load) => {
        const value = found(sagOf(notebook, entry, end, load))?.value
        const { lifted, pushed } = sagLengthsOf(entry, end, load)
        const at = lifted ?? pushed
        if (travel === undefined || value === undefined || value <= travel || !at) return []
        return [{ message: say`${endWord(end)}: a sag of ${printNumber(value, 1)} mm is more than its travel of ${printNumber(travel, 1)} mm; measure again, or correct the travel`, range: at.range, row: at.key }]
      })
    }),
}
