import { friction } from '../compute/sag/friction'
import type { End, LoadCase, Use } from '../compute/sag/loadCase'
import { sag, type Readings } from '../compute/sag/sag'
import { sagPercent } from '../compute/sag/sagPercent'
import { sagTarget, type SagTarget } from '../compute/sag/sagTarget'
import { readLength } from '../compute/working/resolution'
import { found, type Outcome } from '../compute/working/result'
import { measured, type Measured } from '../notebook/fields'
import { factAt, windowAt, wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'

/** The sag lengths an entry gives for one end and load case, with their places. */
export interface SagLengths {
  extended?: Measured
  lifted?: Measured
  pushed?: Measured
}

export function sagLengthsOf(entry: Entry, end: End, load: LoadCase): SagLengths {
  const extended = measured(entry, `sag.${end}.extended`)
  const lifted = measured(entry, `sag.${end}.${load}.lifted`)
  const pushed = measured(entry, `sag.${end}.${load}.pushed`)
  return { ...(extended ? { extended } : {}), ...(lifted ? { lifted } : {}), ...(pushed ? { pushed } : {}) }
}

function readingsOf({ lifted, pushed }: SagLengths): Readings | undefined {
  if (lifted && pushed) return [readLength(lifted.base), readLength(pushed.base)]
  const one = lifted ?? pushed
  return one && [readLength(one.base)]
}

/** Sag of one end and load case in mm, from the lengths measured in this entry alone: a length is never carried over. */
export function sagOf(entry: Entry, end: End, load: LoadCase): Outcome {
  const lengths = sagLengthsOf(entry, end, load)
  return sag({ load, extendedMm: lengths.extended && readLength(lengths.extended.base), readingsMm: readingsOf(lengths) })
}

/** The same as a share of the machine's travel at that end, in percent. */
export function sagPercentOf(notebook: Notebook, entry: Entry, end: End, load: LoadCase): Outcome {
  const inMm = sagOf(entry, end, load)
  const sagMm = found(inMm)
  return sagMm ? sagPercent({ sagMm, travelMm: travelOf(notebook, end) }) : inMm
}

/** The friction band in mm: of the readings with the rider aboard, else of the bike's. */
export function frictionOf(entry: Entry, end: End): Outcome {
  const aboard = friction(readingsOf(sagLengthsOf(entry, end, 'rider')))
  return found(aboard) ? aboard : friction(readingsOf(sagLengthsOf(entry, end, 'bike')))
}

/** Travel of an end in mm, as the notebook gives it. */
export function travelOf(notebook: Notebook, end: End): number | undefined {
  const travel = factAt(notebook, ['machine', end, 'travel'], 'length')?.base
  return travel !== undefined && travel > 0 ? travel : undefined
}

const uses: readonly Use[] = ['road', 'track', 'motocross', 'enduro', 'adventure', 'touring']

export function useOf(notebook: Notebook): Use | undefined {
  return uses.find((use) => use === wordsAt(notebook, ['machine', 'use']))
}

/** The window this sag should lie in: the machine's own, else the published one for its use. */
export function sagTargetOf(notebook: Notebook, end: End, load: LoadCase): Outcome<SagTarget> {
  const own = windowAt(notebook, end, load === 'bike' ? 'static_sag' : 'rider_sag')
  const unit = own?.from.quantity.unit.dimension === 'share' ? 'percent' : 'mm'
  const travelMm = travelOf(notebook, end)
  return sagTarget({
    use: useOf(notebook), end, load,
    ...(travelMm === undefined ? {} : { travelMm }),
    ...(own ? { own: { low: own.from.base, high: own.to.base, unit } } : {}),
  })
}
