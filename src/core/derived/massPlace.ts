import { axleLoads, type AxleLoads } from '../compute/loads/axleLoads'
import { frontShare } from '../compute/loads/frontShare'
import { liftingAcceleration, liftingDeceleration, loadTransfer, type Loads } from '../compute/loads/loadTransfer'
import { massHeight } from '../compute/loads/massHeight'
import { riderFrontShare } from '../compute/loads/riderShare'
import { transferPerG } from '../compute/loads/transferPerG'
import { loadCaseNames, type LoadCase } from '../compute/sag/loadCase'
import { asWritten } from '../compute/working/asWritten'
import { found, isMissing, reasons, type Measured, type Outcome } from '../compute/working/result'
import type { Dimension } from '../notation/units'
import { factAt, factIn } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { assuming } from './assuming'
import { geometryOf } from './geometryOf'
import { axleMassOf, riderMassOf } from './loadsOf'
import { perEntry, perVersion } from './perEntry'

/** The share of the weight on the front axle, percent, of one load case. */
export function frontShareOf(notebook: Notebook, entry: Entry, load: LoadCase): Outcome {
  return frontShare({ frontKg: axleMassOf(notebook, entry, load, 'front'), rearKg: axleMassOf(notebook, entry, load, 'rear'), whose: say(loadCaseNames[load]) })
}

/** The share of the rider that the front axle carries, 0 to 1, from both weighings of it. */
export function riderShareOf(notebook: Notebook, entry: Entry): Outcome {
  const [withRider, without] = (['rider', 'bike'] as const).map((load) => axleMassOf(notebook, entry, load, 'front'))
  return riderFrontShare({ frontWithKg: withRider, frontWithoutKg: without, riderKg: riderMassOf(notebook) })
}

/** The heaviest load case of which both axles were weighed: as it is ridden, else the bike alone. */
export function weighedCase(notebook: Notebook, entry: Entry): LoadCase {
  const isWeighed = (load: LoadCase) => (['front', 'rear'] as const).every((end) => axleMassOf(notebook, entry, load, end) !== undefined)
  return isWeighed('rider') ? 'rider' : 'bike'
}

const numberOf = ({ value, u }: Measured): Measured => ({ value, ...(u === undefined ? {} : { u }) })

/** How far the centre of mass lies behind the front axle along the ground, mm. */
export function massBehindFrontOf(notebook: Notebook, entry: Entry, load = weighedCase(notebook, entry)): Outcome {
  const placed = placedOf(notebook, entry, load)
  return isMissing(placed) ? placed : assuming(placed.behindFrontMm, [say(loadCaseNames[load])])
}

const placedOf = perVersion((notebook, entry, load: LoadCase): Outcome<AxleLoads> => {
  const [frontKg, rearKg] = (['front', 'rear'] as const).map((end) => axleMassOf(notebook, entry, load, end))
  const wheelbase = geometryOf(notebook, entry).wheelbaseMm
  const placed = axleLoads({ frontKg, rearKg, wheelbaseMm: found(wheelbase) })
  return isMissing(placed) && isMissing(wheelbase) ? { missing: [...new Set([...placed.missing.filter((name) => name !== 'wheelbase'), ...wheelbase.missing])] } : placed
})

/** Height of the centre of mass above the ground, mm, and the load case it is of: lifted and weighed, else as it is written. */
export const massHeightOf = perEntry((notebook, entry): { height: Outcome; load: LoadCase } => {
  for (const load of ['rider', 'bike'] as const) {
    if (liftFact(notebook, entry, load, 'lift', 'length') !== undefined) return { height: lifted(notebook, entry, load), load }
  }
  const written = factAt(notebook, ['machine', 'mass_height'], 'length')?.base
  if (written !== undefined && written > 0) return { height: asWritten(say('height of the centre of mass'), 'mm', written), load: weighedCase(notebook, entry) }
  return { height: { missing: [say('the height of the centre of mass (`mass_height`), or the front axle weighed with the rear lifted (`front_lifted`, `lift`)')] }, load: 'bike' }
})

function lifted(notebook: Notebook, entry: Entry, load: LoadCase): Outcome {
  const radius = (key: string) => factAt(notebook, ['machine', 'geometry', key], 'length')?.base
  const rearRadiusMm = radius('rear_radius')
  return assuming(massHeight({
    wheelbaseMm: factAt(notebook, ['machine', 'geometry', 'wheelbase'], 'length')?.base, frontRadiusMm: radius('front_radius'), ...(rearRadiusMm === undefined ? {} : { rearRadiusMm }),
    frontLevelKg: axleMassOf(notebook, entry, load, 'front'), rearLevelKg: axleMassOf(notebook, entry, load, 'rear'),
    frontLiftedKg: liftFact(notebook, entry, load, 'front_lifted', 'mass'), liftMm: liftFact(notebook, entry, load, 'lift', 'length'),
  }), [say(loadCaseNames[load])])
}

function liftFact(notebook: Notebook, entry: Entry, load: LoadCase, key: string, dimension: Dimension): number | undefined {
  return (factIn(entry.node, ['axle_loads', load, key], dimension) ?? factAt(notebook, ['machine', 'axle_loads', load, key], dimension))?.base
}

interface Mass {
  height: Measured
  placed: AxleLoads
  assumptions: string[]
}

/** Everything that braking and drive do to the axle loads is asked of the same facts. */
const massOf = perVersion((notebook, entry): Outcome<Mass> => {
  const { height, load } = massHeightOf(notebook, entry)
  const placed = placedOf(notebook, entry, load)
  if (isMissing(height) || isMissing(placed)) return { missing: reasons(height, placed) }
  return { height: numberOf(height), placed, assumptions: [say(loadCaseNames[load]), ...height.working.assumptions] }
})

/** Load that goes from one axle to the other for each g of braking or drive, N. */
export function transferOf(notebook: Notebook, entry: Entry): Outcome {
  const mass = massOf(notebook, entry)
  if (isMissing(mass)) return mass
  const { height, placed, assumptions } = mass
  return assuming(transferPerG({ massKg: numberOf(placed.totalKg), wheelbaseMm: found(geometryOf(notebook, entry).wheelbaseMm), heightMm: height }), assumptions)
}

/** Both axle loads, N, at a braking in g; below zero for drive. */
export function loadsAt(notebook: Notebook, entry: Entry, decelerationG: number): Outcome<Loads> {
  const mass = massOf(notebook, entry)
  if (isMissing(mass)) return mass
  const wheelbaseMm = found(geometryOf(notebook, entry).wheelbaseMm)
  return loadTransfer({ massKg: mass.placed.totalKg.value, wheelbaseMm, aheadOfRearMm: mass.placed.aheadOfRearMm.value, heightMm: mass.height.value, decelerationG })
}

/** The braking at which the rear wheel lifts, or the drive at which the front does, g. */
export function liftingLimitOf(notebook: Notebook, entry: Entry, what: 'braking' | 'drive'): Outcome {
  const mass = massOf(notebook, entry)
  if (isMissing(mass)) return mass
  const { height, placed, assumptions } = mass
  const limit = what === 'braking'
    ? liftingDeceleration({ behindFrontMm: numberOf(placed.behindFrontMm), heightMm: height })
    : liftingAcceleration({ aheadOfRearMm: numberOf(placed.aheadOfRearMm), heightMm: height })
  return assuming(limit, assumptions)
}
