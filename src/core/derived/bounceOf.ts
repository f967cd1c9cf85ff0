import { dampedFromNatural } from '../compute/bounce/dampedFromNatural'
import { dampingRatio } from '../compute/bounce/dampingRatio'
import { dampedFrequency, frequencyFromRate, naturalFrequency } from '../compute/bounce/frequencies'
import type { End } from '../compute/sag/loadCase'
import { forkRateVertical } from '../compute/springs/forkWheelRate'
import { verticalRate } from '../compute/springs/verticalRate'
import { readLength } from '../compute/working/resolution'
import { found, isMissing, type Measured, type Outcome } from '../compute/working/result'
import { factIn } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt, scalarAt } from '../notebook/tree'
import { assuming } from './assuming'
import { sprungLoadOf } from './loadsOf'
import { readingHalfWidth } from './sagOf'
import { forkSpringsOf } from './springsFitted'
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
  if (heights.length === 0) return { missing: [`the heights of a bounce test of the ${end}`] }
  const heightsMm = heights.map(({ mm }): Measured => readLength(mm, readingHalfWidth(notebook)))
  return dampingRatio({ heightsMm, spacing: 'halfCycle' })
}

/** Damped frequency, Hz: timed where the swings were, else from the natural frequency of springs and load. */
export function dampedFrequencyOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const timed = timedFrequency(entry, end)
  if (timed) return timed
  const ratio = dampingRatioOf(notebook, entry, end)
  if (isMissing(ratio)) return ratio
  const natural = frequencyOfSprings(notebook, entry, end)
  if (isMissing(natural)) return { missing: [`the seconds the swings took, or ${natural.missing.join(' and ')}`] }
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
  return assuming(frequency, [...(isMissing(rate) ? [] : rate.working.assumptions), 'the bike alone, without its rider'])
}

function verticalRateOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  if (end === 'front') {
    const fitted = forkRateVertical({ legRatesNPerMm: Object.values(forkSpringsOf(notebook, entry)), rakeDeg: rakeOf(notebook) })
    if (!isMissing(fitted)) return fitted
    const implied = impliedRateOf(notebook, entry, 'front')
    const vertical = verticalRate({ rateAlongTubesNPerMm: found(implied), rakeDeg: rakeOf(notebook) })
    return isMissing(implied) || isMissing(vertical) ? fitted : assuming(vertical, implied.working.assumptions)
  }
  const fitted = fittedRateOf(notebook, entry, 'rear')
  const implied = isMissing(fitted) ? impliedRateOf(notebook, entry, 'rear') : fitted
  return isMissing(implied) ? fitted : implied
}
