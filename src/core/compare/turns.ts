import type { Leg, Rotation } from '../adjusters/adjuster'
import type { View } from '../adjusters/turning'
import type { HeadDrawing } from '../card/card'
import type { CompareSide } from './comparison'

/**
 * What to turn, in working order, to bring a machine from one state to another. Plain data of texts made here. What
 * cannot be done is told first; what stays as it is is left out. Both legs of a pair are one step, the left one first.
 */
export interface TurnList {
  from: CompareSide
  to: CompareSide
  /** Why there is no list at all, such as that these are two machines. */
  refused?: string
  cannot: Unreachable[]
  /** The usual cautions, and those that belong to several steps. Said before the first step. */
  cautions: string[]
  groups: TurnGroup[]
}

/** `stand`: what is done before anything is turned. */
export interface TurnGroup {
  key: 'stand' | 'fork' | 'shock' | 'chassis' | 'tyres'
  label: string
  /** What to do first in this group, such as putting the machine on its stand; a sentence each. */
  first: string[]
  steps: TurnStep[]
}

/** One adjuster: both legs where both move. */
export interface TurnStep {
  /** The adjuster's name in the notebook. */
  key: string
  label: string
  place?: string
  tool?: string
  /** True where both legs move alike, so that one sentence does for both. */
  alike: boolean
  turns: Turn[]
  /** All that belong to this adjuster, most serious first. */
  cautions: string[]
}

/** One movement of one adjuster, or of one leg's; what is ticked off. */
export interface Turn {
  /** The row of the grid: 'settings/fork_rebound/left'. */
  row: string
  leg?: Leg
  /** 'left leg'; empty where there is only one. */
  legWords: string
  /** In its own count, above zero where the count or figure rises. */
  by: number
  /** '2 clicks out'; '+2 mm' for what is not turned. */
  amount: string
  /** The same in turns, where the count is a length and its thread is known: '1 1/3 turns'. */
  also?: string
  /** Which way, as seen from where it is worked; absent where nothing is turned. */
  rotation?: Rotation
  view?: View
  /** That as a sentence: 'Turn it anticlockwise, as you look down on it from above, to turn it out (less rebound damping).' */
  how: string
  /** The same to be drawn, where something is turned. */
  drawing?: HeadDrawing
  /** 'less rebound damping' */
  gives: string
  from: string
  to: string
  /** Where it must end, in its own count. */
  toCount: number
  /** How to check that it stands there, a sentence. */
  check: string
}

/** What the list cannot bring to where it should be, why, and what can be done. */
export interface Unreachable {
  row: string
  label: string
  legWords: string
  place?: string
  why: string
  /** What to do about it: a sentence. */
  instead: string
}
