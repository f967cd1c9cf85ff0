import type { End } from '../compute/sag/loadCase'
import { changeTravel, firstRate, secondRate, type Stack } from '../compute/springs/stackRates'
import type { DualRateStack } from '../compute/springs/dualRate'
import { found, isMissing, reasons, type Outcome } from '../compute/working/result'
import type { Dimension } from '../notation/units'
import { factAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt } from '../notebook/tree'
import { springPreloadOf } from './springPreloadOf'
import { motionRatioAt } from './springsFitted'

/** Whether the notebook tells of a dual-rate stack at an end. */
export function hasStack(notebook: Notebook, end: End): boolean {
  return nodeAt(notebook.root, ['machine', end, 'stack'])?.kind === 'map'
}

function factsOf(notebook: Notebook, end: End): Stack {
  const fact = (key: string, dimension: Dimension) => factAt(notebook, ['machine', end, 'stack', key], dimension)?.base
  return { softRateNPerMm: fact('soft_rate', 'stiffness'), stiffRateNPerMm: fact('stiff_rate', 'stiffness'), softTravelMm: fact('soft_travel', 'length') }
}

/** The stack of an end as numbers, each above zero, or which of them is missing. */
export function stackOf(notebook: Notebook, end: End): Outcome<DualRateStack> {
  const facts = factsOf(notebook, end)
  const whole = changeTravel({ ...facts, preloadMm: 0 })
  return isMissing(whole) ? whole : (facts as DualRateStack)
}

/** The rates of the stack before and after its soft spring stops, N/mm. */
export function stackRatesOf(notebook: Notebook, end: End): { first: Outcome; second: Outcome } {
  const facts = factsOf(notebook, end)
  return { first: firstRate(facts), second: secondRate(facts) }
}

/** Where in the travel of the wheel the rate of the stack changes, mm, with the preload of this entry. */
export function stackChangeOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const preload = springPreloadOf(notebook, entry, end)
  const ratio = end === 'front' ? { ratio: 1 } : motionRatioAt(notebook, 0)
  const change = changeTravel({ ...factsOf(notebook, end), preloadMm: found(preload)?.mm, motionRatio: found(ratio)?.ratio ?? 1 })
  const why = reasons(preload, ratio)
  return why.length > 0 ? { missing: why } : change
}
