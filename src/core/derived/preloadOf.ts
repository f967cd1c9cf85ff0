import { standsAt } from '../adjusters/positionWords'
import { movementWords } from '../adjusters/changeWords'
import type { Adjuster, Slot } from '../adjusters/adjuster'
import { planPreload, type PreloadPlan } from '../compute/preload/planPreload'
import { forkPreloadRatio } from '../compute/preload/preloadChange'
import type { AdjusterMove, PreloadAdjuster } from '../compute/preload/turnAdjuster'
import type { End } from '../compute/sag/loadCase'
import { found, isMissing, type Outcome } from '../compute/working/result'
import { fileUnits, sayIn } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { countAt, millimetresFor, slotsFor } from './countAt'
import { sagOf, sagTargetOf } from './sagOf'
import { forkSpringsOf, motionRatioAt } from './springsFitted'

/** What to do with the preload of one end, by adjuster or leg. */
export interface EndPreload {
  end: End
  /** Without an adjuster, the exact change at the spring; with one, that of its first slot. */
  plan: PreloadPlan
  /** One a slot, where it is known where the slot stands and how many mm a count is. */
  moves: { slot: Slot; move: AdjusterMove }[]
  /** Why the adjuster's own count cannot be told. */
  wanting: string[]
}

/** How much preload, and which way, brings the sag of this entry into its window: at the spring, and in the adjuster's own count. */
export function preloadOf(notebook: Notebook, entry: Entry, end: End, units = fileUnits): Outcome<EndPreload> {
  const slots = slotsFor(notebook, 'preload', end === 'front' ? 'fork' : 'shock')
  if (slots.length === 0 && slotsFor(notebook, 'air_pressure', end === 'front' ? 'fork' : 'shock').length > 0) {
    return { missing: [say('a spring to preload: this end stands on air, so its pressure sets the sag')] }
  }
  const [bike, rider] = [sagOf(notebook, entry, end, 'bike'), sagOf(notebook, entry, end, 'rider')]
  const ratio = ratioOf(notebook, entry, end, slots, found(rider)?.value ?? found(bike)?.value ?? 0)
  if (isMissing(ratio)) return ratio
  const question = {
    motionRatio: ratio.ratio, lengthWords: (mm: number) => sayIn(units)(mm, 'mm'),
    ...named('bikeSagMm', found(bike)), ...named('riderSagMm', found(rider)),
    ...named('bikeWindow', found(sagTargetOf(notebook, end, 'bike'))), ...named('riderWindow', found(sagTargetOf(notebook, end, 'rider'))),
  }
  const exact = planPreload(question)
  if (isMissing(exact)) return exact
  const known = slots.map((slot) => ({ slot, adjuster: turned(slot, entry) }))
  const plans = known.flatMap(({ slot, adjuster }) => {
    const plan = isMissing(adjuster) ? undefined : found(planPreload({ ...question, adjuster }))
    return plan ? [{ slot, plan }] : []
  })
  return {
    end, plan: plans[0]?.plan ?? exact,
    moves: plans.flatMap(({ slot, plan }) => (plan.move ? [{ slot, move: plan.move }] : [])),
    wanting: [...new Set(known.flatMap(({ adjuster }) => (isMissing(adjuster) ? adjuster.missing : [])))],
  }
}

const named = <Name extends string, Value>(name: Name, value: Value | undefined) => (value === undefined ? {} : { [name]: value }) as Partial<Record<Name, Value>>

/** Spring travel for a mm of sag; in a fork of which one leg alone can be turned, that leg has to do the other's part. */
function ratioOf(notebook: Notebook, entry: Entry, end: End, slots: readonly Slot[], sagMm: number): Outcome<{ ratio: number }> {
  if (end === 'rear') return motionRatioAt(notebook, sagMm)
  const springs = Object.entries(forkSpringsOf(notebook, entry))
  if (springs.length === 0 || slots.length === 0) return { ratio: 1 }
  const adjustable = (leg: string) => slots.some((slot) => slot.leg === undefined || slot.leg === leg)
  const ratio = forkPreloadRatio(springs.map(([leg, rateNPerMm]) => ({ rateNPerMm, adjustable: adjustable(leg) })))
  return ratio === undefined ? { missing: [say('a preload adjuster on a leg with a spring')] } : { ratio }
}

/** A preload adjuster as it stands in an entry, in the words of the computation. */
function turned(slot: Slot, entry: Entry): Outcome<PreloadAdjuster> {
  const { adjuster } = slot
  const at = countAt(entry, slot)
  if (at === undefined) return { missing: [say`where ${adjuster.label} stands`] }
  const perCount = millimetresFor(adjuster, 1)
  if (perCount.count === undefined) return { missing: [perCount.missing] }
  return { at, mmPerCount: perCount.count, step: stepOf(adjuster), ...boundsOf(adjuster) }
}

/** Whether every preload adjuster of an end can still be turned that way; true where there is none or its range is unknown. */
export function hasPreloadRoom(notebook: Notebook, entry: Entry, end: End, wanted: 'more' | 'less'): boolean {
  return slotsFor(notebook, 'preload', end === 'front' ? 'fork' : 'shock').every((slot) => {
    const adjuster = turned(slot, entry)
    if (isMissing(adjuster)) return true
    const { at, mmPerCount, lowest = -Infinity, highest = Infinity, step } = adjuster
    const up = mmPerCount > 0 === (wanted === 'more')
    return up ? at + step <= highest + 1e-9 : at - step >= lowest - 1e-9
  })
}

/** The smallest step it is usually set by: what the notebook says, a quarter turn, half a turn of a collar's thread. */
function stepOf({ step, counts, mmPerTurn }: Adjuster): number {
  if (step !== undefined) return step
  if (counts.dimension === 'turn') return counts.symbol === 'flats' ? 1 : 0.25
  return mmPerTurn === undefined ? 0.5 : mmPerTurn / 2
}

/** The ends of what it counts. A length that is set has none that its figures tell; steps begin at 1. */
function boundsOf({ end, range, counts }: Adjuster): { lowest?: number; highest?: number } {
  if (counts.dimension === 'length' && end === undefined) return {}
  return { lowest: counts.dimension === 'step' ? 1 : 0, ...(range === undefined ? {} : { highest: range }) }
}

/**
 * The plan in words, each leg's where they differ.
 * @example 'in its window' ; '2 1/2 turns in, to 8 1/2 turns in' ; '4.6 mm less preload at the spring'
 */
export function preloadWords({ plan, moves, wanting }: EndPreload, units = fileUnits): string {
  if (plan.needed === 'none') return say('in its window')
  if (moves.length === 0) {
    const amount = say`${sayIn(units)(Math.abs(plan.toMiddle.value), 'mm')} ${say(plan.needed)} preload at the spring`
    return wanting.length > 0 ? say`${amount}; in its own count once there is ${wanting.join(say(' and '))}` : amount
  }
  const words = moves.map(({ slot, move }) => ({ leg: slot.leg, text: moveWords(slot.adjuster, move) }))
  const alike = words.every(({ text }) => text === words[0]!.text)
  return alike ? words[0]!.text : words.map(({ leg, text }) => `${leg}: ${text}`).join('; ')
}

function moveWords(adjuster: Adjuster, { byCounts, to }: AdjusterMove): string {
  const stands = standsAt(to, adjuster)
  return byCounts === 0 ? say`stays at ${stands}` : `${movementWords(adjuster, byCounts)}, to ${stands}`
}
