import { describeDialect } from '../reading/dialect'
import { decayRules } from '../statistics/freeDecays'
import { packingRules } from '../statistics/packing'
import type { EndStatistics, LogStatistics, Sampling } from '../statistics/logStatistics'
import type { LogReport } from '../analyseLog'
import { mappingText } from './mappingText'
import { textTable } from './table'

const number = (value: number, digits = 1) => value.toFixed(digits).replace(/^-(0(?:\.0*)?)$/, '$1')
const percent = (value: number | undefined) => (value === undefined ? '' : ` (${number(value)} %)`)

/** A report for people: what was read and how, the figures of both ends beside each other, then all that was mended. */
export function logText({ dialect, proposed, statistics, notes }: LogReport, title: string): string {
  if (!statistics) return ''
  const parts = [
    [title, ...(dialect ? [describeDialect(dialect)] : []), ...samplingLines(statistics.sampling)],
    ...(proposed ? [['Columns taken by their headings; if this is right, put it under machine in the notebook:', ...mappingText(proposed.mapping).split('\n').map((line) => `  ${line}`), ...proposed.unsure.map((doubt) => `  not sure: ${doubt}`)]] : []),
    endsTable(statistics), together(statistics), lapTable(statistics),
    notes.length > 0 ? ['Left out or mended:', ...notes.map((note) => `  ${note}`)] : [],
  ]
  return `${parts.filter((part) => part.length > 0).map((part) => part.join('\n')).join('\n\n')}\n`
}

function samplingLines({ rows, rateHz, fromS, toS, velocityFit: { points, order, spanS }, averagedBy }: Sampling): string[] {
  return [
    `${rows} rows, ${number(rateHz, rateHz < 100 ? 2 : 0)} samples a second, from ${number(fromS, 2)} to ${number(toS, 2)} s after the first`,
    `velocity: Savitzky-Golay over ${points} samples (${number(spanS * 1000, 0)} ms), order ${order}, compression above zero${averagedBy > 1 ? `; decays, spectrum, attitude and braking from means of ${averagedBy} samples` : ''}`,
  ]
}

type Row = readonly [label: string, cell: (end: EndStatistics) => string | undefined]

const rows: readonly Row[] = [
  ['Dynamic sag, median', ({ position: { medianMm, medianPct } }) => `${number(medianMm)} mm${percent(medianPct)}`],
  ['Dynamic sag, mean', ({ position: { meanMm, meanPct } }) => `${number(meanMm)} mm${percent(meanPct)}`],
  ['Deepest', ({ position: { deepestMm, deepestPct } }) => `${number(deepestMm)} mm${percent(deepestPct)}`],
  ['  at', ({ position: { deepestAtS } }) => `${number(deepestAtS, 2)} s`],
  ['Half of the time between', ({ position: { percentilesMm } }) => between(percentilesMm.p25, percentilesMm.p75)],
  ['98 % of the time between', ({ position: { percentilesMm } }) => between(percentilesMm.p1, percentilesMm.p99)],
  ['Positions counted', ({ position: { exact, resolutionMm } }) => (exact ? `exactly, in ${Number(resolutionMm.toPrecision(3))} mm` : `to ${Number(resolutionMm.toPrecision(2))} mm`)],
  ['Bottomed', ({ bottoming }) => bottoming && `${bottoming.times} times, ${number(bottoming.totalS, 2)} s`],
  ['Topped out', ({ topping }) => topping && `${topping.times} times, ${number(topping.totalS, 2)} s`],
  ['Fastest compression', ({ velocity }) => velocity && `${number(velocity.fastestCompressionMmPerS, 0)} mm/s`],
  ['Fastest rebound', ({ velocity }) => velocity && `${number(velocity.fastestReboundMmPerS, 0)} mm/s`],
  ['High-speed compression', ({ velocity }) => velocity && `${number(velocity.sharesPct.highCompression)} %`],
  ['Low-speed compression', ({ velocity }) => velocity && `${number(velocity.sharesPct.lowCompression)} %`],
  ['Low-speed rebound', ({ velocity }) => velocity && `${number(velocity.sharesPct.lowRebound)} %`],
  ['High-speed rebound', ({ velocity }) => velocity && `${number(velocity.sharesPct.highRebound)} %`],
  ['98 % of velocities between', ({ velocity }) => velocity && `${number(velocity.percentilesMmPerS.p1!, 0)} and ${number(velocity.percentilesMmPerS.p99!, 0)} mm/s`],
  ['Free decays found', ({ freeDecays }) => freeDecays && String(freeDecays.count)],
  ['  damping ratio', ({ freeDecays }) => freeDecays && `${number(freeDecays.dampingRatio, 2)} (${number(freeDecays.dampingRatioFrom, 2)} to ${number(freeDecays.dampingRatioTo, 2)})`],
  ['  natural frequency', ({ freeDecays }) => freeDecays && `${number(freeDecays.naturalHz, 2)} Hz`],
  ['Runs of quick hits', ({ packing }) => packing && String(packing.trains)],
  ['  packed down in', ({ packing }) => packing && (packing.packed === 0 ? 'none' : `${packing.packed}, up to ${number(packing.worstMm)} mm`)],
  ['Highest peak of the spectrum', ({ spectrum }) => spectrum?.peakHz === undefined ? undefined : `${number(spectrum.peakHz, 2)} Hz`],
]

