import { ownCount } from '../adjusters/convert'
import type { EntryRule } from './rule'
import { isSame } from './standings'
import { writtenPositions } from './writtenSettings'

export const leftAtStop: EntryRule = {
  code: 'left-at-stop',
  severity: 'warning',
  says: 'Damping is left fully closed, or fully open.',
  why: 'Fully closed is where counting begins, not a setting: the valve passes next to nothing, and fully open it hardly works. If it takes the stop to feel right, the spring or the valving is to blame.',
  checkEntry: (entry) =>
    writtenPositions(entry).flatMap(({ setting, position, row }) => {
      const { adjuster, node } = setting
      const { count } = ownCount(position, adjuster)
      if (!adjuster.control.damping || count === undefined || adjuster.end === undefined) return []
      const stop = isSame(count, 0) ? adjuster.end : adjuster.range !== undefined && isSame(count, adjuster.range) ? otherEnd[adjuster.end] : undefined
      if (stop === undefined) return []
      const what = entry.asFound ? 'was found' : 'is left'
      const message = `${adjuster.label} ${what} fully ${stop}: that is a place to count from, not a setting`
      return [{ message, range: node.range, row, severity: stop === 'closed' && !entry.asFound ? 'warning' : 'info' }]
    }),
}

const otherEnd = { closed: 'open', open: 'closed' } as const
