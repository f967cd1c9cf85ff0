import type { Adjuster } from '../adjusters/adjuster'
import { printNumber } from '../notation/amount'
import { isCount } from '../notation/units'
import type { Notebook } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'
import type { NotebookRule } from './rule'

/** Ratios that agree within this share are rounded, not contradictory. Our own choice. */
const ratioTolerance = 0.02

export const adjusterContradiction: NotebookRule = {
  code: 'adjuster-contradiction',
  severity: 'error',
  says: 'An adjuster is defined by facts that contradict one another.',
  why: 'Every position, conversion and direction of it rests on them. It is told once, where it is defined.',
  checkNotebook: (notebook) =>
    [...notebook.adjusters.values()].flatMap((adjuster) => {
      const message = unsuited(adjuster) ?? twoScales(notebook, adjuster) ?? ratios(adjuster)
      return message === undefined ? [] : [{ message: `${adjuster.label}: ${message}`, range: adjuster.nameRange }]
    }),
}

/** What is turned can be counted in any way, a numbered dial included; what is measured has its own kinds of unit. */
function unsuited({ control, counts }: Adjuster): string | undefined {
  const isTurned = control.counted !== undefined && isCount(counts)
  return isTurned || control.suits.includes(counts.dimension) ? undefined : `${control.words} cannot be counted in ${counts.symbol}`
}

function twoScales({ root }: Notebook, { id }: Adjuster): string | undefined {
  const [counted, higher] = ['counted', 'higher_is'].map((key) => scalarAt(root, ['adjusters', id, key]))
  return counted && higher ? 'it is either counted from an end (`counted`) or has a scale of its own (`higher_is`), not both' : undefined
}

function ratios({ mmPerTurn, mmPerClick, clicksPerTurn }: Adjuster): string | undefined {
  if (mmPerTurn === undefined || mmPerClick === undefined || clicksPerTurn === undefined) return undefined
  const made = mmPerClick * clicksPerTurn
  if (Math.abs(made - mmPerTurn) <= ratioTolerance * mmPerTurn) return undefined
  return `${printNumber(clicksPerTurn)} clicks of ${printNumber(mmPerClick)} mm make ${printNumber(made)} mm a turn, but \`mm_per_turn\` is ${printNumber(mmPerTurn)}`
}
