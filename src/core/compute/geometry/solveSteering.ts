import { say } from '../../words/say'
import { derive, given, type Given } from '../working/derive'
import { isMissing, type Amount, type Outcome, type Result } from '../working/result'
import { steeringRecipes, steeringSymbols, type SteeringKey, type SteeringRecipe, type SteeringSymbol } from './steeringRecipes'

/** Whatever is known of the steering end. */
export type SteeringSet = Partial<Record<SteeringKey, Amount>>

/** A written number that the other written numbers contradict. */
export interface Contradiction {
  of: SteeringKey
  written: number
  /** What the others make of it. */
  computed: number
  /** Written less computed. */
  by: number
  unit: string
}

export interface SolvedSteering {
  values: Record<SteeringKey, Result>
  contradiction?: Contradiction
}

/** How far a written trail may lie from the computed one, mm, before it counts as a contradiction. Our own choice: what manuals round to. */
export const contradictionToleranceMm = 1

const keys = Object.keys(steeringSymbols) as SteeringKey[]
const source = 'plane trigonometry: R · sin ε − d = n = a · cos ε (Meijaard et al., Proceedings of the Royal Society A 463, 2007)'

/**
 * All five numbers of the steering end from any set that fixes them.
 *
 * A written number stays as written; the others follow from the written ones alone, so that their uncertainties are right.
 * Where more is written than needed, a trail that the rest contradicts is reported with the amount.
 * @example solveSteering({ rakeDeg: 24, offsetMm: 30, frontRadiusMm: 300 }) // trail 100.73, normal trail 92.02
 */
export function solveSteering(set: SteeringSet): Outcome<SolvedSteering> {
  const outcomes = keys.map((key) => [key, isWritten(set, key) ? asWritten(set, key) : solve(set, key)] as const)
  const unsolved = outcomes.filter(([, outcome]) => outcome === undefined || isMissing(outcome))
  if (unsolved.length > 0) return { missing: findWanting(set, outcomes.flatMap(([, outcome]) => (isMissing(outcome) ? outcome.missing : []))) }
  const values = Object.fromEntries(outcomes) as Record<SteeringKey, Result>
  const contradiction = findContradiction(set, 'trailMm') ?? findContradiction(set, 'normalTrailMm')
  return contradiction ? { values, contradiction } : { values }
}

const named = (set: SteeringSet, key: SteeringKey): Given => given(say(steeringSymbols[key].name), steeringSymbols[key].unit, set[key])
const isWritten = (set: SteeringSet, key: SteeringKey): boolean => named(set, key).measured !== undefined

function findRecipe(set: SteeringSet, key: SteeringKey): SteeringRecipe | undefined {
  return steeringRecipes[key].find(({ needs }) => needs.every((need) => isWritten(set, need)))
}

function solve(set: SteeringSet, key: SteeringKey): Outcome | undefined {
  const recipe = findRecipe(set, key)
  if (!recipe) return undefined
  const from = Object.fromEntries(recipe.needs.map((need) => [steeringSymbols[need].symbol, named(set, need)]))
  return derive<string>({
    formula: recipe.formula, unit: steeringSymbols[key].unit, from,
    by: (values) => recipe.by(values as Record<SteeringSymbol, number>),
    assumptions: [say('machine upright on level ground, tyre without width')], source,
  })
}

function asWritten(set: SteeringSet, key: SteeringKey): Outcome {
  const { symbol, unit } = steeringSymbols[key]
  return derive<string>({ formula: symbol, unit, from: { [symbol]: named(set, key) }, by: (values) => values[symbol]!, source: say('as written') })
}

function findContradiction(set: SteeringSet, key: SteeringKey): Contradiction | undefined {
  const written = named(set, key).measured
  const computed = solve(set, key)
  if (!written || !computed || isMissing(computed)) return undefined
  const by = written.value - computed.value
  const tolerance = Math.max(contradictionToleranceMm, 2 * Math.hypot(written.u ?? 0, computed.u ?? 0))
  return Number.isFinite(by) && Math.abs(by) > tolerance ? { of: key, written: written.value, computed: computed.value, by, unit: computed.unit } : undefined
}

/** What to say when the set does not fix the steering end: the reasons found on the way, else what would complete it. */
function findWanting(set: SteeringSet, found: string[]): string[] {
  if (found.length > 0) return [...new Set(found)]
  const open = (['rakeDeg', 'offsetMm', 'frontRadiusMm'] as const).filter((key) => !isWritten(set, key)).map((key) => say(steeringSymbols[key].name))
  const hasTrail = isWritten(set, 'trailMm') || isWritten(set, 'normalTrailMm')
  if (open.length === 1) return hasTrail ? open : [say`${open[0]!}, or the trail`]
  return hasTrail ? [say`one more of ${open.join(', ')}`] : open
}
