import { isMissing } from '../compute/working/result'
import { bounceHeightsOf, dampingRatioOf } from '../derived/bounceOf'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { ends, endWord } from './sagEnds'

export const swingsGrow: EntryRule = {
  code: 'swings-grow',
  severity: 'error',
  says: 'The heights of a bounce test do not die away, or one of them is zero.',
  why: 'Nothing but a hand keeps an end swinging. The heights stand in the wrong order, or were not taken from the place where it comes to rest.',
  checkEntry: (entry, notebook) => ends.flatMap((end) => {
    const heights = bounceHeightsOf(entry, end)
    const ratio = dampingRatioOf(notebook, entry, end)
    if (heights.length < 2 || !isMissing(ratio)) return []
    const zero = heights.find(({ mm }) => mm === 0)
    const message = zero ? say`${endWord(end)}: a swing of zero is no swing; leave it out` : say`${endWord(end)}: these swings do not die away; write them in order, from the place of rest`
    return [{ message, row: `bounce.${end}`, range: zero?.at ?? { start: heights[0]!.at.start, end: heights.at(-1)!.at.end } }]
  }),
}
