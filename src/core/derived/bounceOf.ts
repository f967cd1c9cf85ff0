import { frontOverRear } from '../compute/bounce/compareEnds'
import { dampedFromNatural } from '../compute/bounce/dampedFromNatural'
import { dampingRatio } from '../compute/bounce/dampingRatio'
import { dampedFrequency, frequencyFromRate, naturalFrequency } from '../compute/bounce/frequencies'
import type { End } from '../compute/sag/loadCase'
import { forkRateVertical } from '../compute/springs/forkWheelRate'
import { verticalRate } from '../compute/springs/verticalRate'
import { readLength } from '../compute/working/resolution'
import { found, isMissing, reasons, type Measured, type Outcome } from '../compute/working/result'
import { factIn } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt, scalarAt } from '../notebook/tree'
import { say } from '../words/say'
import { hasAir } from './airOf'
import { assuming } from './assuming'
import { sprungLoadOf } from './loadsOf'
import { readingHalfWidth } from './sagOf'
import { forkSpringAmountsOf } from './springsFitted'
import { hasStack } from './stackOf'
import { fittedRateOf, impliedRateOf, rakeOf } from './wheelRateOf'

/** The heights of a bounce test, mm, and where they stand in the entry; empty where there was none. */
export function bounceHeightsOf(entry: Entry, end: End): { mm: number; at: { start: number; end: number } }[] {
  const { path, list } = heightsAt(entry, end)
  const items = list?.kind === 'list' ? list.items : []
  return items.flatMap((_, swing) => {
    const fact = factIn(entry.node, [...path, swing], 'length')
    return fact ? [{ mm: fact.base, at: fact.range }] : []
  })
}

function heightsAt(entry: Entry, end: End) {
  const whole = nodeAt(entry.node, ['bounce', end])
  const path = whole?.kind === 'map' ? ['bounce', end, 'heights'] : ['bounce', end]
  return { path, list: nodeAt(entry.node, path) }
}

/** Damping ratio from the heights of this entry's bounce test, each half a cycle from the next. */
export function dampingRatioOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const heights = bounceHeightsOf(entry, end)
  if (heights.length === 0) return { missing: [say`the heights of a bounce test of the ${say(end)}`] }
  const heightsMm = heights.map(({ mm }): Measured => readLength(mm, readingHalfWidth(notebook)))
  return dampingRatio({ heightsMm, spacing: 'halfCycle' })
}

/** The damping ratio of the front over that of the rear: 1 where both ends die away alike. */
export function dampingBalanceOf(notebook: Notebook, entry: Entry): Outcome {
  const [front, rear] = (['front', 'rear'] as const).map((end) => dampingRatioOf(notebook, entry, end))
  if (isMissing(front) || isMissing(rear)) return { missing: reasons(front, rear) }
  return frontOverRear({ name: say('damping ratio'), unit: '', front, rear })
}

/** Damped frequency, Hz: timed where the swings were, else from the natural frequency of springs and load. */
export function dampedFrequencyOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const timed = timedFrequency(entry, end)
  if (timed) return timed
  const ratio = dampingRatioOf(notebook, entry, end)
  if (isMissing(ratio)) return ratio
  const natural = frequencyOfSprings(notebook, entry, end)
  if (isMissing(natural)) return { missing: [say`the seconds the swings took, or ${natural.missing.join(say(' and '))}`] }
  return assuming(dampedFromNatural({ naturalHz: natural, ratio }), natural.working.assumptions)
}

/** Natural frequency, Hz: from the timed swings and their damping, else from springs and load. */
export function naturalFrequencyOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const timed = timedFrequency(entry, end)
  return timed && !isMissing(timed) ? naturalFrequency({ dampedHz: timed, ratio: found(dampingRatioOf(notebook, entry, end)) }) : frequencyOfSprings(notebook, entry, end)
}

function timedFrequency(entry: Entry, end: End): Outcome | undefined {
  const seconds = scalarAt(entry.node, ['bounce', end, 'seconds'])?.value
  if (typeof seconds !== 'number') return undefined
  return dampedFrequency({ cycles: (bounceHeightsOf(entry, end).length - 1) / 2, seconds })
}

/** What springs and load make of it, the bike alone: the springs fitted where they are known, else what the sags imply. */
function frequencyOfSprings(notebook: Notebook, entry: Entry, end: End): Outcome {
  const rate = verticalRateOf(notebook, entry, end)
  const load = sprungLoadOf(notebook, entry, end, 'bike')
  const frequency = frequencyFromRate({ wheelRateNPerMm: found(rate), sprungLoadN: found(load) })
  const why = [rate, load].flatMap((outcome) => (isMissing(outcome) ? outcome.missing : []))
  if (why.length > 0) return { missing: [...new Set(why)] }
  return assuming(frequency, [...(isMissing(rate) ? [] : rate.working.assumptions), say('the bike alone, without its rider')])
}

function verticalRateOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  if (end === 'front') {
    const fitted = forkVertical(notebook, entry)
    const vertical = isMissing(fitted) ? upright(notebook, impliedRateOf(notebook, entry, 'front')) : fitted
    return isMissing(vertical) ? fitted : vertical
  }
  const fitted = fittedRateOf(notebook, entry, 'rear')
  const implied = isMissing(fitted) ? impliedRateOf(notebook, entry, 'rear') : fitted
  return isMissing(implied) ? fitted : implied
}

/** Springs alone add up; air and stacks are taken at the mean between both sags. */
function forkVertical(notebook: Notebook, entry: Entry): Outcome {
  const legRatesNPerMm = Object.values(forkSpringAmountsOf(notebook, entry))
  const isStraight = !hasAir(notebook) && !(legRatesNPerMm.length === 0 && hasStack(notebook, 'front'))
  return isStraight ? forkRateVertical({ legRatesNPerMm, rakeDeg: rakeOf(notebook) }) : upright(notebook, fittedRateOf(notebook, entry, 'front'))
}

/** A rate along the tubes as the axle feels it. */
function upright(notebook: Notebook, along: Outcome): Outcome {
  return isMissing(along) ? along : assuming(verticalRate({ rateAlongTubesNPerMm: along, rakeDeg: rakeOf(notebook) }), along.working.assumptions)
}
