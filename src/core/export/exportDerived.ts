import type { End } from '../compute/sag/loadCase'
import { isMissing, type Outcome } from '../compute/working/result'
import { dampedFrequencyOf, dampingRatioOf, naturalFrequencyOf } from '../derived/bounceOf'
import { geometryOf } from '../derived/geometryOf'
import { frictionOf, sagOf, sagPercentOf } from '../derived/sagOf'
import { impliedRateOf } from '../derived/wheelRateOf'
import type { Entry, Notebook } from '../notebook/notebook'
import { plainNumber } from './plainNumber'

/** Derived numbers by group and name, each with its standard uncertainty beside it as `<name>_u` where it has one. */
export interface ExportedDerived {
  front: Numbers
  rear: Numbers
  geometry: Numbers
  bounce: Record<End, Numbers>
}

export type Numbers = Record<string, number>

const ends: readonly End[] = ['front', 'rear']

/** The names under `front` and `rear`, under `geometry` and under either end of `bounce`, in their order. */
export const derivedNames = {
  end: ['static_sag_mm', 'rider_sag_mm', 'static_sag_pct', 'rider_sag_pct', 'friction_mm', 'wheel_rate_n_per_mm'],
  geometry: ['rake_deg', 'trail_mm', 'normal_trail_mm', 'wheelbase_mm'],
  bounce: ['damping_ratio', 'damped_hz', 'natural_hz'],
} as const

type NamesOf<Group extends keyof typeof derivedNames> = (typeof derivedNames)[Group][number]

/** Everything that is worked out for an entry; groups are always there, numbers where they are known. */
export function exportDerived(notebook: Notebook, entry: Entry): ExportedDerived {
  const [front, rear] = ends.map((end) => numbers(derivedNames.end, endOf(notebook, entry, end)))
  const bounce = ends.map((end) => [end, numbers(derivedNames.bounce, bounceAt(notebook, entry, end))] as const)
  return { front: front!, rear: rear!, geometry: numbers(derivedNames.geometry, planeOf(notebook, entry)), bounce: Object.fromEntries(bounce) as Record<End, Numbers> }
}

function endOf(notebook: Notebook, entry: Entry, end: End): Record<NamesOf<'end'>, Outcome> {
  return {
    static_sag_mm: sagOf(notebook, entry, end, 'bike'), rider_sag_mm: sagOf(notebook, entry, end, 'rider'),
    static_sag_pct: sagPercentOf(notebook, entry, end, 'bike'), rider_sag_pct: sagPercentOf(notebook, entry, end, 'rider'),
    friction_mm: frictionOf(notebook, entry, end), wheel_rate_n_per_mm: impliedRateOf(notebook, entry, end),
  }
}

function planeOf(notebook: Notebook, entry: Entry): Record<NamesOf<'geometry'>, Outcome> {
  const { rakeDeg, trailMm, normalTrailMm, wheelbaseMm } = geometryOf(notebook, entry)
  return { rake_deg: rakeDeg, trail_mm: trailMm, normal_trail_mm: normalTrailMm, wheelbase_mm: wheelbaseMm }
}

function bounceAt(notebook: Notebook, entry: Entry, end: End): Record<NamesOf<'bounce'>, Outcome> {
  return {
    damping_ratio: dampingRatioOf(notebook, entry, end), damped_hz: dampedFrequencyOf(notebook, entry, end), natural_hz: naturalFrequencyOf(notebook, entry, end),
  }
}

function numbers<Name extends string>(names: readonly Name[], outcomes: Record<Name, Outcome>): Numbers {
  return Object.fromEntries(names.flatMap((name) => {
    const outcome = outcomes[name]
    if (isMissing(outcome)) return []
    const { value, u } = outcome
    return [[name, plainNumber(value)] as const, ...(u === undefined ? [] : [[`${name}_u`, plainNumber(u)] as const])]
  }))
}
