import { slotKey, slotsOf } from '../adjusters/adjuster'
import { lastKnown } from '../compare/lastKnown'
import type { End, LoadCase } from '../compute/sag/loadCase'
import { found, type Result } from '../compute/working/result'
import { geometryOf, type GeometryKey } from '../derived/geometryOf'
import { sagOf, sagPercentOf } from '../derived/sagOf'
import { forkSpringsOf, shockSpringOf } from '../derived/springsFitted'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import { findField, measured } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { countOf, isSame } from '../rules/standings'
import { phrase, say } from '../words/say'
import type { SheetGroup, SheetMeasure } from './sheet'

/** What was measured and what follows from it: sag of either end, springs, geometry, tyres as they got warm. */
export function sheetMeasures(notebook: Notebook, entry: Entry, units: DisplayUnits): SheetGroup<SheetMeasure>[] {
  const asked = { notebook, entry, units }
  const groups = [
    ...sagGroups(asked, 'front'), ...sagGroups(asked, 'rear'), { label: say('Springs'), rows: springRows(notebook, entry, units) },
    { label: say('Geometry'), rows: geometryRows(notebook, entry, units) }, { label: say('Tyres, hot'), rows: hotTyreRows(entry, units) },
  ]
  return groups.filter(({ rows }) => rows.length > 0)
}

interface Asked {
  notebook: Notebook
  entry: Entry
  units: DisplayUnits
}

const loads: readonly (readonly [LoadCase, string])[] = [['bike', phrase('Static')], ['rider', phrase('Rider')]]

/** A sag is one of the day it was measured: an older one says from when it is, and whether it can still hold. */
function sagGroups({ notebook, entry, units }: Asked, end: End): SheetGroup<SheetMeasure>[] {
  const told = loads.flatMap(([load, label]) => {
    const last = lastKnown(entry, (each) => found(sagOf(notebook, each, end, load)))
    if (!last) return []
    const share = found(sagPercentOf(notebook, last.entry, end, load))
    const text = `${sayIn(units)(last.known.value, 'mm')}${share ? ` (${sayIn(units)(share.value, '%', 0)})` : ''}`
    return [{ from: last.entry, row: { label: say(label), text } }]
  })
  const days = [...new Set(told.map(({ from }) => from))]
  return days.map((from, at) => ({
    label: at === 0 ? say`Sag, ${say(end)}` : say`Sag, ${say(end)}, older`, rows: told.filter((each) => each.from === from).map(({ row }) => row),
    ...(from === entry ? {} : { note: sinceWords(notebook, from, entry, end) }),
  }))
}

function sinceWords(notebook: Notebook, from: Entry, entry: Entry, end: End): string {
  const turned = supportChanged(notebook, from, entry, end)
  return say`measured in ${from.key}${turned.length > 0 ? say`; ${turned.join(say(' and '))} changed since: measure again` : ''}`
}

/** What carries an end and stands elsewhere than it did then. */
function supportChanged({ adjusters }: Notebook, then: Entry, now: Entry, end: End): string[] {
  const on = end === 'front' ? 'fork' : 'shock'
  return [...adjusters.values()].filter((adjuster) => adjuster.on === on && adjuster.control.support === true).filter((adjuster) => slotsOf(adjuster).some(({ leg }) => {
    const [was, is] = [then, now].map((entry) => countOf(entry.state.get(slotKey(adjuster.id, leg))?.setting))
    return (was === undefined) !== (is === undefined) || (was !== undefined && is !== undefined && !isSame(was, is))
  })).map(({ label }) => label)
}

/** Springs that are no adjuster of the notebook's, which has a line of its own for those. */
function springRows(notebook: Notebook, entry: Entry, units: DisplayUnits): SheetMeasure[] {
  const isListed = (on: 'fork' | 'shock') => [...notebook.adjusters.values()].some((adjuster) => adjuster.on === on && adjuster.control.name === 'spring_rate')
  const figure = (rate: number) => sayIn(units)(rate, 'N/mm')
  const { left, right } = isListed('fork') ? {} : forkSpringsOf(notebook, entry)
  const { rateNPerMm, count } = shockSpringOf(notebook, entry)
  const fork = left !== undefined && right !== undefined && isSame(left, right)
    ? [{ label: say('Fork'), text: say`${figure(left)}, each leg` }]
    : [['left', left] as const, ['right', right] as const].flatMap(([leg, rate]) => (rate === undefined ? [] : [{ label: say`Fork, ${say(leg)} leg`, text: figure(rate) }]))
  return [...fork, ...(rateNPerMm === undefined || isListed('shock') ? [] : [{ label: count === 2 ? say('Shocks') : say('Shock'), text: `${figure(rateNPerMm)}${count === 2 ? say(', each') : ''}` }])]
}

const geometry: readonly (readonly [GeometryKey, string, string, number])[] = [['rakeDeg', phrase('Rake'), '°', 1], ['trailMm', phrase('Trail'), 'mm', 1], ['wheelbaseMm', phrase('Wheelbase'), 'mm', 0]]

function geometryRows(notebook: Notebook, entry: Entry, units: DisplayUnits): SheetMeasure[] {
  const now = geometryOf(notebook, entry)
  return geometry.flatMap(([key, label, unit, digits]) => {
    const result: Result | undefined = found(now[key])
    return result ? [{ label: say(label), text: sayIn(units)(result.value, unit, digits).replace(' °', '°') }] : []
  })
}

function hotTyreRows(entry: Entry, units: DisplayUnits): SheetMeasure[] {
  return (['front', 'rear'] as const).flatMap((end) => {
    const key = `ride.${end}_tyre_hot`
    const pressure = findField(key) && measured(entry, key)
    return pressure ? [{ label: end === 'front' ? say('Front') : say('Rear'), text: sayIn(units)(pressure.base, 'bar', 2) }] : []
  })
}
