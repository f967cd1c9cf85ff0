import type { EntryRule } from './rule'
import { writtenPositions } from './writtenSettings'

/** Heights are measured from a mark and may lie on either side of it. */
const eitherSide = ['fork_height', 'ride_height']

export const belowZero: EntryRule = {
  code: 'below-zero',
  severity: 'error',
  says: 'A position, pressure or rate is below zero.',
  why: 'Counting begins at the seat. Never force an adjuster past it to find more.',
  checkEntry: (entry) =>
    writtenPositions(entry).flatMap(({ setting, position, row }) => {
      if (position.amount >= 0 || eitherSide.includes(setting.adjuster.control.name)) return []
      return [{ message: `${setting.adjuster.label}: ${setting.node.text} is below zero`, range: setting.node.range, row }]
    }),
}
