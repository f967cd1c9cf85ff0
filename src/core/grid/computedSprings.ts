import type { End } from '../compute/sag/loadCase'
import { found, isMissing, type Outcome } from '../compute/working/result'
import { riderLoadOf } from '../derived/loadsOf'
import { preloadOf, preloadWords } from '../derived/preloadOf'
import { readingsOf } from '../derived/sagOf'
import { springVerdictOf, springWantedOf } from '../derived/springVerdict'
import { fittedRateOf, impliedRateOf, rateComparisonOf } from '../derived/wheelRateOf'
import { printNumber } from '../notation/amount'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import { anyEntry, type Computed } from './computedRow'

/** Rate, preload and spring of one end, as far as its sags tell of them. */
export function computedSprings(end: End): Computed[] {
  const group = `sag_${end}` as const
  const bothRead = anyEntry((notebook, entry) => (['bike', 'rider'] as const).every((load) => readingsOf(notebook, entry, end, load) !== undefined))
  const where = end === 'front' ? 'along the tubes' : 'at the wheel'
  return [
    { key: `${end}.wheel_rate_n_per_mm`, group, label: 'Wheel rate', detail: 'as both sags imply', unit: 'N/mm', digits: 1, plusMinus: true, wanted: bothRead,
      about: `The rider’s load on this end over the difference of both sags, N for a mm ${where}. ± is one standard uncertainty.`,
      compute: (notebook, entry) => impliedRateOf(notebook, entry, end),
      steps: (notebook, entry) => [{ name: say('The rider’s load'), outcome: riderLoadOf(notebook, entry, end) }],
      note: (notebook, entry) => againstFitted(notebook, entry, end) },
    { key: `${end}.fitted_rate_n_per_mm`, group, label: 'Wheel rate', detail: 'of the springs fitted', unit: 'N/mm', digits: 1, wanted: bothRead,
      about: `What the springs fitted in this entry make ${where}, to hold against what the sags imply.`,
      compute: (notebook, entry) => fittedRateOf(notebook, entry, end) },
    { key: `${end}.preload`, group, label: 'Preload', detail: 'to the window', wanted: anyEntry((notebook, entry) => !isMissing(preloadOf(notebook, entry, end))),
      about: 'How far to turn the preload, and where it then stands, to bring the sag of this entry to the middle of its window. It moves the sags and leaves the rate as it is.',
      say: (notebook, entry, units) => preloadAdvice(notebook, entry, end, units),
      steps: (notebook, entry) => [{ name: say('At the spring'), outcome: changeAtSpring(notebook, entry, end) }] },
    { key: `${end}.spring`, group, label: 'Spring', detail: 'by both sags', wanted: anyEntry((notebook, entry) => !isMissing(springVerdictOf(notebook, entry, end))),
      about: 'Whether the spring suits the load: with the rider’s sag set right, little sag of the bike alone means too soft a spring, much of it too stiff a one. A starting point, as the windows are.',
      say: (notebook, entry, units) => springWords(notebook, entry, end, units),
      steps: (notebook, entry) => [{ name: say('The nearest spring that meets both windows'), outcome: wantedOf(notebook, entry, end, 'rate') }, { name: say('The preload that goes with it'), outcome: wantedOf(notebook, entry, end, 'preload') }] },
  ]
}

function againstFitted(notebook: Notebook, entry: Entry, end: End): string | undefined {
  const comparison = found(rateComparisonOf(notebook, entry, end))
  if (!comparison) return undefined
  const by = say`${printNumber(Math.abs(comparison.difference.value), 0)} % ${comparison.difference.value < 0 ? say('below') : say('above')} the springs fitted`
  return comparison.agree === undefined ? by : say`${by}, ${comparison.agree ? say('within') : say('more than')} twice the uncertainty`
}

function preloadAdvice(notebook: Notebook, entry: Entry, end: End, units: DisplayUnits): Outcome<{ text: string; about?: string }> {
  const preload = preloadOf(notebook, entry, end, units)
  if (isMissing(preload)) return preload
  const { plan } = preload
  const then = plan.needed === 'none' ? [] : [[plan.after.bikeMm, say('bike alone')] as const, [plan.after.riderMm, say('rider aboard')] as const]
    .flatMap(([mm, who]) => (mm === undefined ? [] : [`${sayIn(units)(mm, 'mm')} ${who}`]))
  const about = [...(then.length > 0 ? [say`sag then: ${then.join(', ')}`] : []), ...plan.limits].join('; ')
  return { text: preloadWords(preload, units), ...(about ? { about } : {}) }
}

function changeAtSpring(notebook: Notebook, entry: Entry, end: End): Outcome {
  const preload = preloadOf(notebook, entry, end)
  return isMissing(preload) ? preload : preload.plan.toMiddle
}

const verdicts = { fits: phrase('suits the load'), tooSoft: phrase('too soft'), tooStiff: phrase('too stiff'), unknown: phrase('read again off the top stop') } as const

function springWords(notebook: Notebook, entry: Entry, end: End, units: DisplayUnits): Outcome<{ text: string; about?: string }> {
  const figure = sayIn(units)
  const judged = springVerdictOf(notebook, entry, end)
  if (isMissing(judged)) return judged
  const { verdict, preloadFirst, then, bikeSagThenMm } = judged
  const unsure = then.sure === false && verdict !== 'unknown' ? say('within the uncertainty it could be otherwise') : undefined
  const first = preloadFirst && say`with ${say(preloadFirst)} preload first, the bike alone would sag ${figure(bikeSagThenMm, 'mm')}`
  const wanted = found(springWantedOf(notebook, entry, end))
  const sold = wanted && (verdict === 'tooSoft' || verdict === 'tooStiff') ? say`${figure(wanted.rate.value, 'N/mm')} would meet both windows; the usual steps are ${[...new Set([wanted.sold.below, wanted.sold.above])].map((rate) => figure(rate, 'N/mm')).join(say(' and '))}` : undefined
  const preload = sold && wanted ? found(wanted.preload) : undefined
  const withPreload = preload && (preload.value < 0 ? say('no spring meets both at once') : say`with ${figure(preload.value, 'mm')} of preload at ${end === 'front' ? say('each spring') : say('the spring')}`)
  const about = [first, unsure, sold && [sold, withPreload].filter(Boolean).join(', ')].filter(Boolean).join('; ')
  return { text: `${say(verdicts[verdict])}${unsure ? say(', perhaps') : ''}`, ...(about ? { about } : {}) }
}

function wantedOf(notebook: Notebook, entry: Entry, end: End, what: 'rate' | 'preload'): Outcome {
  const wanted = springWantedOf(notebook, entry, end)
  return isMissing(wanted) ? wanted : wanted[what]
}
