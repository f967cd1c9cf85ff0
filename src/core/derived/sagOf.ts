import { friction } from '../compute/sag/friction'
import type { End, LoadCase, Use } from '../compute/sag/loadCase'
import { sag, type Readings } from '../compute/sag/sag'
import { sagPercent } from '../compute/sag/sagPercent'
import { sagTarget, type SagTarget } from '../compute/sag/sagTarget'
import { readLength, usualReadingHalfWidthMm } from '../compute/working/resolution'
import { found, type Outcome } from '../compute/working/result'
import { measured, type Measured } from '../notebook/fields'
import { factAt, windowAt, wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { oncePer } from '../notebook/oncePer'
import { perEntry, perNotebook } from './perEntry'

/** The sag lengths an entry gives for one end and load case, with their places. */
export interface SagLengths {
  extended?: Measured
  lifted?: Measured
  pushed?: Measured
}

export function sagLengthsOf({ node }: Entry, end: End, load: LoadCase): SagLengths {
  return lengthsIn(node)[end][load]
}

// Nearly every rule about sag asks for them.
const lengthsIn = oncePer((node: Entry['node']) => {
  const of = (end: End, load: LoadCase): SagLengths => {
    const [extended, lifted, pushed] = [`sag.${end}.extended`, `sag.${end}.${load}.lifted`, `sag.${end}.${load}.pushed`].map((key) => measured({ node }, key))
    return { ...(extended ? { extended } : {}), ...(lifted ? { lifted } : {}), ...(pushed ? { pushed } : {}) }
  }
  const at = (end: End) => ({ bike: of(end, 'bike'), rider: of(end, 'rider') })
  return { front: at('front'), rear: at('rear') }
})

/** The loaded lengths of one end and load case, each with the uncertainty of reading it; `undefined` where none was taken. */
export function readingsOf(notebook: Notebook, entry: Entry, end: End, load: LoadCase): Readings | undefined {
  const { lifted, pushed } = sagLengthsOf(entry, end, load)
  const read = ({ base }: Measured) => readLength(base, readingHalfWidth(notebook))
  if (lifted && pushed) return [read(lifted), read(pushed)]
  const one = lifted ?? pushed
  return one && [read(one)]
}

/** How near the truth a length is read, mm either way: what the notebook says, else what is usual. */
export const readingHalfWidth = perNotebook((notebook) => {
  const said = factAt(notebook, ['machine', 'reading_resolution'], 'length')?.base
  return said !== undefined && said > 0 ? said : usualReadingHalfWidthMm
})

/** Sag of one end and load case in mm, from the lengths measured in this entry alone: a length is never carried over. */
export const sagOf = perEntry((notebook, entry, end: End, load: LoadCase): Outcome => {
  const { extended } = sagLengthsOf(entry, end, load)
  return sag({ load, extendedMm: extended && readLength(extended.base, readingHalfWidth(notebook)), readingsMm: readingsOf(notebook, entry, end, load) })
})

/** The same as a share of the machine's travel at that end, in percent. */
export const sagPercentOf = perEntry((notebook, entry, end: End, load: LoadCase): Outcome => {
  const inMm = sagOf(notebook, entry, end, load)
  const sagMm = found(inMm)
  return sagMm ? sagPercent({ sagMm, travelMm: travelOf(notebook, end) }) : inMm
})

/** The friction band in mm: of the readings with the rider aboard, else of the bike's. */
export const frictionOf = perEntry((notebook, entry, end: End): Outcome => {
  const aboard = friction(readingsOf(notebook, entry, end, 'rider'))
  return found(aboard) ? aboard : friction(readingsOf(notebook, entry, end, 'bike'))
})

/** Travel of an end in mm, as the notebook gives it. */
export const travelOf = perNotebook((notebook, end: End) => {
  const travel = factAt(notebook, ['machine', end, 'travel'], 'length')?.base
  return travel !== undefined && travel > 0 ? travel : undefined
})

const uses: readonly Use[] = ['road', 'track', 'motocross', 'enduro', 'adventure', 'touring']

export function useOf(notebook: Notebook): Use | undefined {
  return uses.find((use) => use === wordsAt(notebook, ['machine', 'use']))
}

/** The window this sag should lie in: the machine's own, else the published one for its use. */
export const sagTargetOf = perNotebook((notebook, end: End, load: LoadCase): Outcome<SagTarget> => {
  const own = windowAt(notebook, end, load === 'bike' ? 'static_sag' : 'rider_sag')
  const unit = own?.from.quantity.unit.dimension === 'share' ? 'percent' : 'mm'
  const travelMm = travelOf(notebook, end)
  return sagTarget({
    use: useOf(notebook), end, load,
    ...(travelMm === undefined ? {} : { travelMm }),
    ...(own ? { own: { low: own.from.base, high: own.to.base, unit } } : {}),
  })
})
