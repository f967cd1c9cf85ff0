import { phrase, say } from '../words/say'
import type { Adjuster } from './adjuster'
import { isTurned } from './describeTurning'
import { neighbourWords } from './together'

/** A caution, and the adjusters it belongs to. */
interface Caution {
  belongs: (adjuster: Adjuster) => boolean
  words: string
}

const controls = (...names: string[]) => ({ control }: Adjuster) => names.includes(control.name)
const holds = (...ways: string[]) => ({ heldBy }: Adjuster) => heldBy !== undefined && ways.includes(heldBy)

/** Most serious first. Common practice, and what makers’ handbooks warn of; the tests name which. */
const cautions: readonly Caution[] = [
  { belongs: controls('fork_height'), words: phrase('Both tubes stand alike: a difference is a fault to stop for.') },
  { belongs: controls('fork_height'), words: phrase('Support the machine so that the front cannot drop when a clamp is loosened, and torque the pinch bolts to the manual: over-tight lower bolts bind the fork.') },
  { belongs: controls('fork_height', 'ride_height'), words: phrase('Check the clearance of tyre, brake hoses, fender and steering stop over full travel before riding.') },
  { belongs: controls('ride_height'), words: phrase('Keep the thread engaged as far as the manual asks, and check the chain’s slack afterwards.') },
  { belongs: (adjuster) => controls('ride_height')(adjuster) && isTurned(adjuster), words: phrase('Turn it a little and measure: go on only when it moved the way you meant.') },
  { belongs: (adjuster) => adjuster.on === 'shock' && adjuster.control.damping === true, words: phrase('The shock is gas-charged: never open it or its reservoir.') },
  { belongs: controls('air_pressure', 'balance_pressure'), words: phrase('Set or release air with the wheel off the ground, and never open a chamber that is under pressure. The pressure changes with temperature and altitude.') },
  { belongs: controls('oil_level', 'spring_rate'), words: phrase('This needs the suspension taken apart: go by the service manual, release preload and air first, and wear eye protection.') },
  { belongs: (adjuster) => adjuster.control.damping === true && isTurned(adjuster), words: phrase('Seat it lightly: force at either end damages the valve. Fully closed is a place to count from, not a setting.') },
  { belongs: (adjuster) => adjuster.control.damping !== true && isTurned(adjuster), words: phrase('Never force it past either end.') },
  { belongs: controls('steering_damper'), words: phrase('Turn the bars from stop to stop before riding: they must move freely.') },
  { belongs: controls('tyre_pressure'), words: phrase('Stay within what the makers of tyre and machine allow.') },
  { belongs: holds('locknut'), words: phrase('Loosen the locknut first, and tighten it to the manual’s torque afterwards.') },
  { belongs: ({ legs, control }) => legs.length === 2 && control.mustBeEven !== true, words: phrase('Keep both legs of a pair alike.') },
  { belongs: ({ condition }) => condition === 'worn', words: phrase('What holds it is worn: check where it stands before every ride.') },
  { belongs: (adjuster) => adjuster.condition !== 'worn' && isTurned(adjuster) && holds('friction', 'nothing')(adjuster), words: phrase('No detent holds it: check now and then that it has not moved.') },
]

/** The cautions that belong to an adjuster, most serious first; there is at least one for everything in the table of controls. */
export function cautionsFor(adjuster: Adjuster): string[] {
  return [...neighbourWords(adjuster), ...cautions.filter((caution) => caution.belongs(adjuster)).map((caution) => say(caution.words))]
}
