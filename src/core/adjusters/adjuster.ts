import type { End, Position } from '../notation/position'
import type { Unit } from '../notation/units'
import type { Range } from '../text'
import type { Control } from './controls'
import type { Neighbour } from './together'

export type Leg = 'left' | 'right'
export type Assembly = 'fork' | 'shock' | 'chassis' | 'tyres'
export type Facing = 'up' | 'down' | 'front' | 'rear' | 'left' | 'right'
export type Rotation = 'clockwise' | 'anticlockwise'

/** One adjuster of a machine, as its notebook defines it. Figures are in the adjuster's own count. */
export interface Adjuster {
  id: string
  label: string
  on: Assembly
  /** The legs that carry one each; empty where there is only one of it. */
  legs: readonly Leg[]
  control: Control
  /** The unit it counts in. */
  counts: Unit
  /** The end it counts from; absent for a thing that is measured. */
  end?: End
  /** Furthest count from that end. */
  range?: number
  /** Whether `range` was counted on this machine or is the book's. */
  rangeIs: 'measured' | 'book'
  /** Smallest step it can stand at: 1 for clicks, rings, steps and dials unless the notebook says otherwise. */
  step?: number
  mmPerTurn?: number
  clicksPerTurn?: number
  mmPerRing?: number
  mmPerClick?: number
  mmPerStep?: number
  /** Whether a higher figure means more of what it controls; only for things without an end to count from. */
  higherIs: 'more' | 'less'
  /** The rotation, facing the head, that turns it in. */
  closes: Rotation
  place?: string
  tool?: string
  faces?: Facing
  workedFrom?: string
  heldBy?: string
  /** The name of the adjuster in whose head it sits. */
  inside?: string
  /** The others in the same place. */
  neighbours?: readonly Neighbour[]
  condition?: string
  notes?: string
  /** Why its facts cannot all be true; nothing is judged by them then. */
  contradiction?: string
  /** Where its name stands in the notebook. */
  nameRange: Range
}

/** A place where an adjuster can stand: the adjuster and, where it has legs, one of them. */
export interface Slot {
  adjuster: Adjuster
  leg?: Leg
}

/** The end an adjuster of this control counts from when the notebook does not say. */
export function naturalEnd(control: Control, unit: Unit): End | undefined {
  if (control.counted === undefined) return undefined
  // Rings are counted as they show above the cap: the further in, the fewer show, so they count out from fully in.
  if (control.name === 'preload' && unit.dimension === 'mark') return 'closed'
  // Steps and dials carry a number of their own and no end.
  if (unit.dimension === 'step' || unit.dimension === 'dial') return undefined
  return control.counted
}

/**
 * The end an adjuster is counted from, by what its notebook says. A figure that says whether higher is more stands on
 * a scale of its own, such as a set length of 77.5 mm or a cam's step 4, and has no end to count from.
 */
export function countedFrom(control: Control, unit: Unit, said: { counted?: 'out' | 'in'; higherIs?: 'more' | 'less' }): End | undefined {
  if (said.counted !== undefined) return said.counted === 'out' ? 'closed' : 'open'
  return said.higherIs === undefined ? naturalEnd(control, unit) : undefined
}

/** Whether a higher figure is usually more of what is controlled. More oil is a smaller air gap, so millilitres run the other way. */
export function usualHigherIs(control: Control, unit: Unit): 'more' | 'less' {
  return control.name === 'oil_level' && unit.dimension === 'volume' ? 'less' : 'more'
}

/** The slots of an adjuster, in the order the notebook gives its legs. */
export function slotsOf(adjuster: Adjuster): Slot[] {
  return adjuster.legs.length === 0 ? [{ adjuster }] : adjuster.legs.map((leg) => ({ adjuster, leg }))
}

/** The name of a slot in keys and places. @example 'fork_rebound/left', 'shock_rebound' */
export function slotKey(adjusterId: string, leg: Leg | undefined): string {
  return leg ? `${adjusterId}/${leg}` : adjusterId
}

/** True where a position is written out in the adjuster's own unit and from its own end. */
export function isOwnCount(position: Position, adjuster: Adjuster): boolean {
  return (position.unit === undefined || position.unit === adjuster.counts) && (position.end === undefined || position.end === adjuster.end)
}
