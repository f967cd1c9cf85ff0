import { sagLengthsOf } from '../derived/sagOf'
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
      const changes = [{ ...lifted.range, text: text.slice(pushed.range.start, pushed.range.end) }, { ...pushed.range, text: text.slice(lifted.range.start, lifted.range.end) }]
      return [{
        message: `${endWord(end)}: ${sayMeasured(pushed)} after pushing is longer than ${sayMeasured(lifted)} after lifting; the longer one belongs to lifting`,
        range: pushed.range, row: pushed.key, fixes: [{ title: 'Swap the two lengths', changes }],
      }]
    })),
}
