import { phrase } from '../../words/say'
import type { Facts, NewAdjuster, Question } from './architecture'

/**
 * The adjusters that architectures are put together from, each where it usually sits. Common practice, no source:
 * machines differ, and the notebook says that it is to be corrected.
 */

export const both = ['left', 'right'] as const
type Legs = NonNullable<Facts['legs']>

const screw = 'flat screwdriver'
const onCaps = { place: 'fork caps', faces: 'up', worked_from: 'above' } as const
const onFeet = { place: 'fork feet', faces: 'down', worked_from: 'below' } as const
const onShockFoot = { place: 'shock foot', faces: 'down', worked_from: 'above' } as const
const onReservoir = { place: 'reservoir', faces: 'left' } as const

/** One leg's cap or foot where only one leg carries it. */
const inLeg = (part: 'cap' | 'foot', legs: Legs) => (legs.length === 1 ? { place: `${part} of the ${legs[0]} fork leg` } : {})

export const forkPreload = (legs: Legs = both): NewAdjuster => ['fork_preload', { on: 'fork', legs, controls: 'preload', counts: 'turns', ...onCaps, ...inLeg('cap', legs), tool: 'spanner on the hex', held_by: 'o_ring' }]

export const forkPreloadAtFoot: NewAdjuster = ['fork_preload', { on: 'fork', legs: both, controls: 'preload', counts: 'turns', ...onFeet, tool: 'spanner on the hex', held_by: 'o_ring' }]

export const forkRebound = (legs: Legs = both): NewAdjuster => ['fork_rebound', { on: 'fork', legs, controls: 'rebound', counts: 'clicks', ...onCaps, ...inLeg('cap', legs), tool: screw, held_by: 'ball' }]

export const forkReboundAtFoot = (legs: Legs): NewAdjuster => ['fork_rebound', { on: 'fork', legs, controls: 'rebound', counts: 'clicks', ...onFeet, ...inLeg('foot', legs), tool: screw, held_by: 'ball' }]

export const forkCompression = (legs: Legs): NewAdjuster => ['fork_compression', { on: 'fork', legs, controls: 'compression', counts: 'clicks', ...onCaps, ...inLeg('cap', legs), tool: screw, held_by: 'ball' }]

export const forkCompressionAtFoot: NewAdjuster = ['fork_compression', { on: 'fork', legs: both, controls: 'compression', counts: 'clicks', ...onFeet, tool: screw, held_by: 'ball' }]

export const forkDualSpeedAtFoot: readonly NewAdjuster[] = [
  ['fork_low_speed', { label: 'Fork compression, low speed', on: 'fork', legs: both, controls: 'low_speed_compression', counts: 'clicks', ...onFeet, place: 'fork feet, the screw inside the hex', tool: screw, held_by: 'ball', inside: 'fork_high_speed' }],
  ['fork_high_speed', { label: 'Fork compression, high speed', on: 'fork', legs: both, controls: 'high_speed_compression', counts: 'turns', ...onFeet, place: 'fork feet, the hex around the screw', tool: 'spanner on the hex', held_by: 'o_ring' }],
]

export const forkHeight: NewAdjuster = ['fork_height', { on: 'fork', legs: both, controls: 'fork_height', counts: 'mm', place: 'from the top of the upper clamp to the top of the tube' }]

/** A spring is always longer the less it is preloaded, so this needs no question. */
export const shockCollar: NewAdjuster = ['shock_preload', { label: 'Shock spring, set length', on: 'shock', controls: 'preload', counts: 'mm', higher_is: 'less', place: 'threaded collar above the spring', tool: 'pair of hook spanners', faces: 'up', worked_from: 'above', held_by: 'locknut' }]

export const shockKnob: NewAdjuster = ['shock_preload', { on: 'shock', controls: 'preload', counts: 'clicks', place: 'remote knob on a hose', tool: 'by hand', faces: 'left', held_by: 'ball' }]

export const shockRebound: NewAdjuster = ['shock_rebound', { on: 'shock', controls: 'rebound', counts: 'clicks', ...onShockFoot, tool: screw, held_by: 'ball' }]

export const shockCompression: NewAdjuster = ['shock_compression', { on: 'shock', controls: 'compression', counts: 'clicks', ...onReservoir, tool: screw, held_by: 'ball' }]

export const shockDualSpeed: readonly NewAdjuster[] = [
  ['shock_low_speed', { label: 'Shock compression, low speed', on: 'shock', controls: 'low_speed_compression', counts: 'clicks', ...onReservoir, place: 'reservoir, the screw inside the hex', tool: screw, held_by: 'ball', inside: 'shock_high_speed' }],
  ['shock_high_speed', { label: 'Shock compression, high speed', on: 'shock', controls: 'high_speed_compression', counts: 'turns', ...onReservoir, place: 'reservoir, the hex around the screw', tool: 'spanner on the hex', held_by: 'o_ring' }],
]

export const steeringDamper: NewAdjuster = ['steering_damper', { on: 'chassis', controls: 'steering_damper', counts: 'clicks', place: 'steering damper', tool: 'by hand', faces: 'up', worked_from: 'above', held_by: 'ball' }]

export const tyres: readonly NewAdjuster[] = [
  ['front_tyre', { on: 'tyres', controls: 'tyre_pressure', counts: 'bar' }],
  ['rear_tyre', { on: 'tyres', controls: 'tyre_pressure', counts: 'bar' }],
]

/** Steps count up on one machine and down on another, and nobody can tell from outside. */
export const askHardest: Question = {
  key: 'most_preload',
  label: phrase('Which step of the rear preload gives the most preload?'),
  choices: [{ value: 'highest', label: 'The highest number' }, { value: 'lowest', label: 'The lowest number' }],
  usual: 'highest',
}

/** A stepped ring at the rear; with `legs`, one on each of two shocks. */
export function rearSteps(mostPreload: string, legs?: Legs): NewAdjuster {
  return ['rear_preload', {
    on: 'shock', ...(legs ? { legs } : {}), controls: 'preload', counts: 'steps', higher_is: mostPreload === 'lowest' ? 'less' : 'more',
    place: legs ? 'stepped rings on the shocks' : 'stepped ring on the shock', tool: 'hook spanner', faces: 'up', worked_from: 'above', held_by: 'nothing',
  }]
}

/** Which of the two legs carries something. */
export function askLeg(key: string, label: string, usual: 'left' | 'right'): Question {
  return { key, label, choices: [{ value: 'left', label: 'The left leg' }, { value: 'right', label: 'The right leg' }], usual }
}

/** The leg of an answer, and the other one. */
export function legAndOther(answer: string): [Legs, Legs] {
  return answer === 'left' ? [['left'], ['right']] : [['right'], ['left']]
}
