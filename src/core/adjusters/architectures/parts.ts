import { phrase } from '../../words/say'
import type { Facts, NewAdjuster, Question } from './architecture'

/**
 * The adjusters that architectures are put together from, each where it usually sits. Common practice, no source:
 * machines differ, and the notebook says that it is to be corrected.
 */

export const both = ['left', 'right'] as const
type Legs = NonNullable<Facts['legs']>

const screw = phrase('flat screwdriver')
const onCaps = { place: phrase('fork caps'), faces: 'up', worked_from: 'above' } as const
const onFeet = { place: phrase('fork feet'), faces: 'down', worked_from: 'below' } as const
const onShockFoot = { place: phrase('shock foot'), faces: 'down', worked_from: 'above' } as const
const onReservoir = { place: phrase('reservoir'), faces: 'left' } as const

function partOf(part: 'cap' | 'foot', leg: 'left' | 'right'): string {
  if (part === 'cap') return leg === 'left' ? phrase('cap of the left fork leg') : phrase('cap of the right fork leg')
  return leg === 'left' ? phrase('foot of the left fork leg') : phrase('foot of the right fork leg')
}

/** One leg's cap or foot where only one leg carries it. */
export const inLeg = (part: 'cap' | 'foot', legs: Legs) => (legs.length === 1 ? { place: partOf(part, legs[0]!) } : {})

export const forkPreload = (legs: Legs = both): NewAdjuster => ['fork_preload', { on: 'fork', legs, controls: 'preload', counts: 'turns', ...onCaps, ...inLeg('cap', legs), tool: phrase('spanner on the hex'), held_by: 'o_ring' }]

export const forkPreloadAtFoot: NewAdjuster = ['fork_preload', { on: 'fork', legs: both, controls: 'preload', counts: 'turns', ...onFeet, tool: phrase('spanner on the hex'), held_by: 'o_ring' }]

export const forkRebound = (legs: Legs = both): NewAdjuster => ['fork_rebound', { on: 'fork', legs, controls: 'rebound', counts: 'clicks', ...onCaps, ...inLeg('cap', legs), tool: screw, held_by: 'ball' }]

export const forkReboundAtFoot = (legs: Legs): NewAdjuster => ['fork_rebound', { on: 'fork', legs, controls: 'rebound', counts: 'clicks', ...onFeet, ...inLeg('foot', legs), tool: screw, held_by: 'ball' }]

export const forkCompression = (legs: Legs): NewAdjuster => ['fork_compression', { on: 'fork', legs, controls: 'compression', counts: 'clicks', ...onCaps, ...inLeg('cap', legs), tool: screw, held_by: 'ball' }]

export const forkCompressionAtFoot: NewAdjuster = ['fork_compression', { on: 'fork', legs: both, controls: 'compression', counts: 'clicks', ...onFeet, tool: screw, held_by: 'ball' }]

export const forkDualSpeedAtFoot: readonly NewAdjuster[] = [
  ['fork_low_speed', { label: phrase('Fork compression, low speed'), on: 'fork', legs: both, controls: 'low_speed_compression', counts: 'clicks', ...onFeet, place: phrase('fork feet, the screw inside the hex'), tool: screw, held_by: 'ball', inside: 'fork_high_speed' }],
  ['fork_high_speed', { label: phrase('Fork compression, high speed'), on: 'fork', legs: both, controls: 'high_speed_compression', counts: 'turns', ...onFeet, place: phrase('fork feet, the hex around the screw'), tool: phrase('spanner on the hex'), held_by: 'o_ring' }],
]

export const forkHeight: NewAdjuster = ['fork_height', { on: 'fork', legs: both, controls: 'fork_height', counts: 'mm', place: phrase('from the top of the upper clamp to the top of the tube') }]

/** A spring is always longer the less it is preloaded, so this needs no question. */
export const shockCollar: NewAdjuster = ['shock_preload', { label: phrase('Shock spring, set length'), on: 'shock', controls: 'preload', counts: 'mm', higher_is: 'less', place: phrase('threaded collar above the spring'), tool: phrase('pair of hook spanners'), faces: 'up', worked_from: 'above', held_by: 'locknut' }]

export const shockKnob: NewAdjuster = ['shock_preload', { on: 'shock', controls: 'preload', counts: 'clicks', place: phrase('remote knob on a hose'), tool: phrase('by hand'), faces: 'left', held_by: 'ball' }]

export const shockRebound: NewAdjuster = ['shock_rebound', { on: 'shock', controls: 'rebound', counts: 'clicks', ...onShockFoot, tool: screw, held_by: 'ball' }]

export const shockCompression: NewAdjuster = ['shock_compression', { on: 'shock', controls: 'compression', counts: 'clicks', ...onReservoir, tool: screw, held_by: 'ball' }]

export const shockDualSpeed: readonly NewAdjuster[] = [
  ['shock_low_speed', { label: phrase('Shock compression, low speed'), on: 'shock', controls: 'low_speed_compression', counts: 'clicks', ...onReservoir, place: phrase('reservoir, the screw inside the hex'), tool: screw, held_by: 'ball', inside: 'shock_high_speed' }],
  ['shock_high_speed', { label: phrase('Shock compression, high speed'), on: 'shock', controls: 'high_speed_compression', counts: 'turns', ...onReservoir, place: phrase('reservoir, the hex around the screw'), tool: phrase('spanner on the hex'), held_by: 'o_ring' }],
]

export const steeringDamper: NewAdjuster = ['steering_damper', { on: 'chassis', controls: 'steering_damper', counts: 'clicks', place: phrase('steering damper'), tool: phrase('by hand'), faces: 'up', worked_from: 'above', held_by: 'ball' }]

export const tyres: readonly NewAdjuster[] = [
  ['front_tyre', { on: 'tyres', controls: 'tyre_pressure', counts: 'bar' }],
  ['rear_tyre', { on: 'tyres', controls: 'tyre_pressure', counts: 'bar' }],
]

/** Steps count up on one machine and down on another, and nobody can tell from outside. */
export const askHardest: Question = {
  key: 'most_preload',
  label: phrase('Which step of the rear preload gives the most preload?'),
  choices: [{ value: 'highest', label: phrase('The highest number') }, { value: 'lowest', label: phrase('The lowest number') }],
  usual: 'highest',
}

/** A stepped ring at the rear; with `legs`, one on each of two shocks. */
export function rearSteps(mostPreload: string, legs?: Legs): NewAdjuster {
  return ['rear_preload', {
    on: 'shock', ...(legs ? { legs } : {}), controls: 'preload', counts: 'steps', higher_is: mostPreload === 'lowest' ? 'less' : 'more',
    place: legs ? phrase('stepped rings on the shocks') : phrase('stepped ring on the shock'), tool: phrase('hook spanner'), faces: 'up', worked_from: 'above', held_by: 'nothing',
  }]
}

/** Which of the two legs carries something. */
export function askLeg(key: string, label: string, usual: 'left' | 'right'): Question {
  return { key, label, choices: [{ value: 'left', label: phrase('The left leg') }, { value: 'right', label: phrase('The right leg') }], usual }
}

/** The leg of an answer, and the other one. */
export function legAndOther(answer: string): [Legs, Legs] {
  return answer === 'left' ? [['left'], ['right']] : [['right'], ['left']]
}
