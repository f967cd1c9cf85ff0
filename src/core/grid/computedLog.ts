import { found, isMissing, type Outcome, type Result } from '../compute/working/result'
import { endOfLog, logAtHandOf, logPathOf, readLogOf } from '../derived/logOf'
import type { ReadLog } from '../logs/atHand'
import type { EndName } from '../logs/mapping/mapping'
import { decayRules } from '../logs/statistics/freeDecays'
import type { EndStatistics } from '../logs/statistics/logStatistics'
import { packingRules } from '../logs/statistics/packing'
import { printNumber } from '../notation/amount'
import { printShown, shownUnit, type DisplayUnits } from '../notation/displayUnits'
import { measured } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import { anyEntry, type Computed, type NumberRow } from './computedRow'

/** A figure of one end of a log. */
interface Figure {
  name: string
  label: string
  unit: string
  digits: number
  about: string
  /** How it was worked out, where a formula would stand. */
  method: string
  pick: (end: EndStatistics) => number | undefined
  /** What it needs besides the log, where `pick` finds nothing. */
  needs: string
  /** What it counts as what, to stand beside it. */
  limits?: (end: EndStatistics) => string | undefined
  /** It stands on velocities, whose filter is told beside it. */
  ofVelocity?: true
}

const needsTravel = phrase('the travel of this end')
const needsSpeed = phrase('a stretch long enough for a velocity')
const needsDecay = phrase('a free decay in the log')
const decayWords = phrase('From places in the log where this end swung out by itself. On a ride the road goes on pushing, so these are estimates, the fewer the weaker.')
const position = { unit: 'mm', digits: 1, needs: needsTravel } as const
const speedLimits = ({ velocity }: EndStatistics): string | undefined => velocity && say`high speed from ${velocity.lowHighLimitMmPerS.compression} mm/s in compression and ${velocity.lowHighLimitMmPerS.rebound} mm/s in rebound`
const share = { unit: '%', digits: 0, ofVelocity: true, needs: needsSpeed, method: phrase('samples in this range of velocity, of all samples'), limits: speedLimits,
  about: phrase('The share of the time in which this end moved so. High speed is that of the damper, not of the road; what counts as high stands with the working.') } as const

const figures: readonly Figure[] = [
  { ...position, name: 'median_mm', label: phrase('Dynamic sag, median'), method: phrase('median of all positions'), pick: ({ position: { medianMm } }) => medianMm,
    about: phrase('Half of the time this end was further in. How far it sits down while riding: sag at work.') },
  { ...position, name: 'mean_mm', label: phrase('Dynamic sag, mean'), method: phrase('mean of all positions'), pick: ({ position: { meanMm } }) => meanMm,
    about: phrase('The mean of all positions. Far above the median, a few long strokes pull it up.') },
  { ...position, name: 'deepest_mm', label: phrase('Deepest'), method: phrase('the position furthest in'), pick: ({ position: { deepestMm } }) => deepestMm,
    about: phrase('The deepest point of the log, from full extension.') },
  { ...position, name: 'deepest_pct', unit: '%', digits: 0, label: phrase('Deepest, of travel'), method: phrase('the position furthest in, of the travel'), pick: ({ position: { deepestPct } }) => deepestPct,
    about: phrase('The deepest point of the log as a share of the travel. Nearly all of it at the hardest place is as it should be.') },
  { name: 'bottomed', label: phrase('Bottomed'), unit: '', digits: 0, needs: needsTravel, method: phrase('times this end came onto its stop'), pick: (end) => end.bottoming?.times, limits: ({ bottoming }) => bottoming && say`on the stop: within ${bottoming.withinMm} mm of the end of the travel; counted again after ${bottoming.leaveMm} mm more`,
    about: phrase('How often this end came onto its stop. Once at the hardest place of a ride is as it should be.') },
  { name: 'topped', label: phrase('Topped out'), unit: '', digits: 0, needs: needsTravel, method: phrase('times this end came out to its stop'), pick: (end) => end.topping?.times, limits: ({ topping }) => topping && say`at full extension: within ${topping.withinMm} mm of it; counted again after ${topping.leaveMm} mm more`,
    about: phrase('How often this end came out to full extension. Over crests that is nothing; on the level the spring holds too much, or there is too little rebound damping.') },
  { ...share, name: 'high_compression_pct', label: phrase('High-speed compression'), pick: ({ velocity }) => velocity?.sharesPct.highCompression },
  { ...share, name: 'low_compression_pct', label: phrase('Low-speed compression'), pick: ({ velocity }) => velocity?.sharesPct.lowCompression },
  { ...share, name: 'low_rebound_pct', label: phrase('Low-speed rebound'), pick: ({ velocity }) => velocity?.sharesPct.lowRebound },
  { ...share, name: 'high_rebound_pct', label: phrase('High-speed rebound'), pick: ({ velocity }) => velocity?.sharesPct.highRebound },
  { name: 'packed', label: phrase('Packed down'), unit: '', digits: 0, needs: phrase('a run of quick hits in the log'), method: phrase('runs of quick hits in which this end sits deeper from hit to hit'), limits: () => say(packingRules), pick: ({ packing }) => packing?.packed,
    about: phrase('In how many runs of quick hits this end came out less and less far. Too much rebound damping is the usual cause.') },
  { name: 'damping_ratio', label: phrase('Damping ratio'), unit: '', digits: 2, needs: needsDecay, method: phrase('median of the logarithmic decrements of all free decays found'), limits: () => say(decayRules), about: decayWords,
    pick: ({ freeDecays }) => freeDecays?.dampingRatio },
  { name: 'natural_hz', label: phrase('Natural frequency'), unit: 'Hz', digits: 2, needs: needsDecay, method: phrase('median of the frequencies of all free decays found'), limits: () => say(decayRules), about: decayWords,
    pick: ({ freeDecays }) => freeDecays?.naturalHz },
]

