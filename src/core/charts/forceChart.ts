import type { End } from '../compute/sag/loadCase'
import { forceCurve, type ForceRow } from '../compute/springs/forceCurve'
import { found, reasons } from '../compute/working/result'
import { baselineFor } from '../derived/baselineFor'
import { forkAirOf, hasAir } from '../derived/airOf'
import { endForceOf } from '../derived/endForce'
import { travelOf } from '../derived/sagOf'
import { printShown, sayIn, shownUnit, toShown, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import type { Chart } from './chart'
import { headed } from './overEntries'
import type { ChartAxis, ChartSeries, ChartView } from './view'

const where = { front: phrase('both legs together, along the tubes'), rear: phrase('at the wheel, vertically') } as const

/** Force of springs and air of one end over its travel, in the entry looked at and in the baseline before it. */
export function forceChart(end: End): Chart {
  const rows = ['wheel_rate_n_per_mm', 'fitted_rate_n_per_mm', 'preload_force_n', 'stack_first_n_per_mm', 'stack_second_n_per_mm', 'stack_change_mm', 'coil_rate_n_per_mm']
  const own = { front: ['air_force_n', 'air_rate_n_per_mm', 'air_end_force_n'], rear: ['progressivity_pct', 'rate_at_rider_sag_n_per_mm'] }[end]
  return { key: `force_${end}`, group: 'force', rows: [...rows, ...own].map((row) => `${end}.${row}`), build: (notebook, entry, units) => build(notebook, { end, entry }, units) }
}

function build(notebook: Notebook, { end, entry }: { end: End; entry: Entry | undefined }, units: DisplayUnits): ChartView {
  const curve = entry && curveOf(notebook, entry, end)
  const frame = {
    key: `force_${end}`, title: say`Force over travel, ${say(end)}`, bands: [],
    about: say`What springs and air hold up over the travel, ${say(where[end])}, without friction and damping.`,
    x: axis(say('Travel from fully extended'), 'mm', 0, units), y: axis(say('Force'), 'N', 0, units),
  }
  if (!entry || !curve) return { ...frame, series: [], notes: [], table: { columns: [frame.x.label], rows: [] }, wanting: wantingOf(notebook, entry, end) }
  const other = olderCurve(notebook, entry, end)
  const isSame = other && sameRows(curve.rows, other.curve.rows)
  const lines = [...linesOf(entry.key, curve), ...(other && !isSame ? [wholeLine('before', other.entry.key, other.curve)] : [])]
  return {
    ...frame,
    series: lines.map((line) => seriesOf(line, curve.rows, { entry: line.key === 'before' ? other!.entry : entry, end }, units)),
    table: {
      columns: [headed(say('Travel'), frame.x.unit), ...lines.map(({ label }) => headed(label, frame.y.unit))],
      rows: curve.rows.map(({ travelMm }, at) => [printShown({ value: travelMm }, 'mm', 0, units), ...lines.map((line) => forceAt(line, at, units))]),
    },
    notes: [
      ...(isSame ? [say`The same as in ${other.entry.key}.`] : []), ...curve.assumptions.map((words) => `${headed(words, '')}.`),
      ...(curve.rows.at(-1)!.travelMm < curve.travelMm ? [say`It ends where the measured leverage does, before the travel of ${sayIn(units)(curve.travelMm, 'mm', 0)}.`] : []),
    ],
  }
}

interface Curve {
  names: string[]
  rows: ForceRow[]
  assumptions: string[]
  travelMm: number
}

interface Line {
  key: string
  label: string
  /** N, in the order of the rows of travel. */
  at: number[]
}

function curveOf(notebook: Notebook, entry: Entry, end: End): Curve | undefined {
  const [force, travelMm] = [found(endForceOf(notebook, entry, end)), travelOf(notebook, end)]
  if (!force || travelMm === undefined) return undefined
  const rows = forceCurve(travelMm, force.parts)
  const air = end === 'front' && hasAir(notebook) ? found(forkAirOf(notebook, entry)) : undefined
  const assumptions = [...(air ? [say`the air of a fast stroke (n = ${air.exponent})`] : []), ...force.assumptions]
  return rows.length > 1 ? { rows, travelMm, names: force.parts.map(({ name }) => name), assumptions } : undefined
}

/** What to hold it against: the baseline before it, else the first entry of its line. */
function olderCurve(notebook: Notebook, entry: Entry, end: End): { entry: Entry; curve: Curve } | undefined {
  const older = baselineFor(entry) ?? firstOf(entry)
  const curve = older === entry ? undefined : curveOf(notebook, older, end)
  return curve && { entry: older, curve }
}

function firstOf(entry: Entry): Entry {
  let at = entry
  while (at.parent) at = at.parent
  return at
}

const sameRows = (a: readonly ForceRow[], b: readonly ForceRow[]): boolean => a.length === b.length && a.every(({ totalN }, at) => Math.abs(totalN - b[at]!.totalN) < 0.05)

/** The whole of it, and where it is made of several things each of them. */
function linesOf(entry: string, curve: Curve): Line[] {
  const { names, rows } = curve
  const parts = names.length === 1 ? [] : names.map((name, part) => ({ key: name, label: say`${name} alone`, at: rows.map(({ partsN }) => partsN[part]!) }))
  return [wholeLine('whole', entry, curve), ...parts]
}

const wholeLine = (key: string, entry: string, { names, rows }: Curve): Line => ({ key, label: `${entry}, ${names.join(say(' and '))}`, at: rows.map(({ totalN }) => totalN) })

function seriesOf({ key, label, at }: Line, rows: readonly ForceRow[], { entry, end }: { entry: Entry; end: End }, units: DisplayUnits): ChartSeries {
  const figure = sayIn(units)
  const shown = (value: number, unit: string) => toShown({ value }, unit, 0, units).value
  const places = rows.slice(0, at.length)
  return {
    key, label, form: 'line', x: places.map(({ travelMm }) => shown(travelMm, 'mm')), y: places.map((_, place) => shown(at[place]!, 'N')),
    said: places.map(({ travelMm }, place) => say`${label}: ${figure(at[place]!, 'N', 0)} at ${figure(travelMm, 'mm', 0)} of travel`),
    entries: places.map(() => entry.key), row: `computed/${end}.fitted_rate_n_per_mm`,
  }
}

const forceAt = ({ at }: Line, place: number, units: DisplayUnits): string => (at[place] === undefined ? '' : printShown({ value: at[place] }, 'N', 0, units))

const axis = (label: string, unit: string, digits: number, units: DisplayUnits): ChartAxis => ({ label, unit: shownUnit(unit, units), digits: toShown({ value: 0 }, unit, digits, units).digits })

const facts = { front: phrase('travel, spring rate and the spring’s preload as fitted, or the air above the oil'), rear: phrase('travel, spring rate, the spring’s preload as fitted, and motion ratio or leverage') } as const

function wantingOf(notebook: Notebook, entry: Entry | undefined, end: End): string[] {
  const write = say`Write under \`machine: ${end}\` what is known: ${say(facts[end])}.`
  if (!entry) return [say('There is no entry yet.'), write]
  const missing = [...reasons(endForceOf(notebook, entry, end)), ...(travelOf(notebook, end) === undefined ? [say`travel of the ${say(end)}`] : [])]
  return [say`In ${entry.key} it needs: ${missing.length > 0 ? missing.join(', ') : say('a force that is known over the travel')}.`, write]
}
