import { amountWords } from '../adjusters/changeWords'
import { unitWords } from '../adjusters/unitWords'
import { convertAmount } from '../adjusters/convert'
import { printPosition } from '../notation/position'
import { phrase, say } from '../words/say'
import type { EntryRule } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'
import { writtenPositions, type Written } from './writtenSettings'

export const fractionOfStep: EntryRule = {
  code: 'fraction-of-step',
  severity: 'warning',
  says: 'A click, ring, step or dial number is not a whole one.',
  why: 'A detent holds at whole clicks; between two it slips to either. Note `step: 0.5` on an adjuster that does hold halves.',
  checkEntry: (entry, notebook) =>
    writtenPositions(entry).flatMap((written) => {
      const { setting: { adjuster, node }, row } = written
      const steps = stepsOf(written)
      if (adjuster.step === undefined || steps === undefined || Math.abs(steps - Math.round(steps)) < 1e-6) return []
      const between = adjuster.step === 1 ? say`two ${names[adjuster.counts.dimension] ? say(names[adjuster.counts.dimension]!) : unitWords(adjuster.counts)}` : say`two places it holds, every ${amountWords(adjuster.counts, adjuster.step)}`
      const fixes = [Math.floor(steps), Math.ceil(steps)].flatMap((whole) => {
        const text = printPosition({ ...written.position, amount: whole * adjuster.step!, ...(written.position.unit ? { unit: adjuster.counts } : {}) })
        return writeInstead(notebook.text, node, text)
      })
      return [{ message: say`${adjuster.label}: ${node.text} lies between ${between}; feel for the click and count again`, range: node.range, row, fixes }]
    }),
}

const names: Partial<Record<string, string>> = { dial: phrase('numbers'), mark: phrase('rings') }

/** How many steps from the end it was counted from; unknown for a count of another kind, which has a rule of its own. */
function stepsOf({ setting: { adjuster }, position }: Written): number | undefined {
  const unit = position.unit ?? adjuster.counts
  if (adjuster.step === undefined || unit.dimension !== adjuster.counts.dimension) return undefined
  const { count } = convertAmount(position.amount, unit, adjuster.counts, adjuster)
  return count === undefined ? undefined : count / adjuster.step
}
