import { sagLengthsOf } from '../derived/sagOf'
import type { End } from '../compute/sag/loadCase'
import type { Fix } from '../finding'
import { offer } from '../notebook/edits/offer'
import { swapScalars } from '../notebook/edits/swapScalars'
import type { Measured } from '../notebook/fields'
import type { Entry } from '../notebook/notebook'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { endWord, loads, measuredEnds, sayMeasured } from './sagEnds'

export const sagLongerThanExtended: EntryRule = {
  code: 'sag-longer-than-extended',
  severity: 'error',
  says: 'A loaded length is longer than the extended one.',
  why: 'With the wheel in the air the end is as long as it gets. A longer reading was taken elsewhere, or the lengths stand in the wrong places.',
  checkEntry: (entry, { text }) =>
    measuredEnds(entry).flatMap((end) => {
      const { extended, loaded } = lengths(entry, end)
      if (!extended) return []
      return loaded.filter((length) => length.base > extended.base).map((length) => ({
        message: say`${endWord(end)}: ${sayMeasured(length)} loaded is longer than ${sayMeasured(extended)} extended; measure again, wheel off the ground for the extended one`,
        range: length.range, row: length.key, fixes: swapFix(extended, length, loaded, text),
      }))
    }),
}

function lengths(entry: Entry, end: End): { extended: Measured | undefined; loaded: Measured[] } {
  const cases = loads.map((load) => sagLengthsOf(entry, end, load))
  const loaded = cases.flatMap(({ lifted, pushed }) => [lifted, pushed].flatMap((length) => (length ? [length] : [])))
  return { extended: cases[0]?.extended, loaded }
}

/** Only where the two being swapped would explain every length. */
function swapFix(extended: Measured, length: Measured, loaded: readonly Measured[], text: string): Fix[] {
  if (loaded.some((each) => each.base > length.base)) return []
  return offer(say('Swap it with the extended length'), () => swapScalars(text, extended.node, length.node))
}
