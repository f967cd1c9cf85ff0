import { ownCount } from '../adjusters/convert'
import { unitWords } from '../adjusters/unitWords'
import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { writtenPositions } from './writtenSettings'

export const beyondRange: EntryRule = {
  code: 'beyond-range',
  severity: 'error',
  says: 'A position lies beyond the end of the adjuster’s range. Only a warning where the range is the book’s.',
  why: 'An adjuster cannot stand past its stop, so it was miscounted or counted from the wrong end. Makers’ counts vary: count the range once and note it as measured.',
  checkEntry: (entry) =>
    writtenPositions(entry).flatMap(({ setting: { adjuster, node }, position, row }) => {
      const { count } = ownCount(position, adjuster)
      // Below its own end is another rule's word, unless it was counted from the other end and went past this one.
      if (position.amount < 0 || count === undefined || adjuster.range === undefined) return []
      if (count <= adjuster.range + tolerance && count >= -tolerance) return []
      const range = `${printNumber(adjuster.range)} ${unitWords(adjuster.counts)}`
      return [adjuster.rangeIs === 'measured'
        ? { message: say`${adjuster.label}: ${node.text} is more than its measured range of ${range}; count it again`, range: node.range, row }
        : { message: say`${adjuster.label}: ${node.text} is more than the book’s range of ${range}; count the range once and note it with \`range_is: measured\``, range: node.range, row, severity: 'warning' as const }]
    }),
}

const tolerance = 1e-6
