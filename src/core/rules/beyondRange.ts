import { ownCount, ownPosition } from '../adjusters/convert'
import { printPosition } from '../notation/position'
import type { EntryRule } from './rule'
import { writtenPositions } from './writtenSettings'

export const beyondRange: EntryRule = {
  code: 'beyond-range',
  severity: 'error',
  says: 'A position lies beyond the end of the adjuster’s range. Only a warning where the range is the book’s.',
  why: 'An adjuster cannot stand past its stop, so it was miscounted or counted from the wrong end. Makers’ counts vary: count the range once and note it as measured.',
  checkEntry: (entry) =>
    writtenPositions(entry).flatMap(({ setting, position, row }) => {
      const { adjuster, node } = setting
      const { count } = ownCount(position, adjuster)
      if (count === undefined || adjuster.range === undefined || (count <= adjuster.range + 1e-6 && count >= -1e-6)) return []
      if (position.amount < 0) return []
      const most = printPosition(ownPosition(adjuster.range, adjuster))
      const measured = adjuster.rangeIs === 'measured'
      const source = measured ? 'its measured range ends' : 'the book’s range ends'
      return [{ message: `${adjuster.label}: ${node.text} is beyond its end; ${source} at ${most}`, range: node.range, row, severity: measured ? 'error' : 'warning' }]
    }),
}
