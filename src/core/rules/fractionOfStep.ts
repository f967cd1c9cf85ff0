import { printPosition } from '../notation/position'
import type { EntryRule } from './rule'
import { writtenPositions } from './writtenSettings'

export const fractionOfStep: EntryRule = {
  code: 'fraction-of-step',
  severity: 'warning',
  says: 'A click, ring, step or dial number is not a whole one.',
  why: 'A detent holds at whole clicks; between two it slips to either. Note `step: 0.5` on an adjuster that does hold halves.',
  checkEntry: (entry) =>
    writtenPositions(entry).flatMap(({ setting, position, row }) => {
      const { adjuster, node } = setting
      const inOwnUnit = position.unit === undefined || position.unit.dimension === adjuster.counts.dimension
      if (adjuster.step === undefined || !inOwnUnit) return []
      const steps = position.amount / adjuster.step
      if (Math.abs(steps - Math.round(steps)) < 1e-6) return []
      const fixes = [Math.floor(steps), Math.ceil(steps)].map((whole) => {
        const text = printPosition({ ...position, amount: whole * adjuster.step! })
        return { title: `Write ‘${text}’`, changes: [{ ...node.range, text }] }
      })
      const message = `${adjuster.label}: ${node.text} lies between two ${adjuster.counts.symbol === 'dial' ? 'numbers' : adjuster.counts.symbol}`
      return [{ message, range: node.range, row, fixes }]
    }),
}