function between(from: number | undefined, to: number | undefined): string {
  return from === undefined || to === undefined ? '' : `${number(from)} and ${number(to)} mm`
}

function endsTable({ front, rear }: LogStatistics): string[] {
  const ends = [front, rear].filter((end) => end !== undefined)
  const heads = ends.map((end) => `${end === front ? 'Front' : 'Rear'} ‘${end.column}’`)
  const found = rows.map(([label, cell]) => [label, ...ends.map((end) => cell(end) ?? '–')]).filter((row) => row.slice(1).some((cell) => cell !== '–'))
  return [...textTable([['', ...heads], ...found]), ...meanings(ends)]
}

/** What the limits behind the figures are. */
function meanings(ends: readonly EndStatistics[]): string[] {
  const [end] = ends
  const bottoming = ends.find((each) => each.bottoming)?.bottoming
  const topping = ends.find((each) => each.topping)?.topping
  return [
    ...(bottoming && topping ? [`bottomed: within ${bottoming.withinMm} mm of the travel's end, topped out: within ${topping.withinMm} mm of its beginning; again after ${bottoming.leaveMm} mm more`] : []),
    ...(end?.velocity ? [`high speed from ${end.velocity.lowHighLimitMmPerS.compression} mm/s in compression and ${end.velocity.lowHighLimitMmPerS.rebound} mm/s in rebound; percentiles by linear interpolation`] : []),
    ...(ends.some(({ packing }) => packing) ? [packingRules] : []),
    ...(ends.some(({ freeDecays }) => freeDecays) ? [`free decays: ${decayRules}; on a ride the road goes on pushing, so these are estimates`] : []),
  ]
}

function together({ frontRear, attitude, braking }: LogStatistics): string[] {
  const rows = [
    ...(frontRear ? [['Front further in than the rear', `${number(frontRear.frontAheadPct)} % of travel`], ['Front and rear go together', `correlation ${number(frontRear.correlation, 2)}`]] : []),
    ...(attitude ? (['pitchDeg', 'rakeDeg'] as const).map((key) => [key === 'pitchDeg' ? 'Pitch, nose up, 5 – 50 – 95 %' : 'Rake, 5 – 50 – 95 %', `${[attitude[key].p5, attitude[key].p50, attitude[key].p95].map((value) => number(value, 2)).join(' – ')}°`]) : []),
    ...(attitude ? [['Trail, 5 – 50 – 95 %', `${[attitude.trailMm.p5, attitude.trailMm.p50, attitude.trailMm.p95].map((value) => number(value)).join(' – ')} mm`]] : []),
    ...(braking ? [[braking.from === 'brake' ? 'Braking' : 'Braking, guessed from the ends', `${braking.count} times, ${number(braking.totalS)} s`], ['  fork in it, deepest and mean', `${number(braking.deepestFrontMm)} and ${number(braking.meanFrontMm)} mm`]] : []),
  ]
  return rows.length > 0 ? textTable(rows) : []
}

function lapTable({ laps }: LogStatistics): string[] {
  if (!laps || laps.length === 0) return []
  const cells = laps.map(({ lap, fromS, forS, ends: { front, rear } }) => [
    String(lap), number(fromS, 2), number(forS, 2), ...[front, rear].flatMap((end) => (end ? [number(end.medianMm), number(end.deepestMm), String(end.bottomed ?? '–')] : ['–', '–', '–'])),
  ])
  return textTable([['Lap', 'from s', 'for s', 'front median', 'deepest', 'bottomed', 'rear median', 'deepest', 'bottomed'], ...cells])
}
