import { factsIn, ownCount, ownPosition } from '../adjusters/convert'
import { printPosition } from '../notation/position'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { writtenPositions } from './writtenSettings'
import { writeInstead } from '../notebook/edits/writeInstead'

export const wrongUnit: EntryRule = {
  code: 'wrong-unit',
  severity: 'warning',
  says: 'A position is in a unit that the adjuster does not count in.',
  why: 'Two turns are not two clicks. Where the adjuster’s ratios allow, the converted count is offered.',
  checkEntry: (entry, notebook) =>
    writtenPositions(entry).flatMap(({ setting, position, row }) => {
      const { adjuster, node } = setting
      if (position.unit === undefined || position.unit.dimension === adjuster.counts.dimension) return []
      const counts = say`${adjuster.label} counts in ${adjuster.counts.symbol}, not in ${position.unit.symbol}`
      const converted = ownCount(position, adjuster)
      if (converted.count === undefined) {
        const suits = factsIn(converted.missing).length > 0 ? say`; with \`${converted.missing}\` on the adjuster it could be converted` : ''
        return [{ message: counts + suits, range: node.range, row }]
      }
      const text = printPosition(ownPosition(converted.count, adjuster))
      return [{ message: say`${counts}: that is ${text}`, range: node.range, row, fixes: writeInstead(notebook.text, node, text) }]
    }),
}
