import type { End } from '../notation/position'
import { isCount, type Dimension, type Unit } from '../notation/units'

/**
 * What an adjuster can control: one row a thing. A new kind of adjuster is a row here, its name in the schema's
 * list, and a test. Directions and words are common practice of the trade, no source.
 */
export interface Control {
  name: string
  /** In a sentence: 'rebound damping'. */
  words: string
  /** The end it is counted from by nature; absent for a thing that is measured and has no ends. */
  counted?: End
  /** What turning it in (towards closed), or raising its figure, gives more of, and what that does. */
  more: string
  moreDoes: string
  less: string
  lessDoes: string
  /** The dimensions that suit it; the first is the usual one. */
  suits: readonly Dimension[]
  /** True for damping: a valve that must not be forced and is never ridden fully closed. */
  damping?: boolean
  /** Where a difference between the legs is a fault to stop for. */
  mustBeEven?: boolean
  /** True for spring and air support, false or absent for the rest. */
  support?: boolean
}

const damper = { counted: 'closed', suits: ['click', 'turn'], damping: true } as const

export const controls: readonly Control[] = [
  { name: 'preload', words: 'spring preload', counted: 'open', suits: ['turn', 'click', 'mark', 'length', 'step', 'dial'], support: true,
    more: 'more preload', moreDoes: 'the end rides higher, with less sag; the spring’s rate stays the same',
    less: 'less preload', lessDoes: 'the end rides lower, with more sag; the spring’s rate stays the same' },
  { name: 'rebound', words: 'rebound damping', ...damper,
    more: 'more rebound damping', moreDoes: 'the suspension extends more slowly after it was compressed',
    less: 'less rebound damping', lessDoes: 'the suspension extends faster after it was compressed' },
  { name: 'compression', words: 'compression damping', ...damper,
    more: 'more compression damping', moreDoes: 'the suspension resists the stroke more, and dives or squats more slowly',
    less: 'less compression damping', lessDoes: 'the suspension gives way to the stroke more easily' },
  { name: 'low_speed_compression', words: 'low-speed compression damping', ...damper,
    more: 'more low-speed compression damping', moreDoes: 'slow movement is resisted more: dive under the brakes, squat on the drive',
    less: 'less low-speed compression damping', lessDoes: 'slow movement is resisted less: the end moves more under brakes and drive' },
  { name: 'high_speed_compression', words: 'high-speed compression damping', ...damper,
    more: 'more high-speed compression damping', moreDoes: 'fast movement is resisted more: sharp bumps and landings',
    less: 'less high-speed compression damping', lessDoes: 'fast movement is resisted less: sharp bumps are taken more softly' },
  { name: 'low_speed_rebound', words: 'low-speed rebound damping', ...damper,
    more: 'more low-speed rebound damping', moreDoes: 'the suspension returns more slowly from small and slow movements',
    less: 'less low-speed rebound damping', lessDoes: 'the suspension returns faster from small and slow movements' },
  { name: 'high_speed_rebound', words: 'high-speed rebound damping', ...damper,
    more: 'more high-speed rebound damping', moreDoes: 'the suspension returns more slowly from deep and fast strokes',
    less: 'less high-speed rebound damping', lessDoes: 'the suspension returns faster from deep and fast strokes' },
  { name: 'fork_height', words: 'fork height, from the top of the clamp to the top of the tube', suits: ['length', 'mark'], mustBeEven: true,
    more: 'tubes further up through the clamps', moreDoes: 'the front sits lower: less rake and trail, quicker steering',
    less: 'tubes further down in the clamps', lessDoes: 'the front sits higher: more rake and trail, slower steering' },
  { name: 'ride_height', words: 'rear ride height', suits: ['length', 'turn', 'mark'],
    more: 'a longer shock or link', moreDoes: 'the rear sits higher: less rake and trail, quicker steering',
    less: 'a shorter shock or link', lessDoes: 'the rear sits lower: more rake and trail, slower steering' },
  { name: 'air_pressure', words: 'air pressure, main chamber', suits: ['pressure'], support: true,
    more: 'more air pressure', moreDoes: 'the air spring carries more: less sag, firmer throughout',
    less: 'less air pressure', lessDoes: 'the air spring carries less: more sag, softer throughout' },
  { name: 'balance_pressure', words: 'air pressure, balance chamber', suits: ['pressure'], support: true,
    more: 'more balance pressure', moreDoes: 'the top of the stroke is softer and the end sits a little lower',
    less: 'less balance pressure', lessDoes: 'the top of the stroke is firmer and the end sits a little higher' },
  { name: 'oil_level', words: 'oil level, the air gap from the tube’s top to the oil', suits: ['length', 'volume'], support: true,
    more: 'a larger air gap, so less oil', moreDoes: 'softer towards the end of the stroke',
    less: 'a smaller air gap, so more oil', lessDoes: 'firmer towards the end of the stroke' },
  { name: 'spring_rate', words: 'spring rate', suits: ['stiffness'], support: true,
    more: 'a stiffer spring', moreDoes: 'the end moves less for the same load',
    less: 'a softer spring', lessDoes: 'the end moves more for the same load' },
  { name: 'steering_damper', words: 'steering damping', ...damper,
    more: 'more steering damping', moreDoes: 'the bars turn more heavily and shake less',
    less: 'less steering damping', lessDoes: 'the bars turn more lightly' },
  { name: 'tyre_pressure', words: 'tyre pressure, cold', suits: ['pressure'],
    more: 'more tyre pressure', moreDoes: 'a stiffer tyre that runs cooler',
    less: 'less tyre pressure', lessDoes: 'a softer tyre that runs hotter' },
]

const byName = new Map(controls.map((control) => [control.name, control]))

/** Whether a thing can be counted so. What is turned can be counted in any way, a numbered dial included; what is measured has its own kinds of unit. */
export function suitsUnit({ counted, suits }: Control, unit: Unit): boolean {
  return (counted !== undefined && isCount(unit)) || suits.includes(unit.dimension)
}

export function findControl(name: string): Control | undefined {
  return byName.get(name)
}
