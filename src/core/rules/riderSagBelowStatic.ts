import { found } from '../compute/working/result'
import { printNumber } from '../notation/amount'
import { sagLengthsOf, sagOf } from '../derived/sagOf'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { endWord, measuredEnds } from './sagEnds'

export const riderSagBelowStatic: EntryRule = {
  code: 'rider-sag-below-static',
  severity: 'error',
  says: 'The machine sags less with its rider than alone.',
  why: 'A rider only adds load. One of the lengths is wrong, or the two load cases stand in each other’s place.',
  checkEntry: (entry, notebook) =>
    measuredEnds(entry).flatMap((end) => {
      const rider = found(sagOf(notebook, entry, end, 'rider'))?.value
      const alone = found(sagOf(notebook, entry, end, 'bike'))?.value
      const { lifted, pushed } = sagLengthsOf(entry, end, 'rider')
      const at = lifted ?? pushed
      if (rider === undefined || alone === undefined || !at || rider >= alone) return []
      return [{ message: say`${endWord(end)}: ${printNumber(rider, 1)} mm of sag with the rider is less than ${printNumber(alone, 1)} mm alone; measure again, or see whether the two stand in each other’s place`, range: at.range, row: at.key }]
    }),
}
