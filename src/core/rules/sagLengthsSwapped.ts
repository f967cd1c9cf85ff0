import { sagLengthsOf } from '../derived/sagOf'
import { offer } from '../notebook/edits/offer'
import { swapScalars } from '../notebook/edits/swapScalars'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { endWord, loads, measuredEnds, sayMeasured } from './sagEnds'

export const sagLengthsSwapped: EntryRule = {
  code: 'sag-lengths-swapped',
  severity: 'warning',
  says: 'The length after pushing is longer than the one after lifting.',
  why: 'Friction holds the machine up after lifting and down after pushing, so the first length is the longer one. The average is right all the same; the notes are not.',
  checkEntry: (entry, { text }) =>
    measuredEnds(entry).flatMap((end) => loads.flatMap((load) => {
      const { lifted, pushed } = sagLengthsOf(entry, end, load)
      if (!lifted || !pushed || pushed.base <= lifted.base) return []
      return [{
        message: say`${endWord(end)}: ${sayMeasured(pushed)} after pushing is longer than ${sayMeasured(lifted)} after lifting; the longer one belongs to lifting`,
        range: pushed.range, row: pushed.key, fixes: offer(say('Swap the two lengths'), () => swapScalars(text, lifted.node, pushed.node)),
      }]
    })),
}