const byLogAndTie = { front: phrase('front, log / tie'), rear: phrase('rear, log / tie') } as const
const endFound = (end: EndName) => anyEntry((notebook, entry) => found(endOfLog(notebook, entry, end)) !== undefined)
const hasEnd = { front: endFound('front'), rear: endFound('rear') }

/** What was read of the logs that entries name, beside what ties and people say. */
export const computedLog: readonly Computed[] = [
  { key: 'log.read', group: 'log', label: phrase('Log'), about: phrase('What was read of the log this entry names, or why it could not be read.'), say: stateOf,
    wanted: (notebook) => notebook.logs !== undefined && notebook.entries.some((entry) => logPathOf(entry) !== undefined) },
  ...(['front', 'rear'] as const).flatMap((end): Computed[] => [
    { key: `log.${end}_used`, group: 'log', label: phrase('Travel used'), detail: byLogAndTie[end], wanted: hasEnd[end], say: (notebook, entry, units) => logAndTie(notebook, entry, end, units),
      about: phrase('The deepest point of the log beside what the cable tie showed. A tie that slipped, or a log that began late, shows here.') },
    ...figures.map((figure) => rowOf(figure, end)),
  ]),
  together({ name: 'front_ahead_pct', label: phrase('Front ahead of rear'), unit: '%', digits: 0, method: phrase('mean of the front’s share of travel less the rear’s'), needs: phrase('both ends with their travel'),
    about: phrase('How much further into its travel the front is than the rear, on average over the log.'), pick: ({ statistics }) => statistics.frontRear?.frontAheadPct }),
  together({ name: 'pitch_deg', label: phrase('Pitch, median'), unit: '°', digits: 1, method: phrase('median of the pitch worked out from both ends'), needs: phrase('both ends and the machine’s geometry'),
    about: phrase('How far the machine lies nose up, against both ends fully extended: exact in the plane, level road, tyres that do not give.'), pick: ({ statistics }) => statistics.attitude?.pitchDeg.p50 }),
  together({ name: 'rake_deg', label: phrase('Rake, median'), unit: '°', digits: 1, method: phrase('median of the rake worked out from both ends'), needs: phrase('both ends and the machine’s geometry'),
    about: phrase('The rake as the machine lay while riding, half of the time more.'), pick: ({ statistics }) => statistics.attitude?.rakeDeg.p50 }),
  together({ name: 'braking_front_mm', label: phrase('Deepest in braking'), unit: 'mm', digits: 0, method: phrase('median over all brakings of the deepest position of the fork'), needs: phrase('braking in the log'),
    about: phrase('How deep the fork goes in a usual braking. Braking is told by the brake’s own column, else by the front being much further in than the rear.'), pick: ({ statistics }) => statistics.braking?.deepestFrontMm }),
]

