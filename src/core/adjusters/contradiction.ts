import { printNumber } from '../notation/amount'
import { unitWords } from './unitWords'
import { say } from '../words/say'
import { usualHigherIs, type Adjuster } from './adjuster'
import { suitsUnit } from './controls'

/** What a notebook said of an adjuster besides what was made of it. */
export interface Said {
  counted?: 'out' | 'in'
  higherIs?: 'more' | 'less'
}

/** Ratios that agree within this share are rounded, not contradictory. Our own choice. */
const ratioTolerance = 0.02

/**
 * Why the facts of an adjuster cannot all be true; `undefined` where they can. One reason is enough: the next is told
 * when it is mended.
 *
 * @example findContradiction(reboundCountedInBar, {}) // 'rebound damping cannot be counted in bar'
 */
export function findContradiction(adjuster: Adjuster, said: Said): string | undefined {
  return unsuited(adjuster) ?? twoScales(said) ?? noEnds(adjuster, said) ?? againstItself(adjuster, said) ?? coarseStep(adjuster) ?? ratios(adjuster)
}

function unsuited({ control, counts }: Adjuster): string | undefined {
  return suitsUnit(control, counts) ? undefined : say`${say(control.words)} cannot be counted in ${unitWords(counts)}`
}

function twoScales({ counted, higherIs }: Said): string | undefined {
  return counted && higherIs ? say('it is either counted from an end (`counted`) or has a scale of its own (`higher_is`), not both') : undefined
}

function noEnds({ control, counts }: Adjuster, { counted }: Said): string | undefined {
  const isCounted = control.counted !== undefined || counts.dimension === 'turn' || counts.dimension === 'click'
  return counted && !isCounted ? say(`it is measured and has no end to count from, so \`counted\` has no meaning: take it out`) : undefined
}

/** A pressure, a rate or a height is what is controlled itself: its figure cannot run against it. A link may be measured from any end. */
function againstItself({ control, counts }: Adjuster, { higherIs }: Said): string | undefined {
  const usual = usualHigherIs(control, counts)
  if (higherIs === undefined || higherIs === usual || control.counted !== undefined || control.name === 'ride_height') return undefined
  return say`a higher figure in ${unitWords(counts)} is ${usual === 'more' ? say(control.more) : say(control.less)}, so \`higher_is: ${higherIs}\` cannot be`
}

function coarseStep({ step, range, counts }: Adjuster): string | undefined {
  if (step === undefined || range === undefined || step <= range) return undefined
  return say`its smallest \`step\` of ${printNumber(step)} is more than its whole \`range\` of ${printNumber(range)} ${unitWords(counts)}`
}

function ratios({ mmPerTurn, mmPerClick, clicksPerTurn }: Adjuster): string | undefined {
  if (mmPerTurn === undefined || mmPerClick === undefined || clicksPerTurn === undefined) return undefined
  const made = mmPerClick * clicksPerTurn
  if (Math.abs(made - mmPerTurn) <= ratioTolerance * mmPerTurn) return undefined
  return say`${printNumber(clicksPerTurn)} clicks of ${printNumber(mmPerClick)} mm make ${printNumber(made)} mm a turn, but \`mm_per_turn\` is ${printNumber(mmPerTurn)}`
}
