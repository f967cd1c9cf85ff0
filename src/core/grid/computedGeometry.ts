import { isMissing } from '../compute/working/result'
import { baselineFor } from '../derived/baselineFor'
import { geometryChange, geometryOf, type GeometryKey, type Stance } from '../derived/geometryOf'
import { sagOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt } from '../notebook/tree'
import { say } from '../words/say'
import { anyEntry, type Computed } from './computedRow'

const hasFigures = ({ root }: Notebook): boolean => {
  const figures = nodeAt(root, ['machine', 'geometry'])
  return figures?.kind === 'map' && figures.pairs.length > 0
}
const bothSags = anyEntry((notebook, entry) => (['front', 'rear'] as const).every((end) => !isMissing(sagOf(notebook, entry, end, 'rider'))))

const datum = 'The figures hold where fork height and ride height were first recorded.'

function row(name: string, key: GeometryKey, label: string, unit: '°' | 'mm', about: string): Computed {
  return {
    key: `geometry.${name}`, group: 'geometry', label, unit, digits: unit === '°' ? 2 : 1, about: `${about} ${datum}`, wanted: hasFigures,
    compute: (notebook, entry) => geometryOf(notebook, entry)[key],
    note: (notebook, entry, _result, units) => sinceBaseline(notebook, entry, { key, stance: 'figures' }, units),
  }
}

function sagRow(name: string, key: GeometryKey, label: string, unit: '°' | 'mm'): Computed {
  return {
    key: `geometry_at_rider_sag.${name}`, group: 'geometry', label, detail: 'at rider sag', unit, digits: unit === '°' ? 2 : 1,
    about: `${label} with both ends sunk by the rider sag of this entry, the figures being those of a fully extended machine.`,
    wanted: (notebook) => hasFigures(notebook) && bothSags(notebook),
    compute: (notebook, entry) => geometryOf(notebook, entry, 'riderSag')[key],
    note: (notebook, entry, _result, units) => sinceBaseline(notebook, entry, { key, stance: 'riderSag' }, units),
  }
}

/** Steering geometry as the machine stands, from the exact solution in the plane. */
export const computedGeometry: readonly Computed[] = [
  row('rake_deg', 'rakeDeg', 'Rake', '°', 'Steering axis from the vertical after fork height, ride height and tyres.'),
  row('trail_mm', 'trailMm', 'Trail', 'mm', 'How far the front tyre touches behind the point where the steering axis meets the ground.'),
  row('normal_trail_mm', 'normalTrailMm', 'Normal trail', 'mm', 'The same square to the steering axis: the lever that centres the wheel.'),
  row('wheelbase_mm', 'wheelbaseMm', 'Wheelbase', 'mm', 'From axle to axle along the ground.'),
  sagRow('rake_deg', 'rakeDeg', 'Rake', '°'),
  sagRow('trail_mm', 'trailMm', 'Trail', 'mm'),
  sagRow('normal_trail_mm', 'normalTrailMm', 'Normal trail', 'mm'),
  sagRow('wheelbase_mm', 'wheelbaseMm', 'Wheelbase', 'mm'),
]

function sinceBaseline(notebook: Notebook, entry: Entry, { key, stance }: { key: GeometryKey; stance: Stance }, units: DisplayUnits): string | undefined {
  const baseline = baselineFor(entry)
  const change = baseline && geometryChange(notebook, entry, baseline, key, stance)
  if (!baseline || !change || isMissing(change)) return undefined
  const digits = change.unit === '°' ? 2 : 1
  const by = Number(change.value.toFixed(digits))
  if (by === 0) return undefined
  const amount = change.unit === '°' ? `${printNumber(Math.abs(by), digits)}°` : sayIn(units)(Math.abs(by), 'mm')
  return say`${by > 0 ? '+' : '−'}${amount} since ${baseline.key} (baseline)`
}