function rowOf(figure: Figure, end: EndName): NumberRow {
  const { name, label, unit, digits, about } = figure
  return {
    key: `log.${end}_${name}`, group: 'log', label, detail: end, unit, digits, about, wanted: hasEnd[end],
    compute(notebook, entry) {
      const of = endOfLog(notebook, entry, end)
      if (isMissing(of)) return of
      const value = figure.pick(of.end)
      return value === undefined ? { missing: [say(figure.needs)] } : result(value, figure, entry, assumed(figure, of))
    },
  }
}

function assumed({ limits, ofVelocity }: Figure, { log, end }: { log: ReadLog; end: EndStatistics }): string[] {
  const own = limits?.(end)
  return [...sampling(log), ...ofPositions(end), ...(own === undefined ? [] : [own]), ...(ofVelocity ? [filter(log)] : [])]
}

interface Together extends Pick<Figure, 'name' | 'label' | 'unit' | 'digits' | 'about' | 'method' | 'needs'> {
  pick: (log: ReadLog) => number | undefined
}

/** A figure that both ends make together; there is no row where no log has it. */
function together(figure: Together): NumberRow {
  const { name, label, unit, digits, about, pick } = figure
  const compute = (notebook: Notebook, entry: Entry): Outcome => {
    const log = readLogOf(notebook, entry)
    if (isMissing(log)) return log
    const value = pick(log)
    return value === undefined ? { missing: [say(figure.needs)] } : result(value, figure, entry, sampling(log))
  }
  return { key: `log.${name}`, group: 'log', label, unit, digits, about, compute, wanted: anyEntry((notebook, entry) => !isMissing(compute(notebook, entry))) }
}

function result(value: number, { unit, method }: Pick<Figure, 'unit' | 'method'>, entry: Entry, assumptions: string[]): Result {
  return { value, unit, working: { formula: say(method), inputs: [], assumptions, source: say`the log ${logPathOf(entry) ?? ''}` } }
}

/** Rates and filters stand beside every number. */
function sampling({ statistics: { sampling: { rows, rateHz, fromS, toS } } }: ReadLog): string[] {
  return [say`${rows} rows, ${printNumber(rateHz, 1)} samples a second, from ${printNumber(fromS, 2)} to ${printNumber(toS, 2)} s`]
}

function ofPositions({ position: { exact, resolutionMm } }: EndStatistics): string[] {
  return [exact ? say`positions counted exactly, in steps of ${printNumber(resolutionMm, 4)} mm` : say`positions counted to ${printNumber(resolutionMm, 4)} mm`]
}

function filter({ statistics: { sampling: { velocityFit: { points, order, spanS } } } }: ReadLog): string {
  return say`velocity by Savitzky-Golay over ${points} samples (${printNumber(1000 * spanS, 0)} ms), order ${order}`
}

function stateOf(notebook: Notebook, entry: Entry): Outcome<{ text: string; about?: string }> {
  const log = logAtHandOf(notebook, entry)
  if (!log) return { missing: [say('a log of this ride')] }
  switch (log.state) {
    case 'reading': return { text: say('being read…') }
    case 'unread': return { text: log.why }
    case 'read': {
      const { rows, rateHz, fromS, toS } = log.statistics.sampling
      return { text: say`${printNumber(toS - fromS, 0)} s`, about: [say`${rows} rows, ${printNumber(rateHz, 1)} samples a second`, ...log.notes].join('; ') }
    }
  }
}

function logAndTie(notebook: Notebook, entry: Entry, end: EndName, units: DisplayUnits): Outcome<{ text: string; about?: string }> {
  const of = endOfLog(notebook, entry, end)
  if (isMissing(of)) return of
  const tie = measured(entry, `ride.${end}_travel_used`)
  const print = (value: number) => printShown({ value }, 'mm', 0, units)
  const log = print(of.end.position.deepestMm)
  return { text: tie ? `${log} / ${print(tie.base)} ${shownUnit('mm', units)}` : say`${log} ${shownUnit('mm', units)}, no tie` }
}
