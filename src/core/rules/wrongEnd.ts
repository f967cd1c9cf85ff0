import { ownCount, ownPosition } from '../adjusters/convert'
import { printPosition } from '../notation/position'
import { printNumber } from '../notation/amount'
import { phrase, say } from '../words/say'
import type { EntryRule, Report } from './rule'
import { writtenPositions, type Written } from './writtenSettings'
import { writeInstead } from '../notebook/edits/writeInstead'

const from = { closed: phrase('out from fully closed'), open: phrase('in from fully open') }

export const wrongEnd: EntryRule = {
  code: 'wrong-end',
  severity: 'warning',
  says: 'A position is counted from the other end than the adjuster’s own.',
  why: 'Counting from the wrong end is the costliest mistake in the trade: 3 in is not 3 out.',
  checkEntry: (entry, { text }) =>
    writtenPositions(entry).flatMap((written) => {
      const { position, setting } = written
      const own = setting.adjuster.end
      if (position.end === undefined || (position.unit && position.unit.dimension !== setting.adjuster.counts.dimension)) return []
      if (own === undefined) return [noEnd(text, written)]
      return position.end === own || isStopInWords(written) ? [] : [otherEnd(text, written)]
    }),
}

/** `fully open` names a stop and counts from no end; with the range it is known where that is. */
function isStopInWords({ setting: { adjuster, node }, position }: Written): boolean {
  return position.amount === 0 && !/\d/.test(node.text) && ownCount(position, adjuster).count !== undefined
}

function otherEnd(source: string, { setting, position, row }: Written): Report {
  const { adjuster, node } = setting
  const { count } = ownCount(position, adjuster)
  const message = say`${adjuster.label} is counted ${say(from[adjuster.end!])}, and ‘${node.text}’ is counted ${say(from[position.end!])}`
  if (count === undefined) return { message: say`${message}; with its \`range\` this could be converted`, range: node.range, row }
  if (count < 0) return { message, range: node.range, row }
  const text = printPosition(ownPosition(count, adjuster))
  return { message: say`${message}: that is ${text}`, range: node.range, row, fixes: writeInstead(source, node, text) }
}

function noEnd(source: string, { setting, position, row }: Written): Report {
  const { adjuster, node } = setting
  const text = position.unit ? printPosition({ amount: position.amount, unit: position.unit }) : printNumber(position.amount)
  return {
    message: say`${adjuster.label} has no end to count from: write ‘${text}’`, range: node.range, row,
    fixes: writeInstead(source, node, text),
  }
}
