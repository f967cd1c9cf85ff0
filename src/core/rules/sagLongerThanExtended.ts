import { sagLengthsOf } from '../derived/sagOf'
import type { EntryRule } from './rule'
import { ends, endWord, loads } from './sagEnds'

export const sagLongerThanExtended: EntryRule = {
  code: 'sag-longer-than-extended',
  severity: 'error',
  says: 'A loaded length is longer than the extended one.',
  why: 'With the wheel in the air the end is as long as it gets. A longer reading was taken elsewhere, or the lengths stand in the wrong places.',
  checkEntry: (entry) =>
    ends.flatMap((end) => loads.flatMap((load) => {
      const { extended, lifted, pushed } = sagLengthsOf(entry, end, load)
      if (!extended) return []
      return [lifted, pushed].flatMap((length) =>
        length && length.base > extended.base
          ? [{ message: `${endWord(end)}: ${length.quantity.amount} loaded is longer than ${extended.quantity.amount} extended`, range: length.range, row: length.key }]
          : [])
    })),
}
