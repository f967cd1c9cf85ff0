import { airForce, airPressure, airRate, type AirQuestion } from '../compute/springs/airWorking'
import type { AirSpring } from '../compute/springs/airSpring'
import { isMissing, type Amount, type Outcome } from '../compute/working/result'
import { toBase } from '../notation/units'
import type { Dimension } from '../notation/units'
import { factAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt } from '../notebook/tree'
import { phrase, say } from '../words/say'
import { atmosphereOf } from './atmosphereOf'
import { countAt, slotsFor } from './countAt'
import { numberAt } from './numberAt'
import { perEntry } from './perEntry'
import { travelOf } from './sagOf'

/** The air of a fork leg in an entry, how many legs hold it, and what was taken for granted. */
export interface ForkAir {
  leg: AirSpring & { atmosphereBar: number }
  legs: 1 | 2
  /** For a fast stroke; readings of sag are slow and count with 1. */
  exponent: number
  assumptions: string[]
}

/** Our own choice between 1 and 1.4, where the notebook has none. */
const usualExponent = 1.2
const slow = phrase('read so slowly that the air keeps its temperature (n = 1)')

/** Whether the notebook tells of the air above the fork's oil. */
export function hasAir(notebook: Notebook): boolean {
  return nodeAt(notebook.root, ['machine', 'front', 'air'])?.kind === 'map'
}

/** The air of the fork as this entry has it set: its pressure and oil level by their adjusters where there are some. */
export const forkAirOf = perEntry((notebook, entry): Outcome<ForkAir> => {
  const fact = (key: string, dimension: Dimension) => factAt(notebook, ['machine', 'front', 'air', key], dimension)?.base
  const needed = {
    sealDiameterMm: fact('seal_diameter', 'length'), boreMm: fact('bore', 'length'),
    oilLevelMm: meanSet(notebook, entry, 'oil_level', 'length') ?? fact('oil_level', 'length'), travelMm: travelOf(notebook, 'front'),
  }
  const names = { sealDiameterMm: say('seal diameter of the fork'), boreMm: say('bore of the fork'), oilLevelMm: say('oil level of the fork in mm'), travelMm: say('travel of this end') }
  const missing = (Object.keys(names) as (keyof typeof names)[]).filter((key) => needed[key] === undefined)
  if (missing.length > 0) return { missing: missing.map((key) => names[key]) }
  const gaugeBar = meanSet(notebook, entry, 'air_pressure', 'pressure') ?? fact('pressure', 'pressure')
  const exponent = numberAt(notebook, ['machine', 'front', 'air', 'exponent']) ?? usualExponent
  const atmosphere = atmosphereOf(entry)
  return {
    leg: { ...(needed as Required<typeof needed> as AirSpring), gaugeBar: gaugeBar ?? 0, springVolumeMl: fact('spring_volume', 'volume') ?? 0, atmosphereBar: atmosphere.bar },
    legs: numberAt(notebook, ['machine', 'front', 'air', 'legs']) === 1 ? 1 : 2, exponent,
    assumptions: [...(gaugeBar === undefined ? [say('air let in or out at the cap with the wheel off the ground, so 0 bar')] : []), ...atmosphere.assumptions],
  }
})

/** Where the fork's adjusters of one control stand, in their base unit, the mean over them; absent where one of them does not say. */
function meanSet(notebook: Notebook, entry: Entry, control: string, dimension: Dimension): number | undefined {
  const slots = slotsFor(notebook, control, 'fork').filter(({ adjuster }) => adjuster.counts.dimension === dimension)
  const set = slots.flatMap((slot) => {
    const count = countAt(entry, slot)
    return count === undefined ? [] : [toBase(count, slot.adjuster.counts)]
  })
  return set.length === 0 || set.length < slots.length ? undefined : set.reduce((sum, each) => sum + each, 0) / set.length
}

const sums = { force: airForce, rate: airRate, pressure: airPressure } as const

/** Force (N), rate (N/mm) or gauge pressure (bar) of the air of one leg at a travel, slow as a reading or fast as a stroke. */
export function airAt(notebook: Notebook, entry: Entry, what: keyof typeof sums, at: { mm: Amount | undefined; stroke: 'slow' | 'fast'; levelByMm?: number }): Outcome {
  const air = forkAirOf(notebook, entry)
  if (isMissing(air)) return air
  const { leg, exponent, assumptions } = air
  const question: AirQuestion = { ...leg, oilLevelMm: leg.oilLevelMm + (at.levelByMm ?? 0), atMm: at.mm, exponent: at.stroke === 'slow' ? 1 : exponent }
  return sums[what](question, [at.stroke === 'slow' ? say(slow) : say`a fast stroke (n = ${exponent})`, ...assumptions])
}
