import type { End } from '../notation/position'
import { isCount, type Dimension, type Unit } from '../notation/units'
import { phrase } from '../words/say'

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
  { name: 'preload', words: phrase('spring preload'), counted: 'open', suits: ['turn', 'click', 'mark', 'length', 'step', 'dial'], support: true,
    more: phrase('more preload'), moreDoes: phrase('the end rides higher, with less sag; the spring’s rate stays the same'),
    less: phrase('less preload'), lessDoes: phrase('the end rides lower, with more sag; the spring’s rate stays the same') },
  { name: 'rebound', words: phrase('rebound damping'), ...damper,
    more: phrase('more rebound damping'), moreDoes: phrase('the suspension extends more slowly after it was compressed'),
    less: phrase('less rebound damping'), lessDoes: phrase('the suspension extends faster after it was compressed') },
  { name: 'compression', words: phrase('compression damping'), ...damper,
    more: phrase('more compression damping'), moreDoes: phrase('the suspension resists the stroke more, and dives or squats more slowly'),
    less: phrase('less compression damping'), lessDoes: phrase('the suspension gives way to the stroke more easily') },
  { name: 'low_speed_compression', words: phrase('low-speed compression damping'), ...damper,
    more: phrase('more low-speed compression damping'), moreDoes: phrase('slow movement is resisted more: dive under the brakes, squat on the drive'),
    less: phrase('less low-speed compression damping'), lessDoes: phrase('slow movement is resisted less: the end moves more under brakes and drive') },
  { name: 'high_speed_compression', words: phrase('high-speed compression damping'), ...damper,
    more: phrase('more high-speed compression damping'), moreDoes: phrase('fast movement is resisted more: sharp bumps and landings'),
    less: phrase('less high-speed compression damping'), lessDoes: phrase('fast movement is resisted less: sharp bumps are taken more softly') },
  { name: 'low_speed_rebound', words: phrase('low-speed rebound damping'), ...damper,
    more: phrase('more low-speed rebound damping'), moreDoes: phrase('the suspension returns more slowly from small and slow movements'),
    less: phrase('less low-speed rebound damping'), lessDoes: phrase('the suspension returns faster from small and slow movements') },
  { name: 'high_speed_rebound', words: phrase('high-speed rebound damping'), ...damper,
    more: phrase('more high-speed rebound damping'), moreDoes: phrase('the suspension returns more slowly from deep and fast strokes'),
    less: phrase('less high-speed rebound damping'), lessDoes: phrase('the suspension returns faster from deep and fast strokes') },
  { name: 'fork_height', words: phrase('fork height, from the top of the clamp to the top of the tube'), suits: ['length', 'mark'], mustBeEven: true,
    more: phrase('tubes further up through the clamps'), moreDoes: phrase('the front sits lower: less rake and trail, quicker steering'),
    less: phrase('tubes further down in the clamps'), lessDoes: phrase('the front sits higher: more rake and trail, slower steering') },
  { name: 'ride_height', words: phrase('rear ride height'), suits: ['length', 'turn', 'mark'],
    more: phrase('a longer shock or link'), moreDoes: phrase('the rear sits higher: less rake and trail, quicker steering'),
    less: phrase('a shorter shock or link'), lessDoes: phrase('the rear sits lower: more rake and trail, slower steering') },
  { name: 'air_pressure', words: phrase('air pressure, main chamber'), suits: ['pressure'], support: true,
    more: phrase('more air pressure'), moreDoes: phrase('the air spring carries more: less sag, firmer throughout'),
    less: phrase('less air pressure'), lessDoes: phrase('the air spring carries less: more sag, softer throughout') },
  { name: 'balance_pressure', words: phrase('air pressure, balance chamber'), suits: ['pressure'], support: true,
    more: phrase('more balance pressure'), moreDoes: phrase('the top of the stroke is softer and the end sits a little lower'),
    less: phrase('less balance pressure'), lessDoes: phrase('the top of the stroke is firmer and the end sits a little higher') },
  { name: 'oil_level', words: phrase('oil level, the air gap from the tube’s top to the oil'), suits: ['length', 'volume'], support: true,
    more: phrase('a larger air gap, so less oil'), moreDoes: phrase('softer towards the end of the stroke'),
    less: phrase('a smaller air gap, so more oil'), lessDoes: phrase('firmer towards the end of the stroke') },
  { name: 'spring_rate', words: phrase('spring rate'), suits: ['stiffness'], support: true,
    more: phrase('a stiffer spring'), moreDoes: phrase('the end moves less for the same load'),
    less: phrase('a softer spring'), lessDoes: phrase('the end moves more for the same load') },
  { name: 'steering_damper', words: phrase('steering damping'), ...damper,
    more: phrase('more steering damping'), moreDoes: phrase('the bars turn more heavily and shake less'),
    less: phrase('less steering damping'), lessDoes: phrase('the bars turn more lightly') },
  { name: 'tyre_pressure', words: phrase('tyre pressure, cold'), suits: ['pressure'],
    more: phrase('more tyre pressure'), moreDoes: phrase('a stiffer tyre that runs cooler'),
    less: phrase('less tyre pressure'), lessDoes: phrase('a softer tyre that runs hotter') },
]

const byName = new Map(controls.map((control) => [control.name, control]))

/** Whether a thing can be counted so. What is turned can be counted in any way, a numbered dial included; what is measured has its own kinds of unit. */
export function suitsUnit({ counted, suits }: Control, unit: Unit): boolean {
  return (counted !== undefined && isCount(unit)) || suits.includes(unit.dimension)
}

export function findControl(name: string): Control | undefined {
  return byName.get(name)
}
