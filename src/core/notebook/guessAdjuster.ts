import type { Assembly, Leg } from '../adjusters/adjuster'
import { controls, suitsUnit, type Control } from '../adjusters/controls'
import { readPosition } from '../notation/position'
import { findUnit, type Dimension, type Unit } from '../notation/units'
import type { Notebook } from './notebook'
import { schemasAt } from './schemaKeys'
import { nodeAt, type TreeNode } from './tree'

/** What a name and its uses tell of an adjuster that nobody defined. What they leave in doubt is absent. */
export interface Guess {
  on?: Assembly
  /** Empty for one that has no legs. */
  legs?: readonly Leg[]
  control?: Control
  counts?: Unit
  /** What it can control by all that is known; the one `control` where there is no doubt. */
  possible: readonly Control[]
}

const parts: readonly [Assembly, readonly string[]][] = [
  ['fork', ['fork', 'front']], ['shock', ['shock', 'rear']], ['chassis', ['steering']],
]

/** The words of a name by which a thing is meant and nothing else. */
const meant: readonly [name: string, words: readonly string[]][] = [
  ...controls.filter(({ damping, name }) => damping || name === 'preload' || name.endsWith('height')).map(({ name }) => [name, name.split('_').filter((word) => word !== 'speed')] as [string, string[]]),
  ['air_pressure', ['air']], ['balance_pressure', ['balance']], ['oil_level', ['oil']], ['spring_rate', ['spring', 'rate']],
  ['tyre_pressure', ['tyre']], ['tyre_pressure', ['tire']], ['tyre_pressure', ['tyres']], ['tyre_pressure', ['tires']],
]

/** Where a thing can be; what is not listed can be at fork and shock. */
const places: Record<string, readonly Assembly[]> = {
  fork_height: ['fork'], balance_pressure: ['fork'], oil_level: ['fork'], ride_height: ['shock', 'chassis'], steering_damper: ['chassis'], tyre_pressure: ['tyres'],
}

/**
 * What an adjuster that is set but not defined is, as far as its name and the way it is written leave no doubt.
 *
 * @example guessAdjuster(notebook, 'shock_rebound') // { on: 'shock', legs: [], control: rebound, counts: clicks, … } where `7 clicks out` is written
 */
export function guessAdjuster(notebook: Notebook, name: string): Guess {
  const words = name.toLowerCase().split(/[^a-z]+/)
  const uses = notebook.entries.flatMap(({ node }) => nodeAt(node, ['settings', name]) ?? [])
  const written = writtenUnits(uses)
  const byName = namedControls(words)
  const where = byName.length === 1 ? places[byName[0]!.name] : undefined
  const on = where?.length === 1 ? where[0] : partNamed(words)
  const possible = (byName.length > 0 ? byName : controls).filter((control) =>
    (on === undefined || (places[control.name] ?? ['fork', 'shock']).includes(on)) && written.every((unit) => suitsUnit(control, unit)))
  const control = byName.length === 1 ? possible[0] : undefined
  const counts = written[0] && countable(written[0])
  const legs = legsOf(uses, on, control)
  return { possible, ...(on ? { on } : {}), ...(legs ? { legs } : {}), ...(control ? { control } : {}), ...(counts ? { counts } : {}) }
}

/** The controls whose words all stand in the name; `low_rebound` is not also `rebound`. */
function namedControls(words: readonly string[]): Control[] {
  const found = meant.filter(([, each]) => each.every((word) => words.includes(word)))
  const widest = found.filter(([, each]) => !found.some(([, other]) => other.length > each.length && each.every((word) => other.includes(word))))
  const names = new Set(widest.map(([name]) => name))
  return controls.filter(({ name }) => names.has(name))
}

function partNamed(words: readonly string[]): Assembly | undefined {
  const named = parts.filter(([, each]) => each.some((word) => words.includes(word)))
  return named.length === 1 ? named[0]![0] : undefined
}

function scalarsOf(node: TreeNode): string[] {
  if (node.kind === 'scalar') return node.value === null ? [] : [node.text]
  return node.kind === 'map' ? node.pairs.flatMap(({ value }) => scalarsOf(value)) : []
}

function writtenUnits(uses: readonly TreeNode[]): Unit[] {
  return uses.flatMap(scalarsOf).flatMap((text) => readPosition(text).value?.unit ?? [])
}

const usual: Partial<Record<Dimension, string>> = { length: 'mm', pressure: 'bar', stiffness: 'N/mm', volume: 'ml' }

/** The unit itself where adjusters may count in it, else the usual one of its kind. */
function countable(unit: Unit): Unit | undefined {
  const allowed = schemasAt(['adjusters', 'any', 'counts']).flatMap((schema) => schema.enum ?? [])
  return allowed.includes(unit.symbol) ? unit : findUnit(usual[unit.dimension] ?? '')
}

/** The legs that are written apart; at the fork one value may be for both or for the only one, unless both must stand alike. */
function legsOf(uses: readonly TreeNode[], on: Assembly | undefined, control: Control | undefined): readonly Leg[] | undefined {
  const named = uses.flatMap((node) => keysIn(node))
  const legs = (['left', 'right'] as const).filter((leg) => named.includes(leg))
  if (legs.length > 0 || (on !== undefined && on !== 'fork')) return legs
  return control?.mustBeEven ? ['left', 'right'] : undefined
}

function keysIn(node: TreeNode): string[] {
  return node.kind === 'map' ? node.pairs.map(({ key }) => key.text) : []
}
