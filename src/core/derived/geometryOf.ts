import { geometryNow, type GeometryNow } from '../compute/geometry/geometryNow'
import { solveSteering, type SolvedSteering, type SteeringSet } from '../compute/geometry/solveSteering'
import { normalFromTrail } from '../compute/geometry/normalFromTrail'
import { asWritten } from '../compute/working/asWritten'
import { changeSince } from '../compute/working/changeSince'
import { found, isMissing, reasons, type Outcome } from '../compute/working/result'
import type { Dimension } from '../notation/units'
import { factAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { assuming } from './assuming'
import { geometryMovesOf, type GeometryMoves } from './geometryMoves'
import { perVersion } from './perEntry'
import { sagOf } from './sagOf'

export type GeometryKey = Exclude<keyof GeometryNow, 'pitchDeg'>

/** Each number on its own: some may be known where others are not. */
export type Geometry = Record<GeometryKey, Outcome>

export const geometryKeys: readonly GeometryKey[] = ['rakeDeg', 'trailMm', 'normalTrailMm', 'wheelbaseMm']

/** The stance: as the figures were taken but for what moved, or sunk by the rider sag measured in this entry at both ends. */
export type Stance = 'figures' | 'riderSag'

const figure = (notebook: Notebook, key: string, dimension: Dimension = 'length') => factAt(notebook, ['machine', 'geometry', key], dimension)?.base

/** What the notebook says of the steering end. */
export function steeringSetOf(notebook: Notebook): SteeringSet {
  const said = {
    rakeDeg: figure(notebook, 'rake', 'angle'), offsetMm: figure(notebook, 'fork_offset'),
    frontRadiusMm: figure(notebook, 'front_radius'), trailMm: figure(notebook, 'trail'),
  }
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined))
}

/** All five numbers of the steering end as the notebook's figures fix them, and a contradiction between them. */
export function solvedSteeringOf(notebook: Notebook): Outcome<SolvedSteering> {
  return solveSteering(steeringSetOf(notebook))
}

/**
 * Rake, trail, normal trail and wheelbase of the machine in an entry, after fork height, ride height and tyres; with
 * `riderSag` also as it stands with its rider aboard, the figures being those of a fully extended machine.
 * Where nothing moved, figures that would not do for a computation are still given as they are written.
 */
export function geometryOf(notebook: Notebook, entry: Entry, stance: Stance = 'figures'): Geometry {
  return workedOut(notebook, entry, stance)
}

/** Four rows and every comparison with a baseline ask for the same. */
const workedOut = perVersion((notebook, entry, stance: Stance): Geometry => {
  const moves = geometryMovesOf(notebook, entry)
  if (isMissing(moves)) return all(moves)
  const sunk = stance === 'riderSag' ? sunkBy(notebook, entry) : {}
  if (isMissing(sunk)) return all(sunk)
  const now = moved(notebook, moves, sunk)
  const assumptions = [...moves.assumptions, ...(stance === 'riderSag' ? [say('the geometry figures hold for the machine fully extended')] : [])]
  if (!isMissing(now)) return mapped((key) => assuming(now[key], assumptions))
  if (stance === 'riderSag' || !moves.none) return all(now)
  return mapped((key) => assuming(fromFigures(notebook, key, now.missing), assumptions))
})

const mapped = (of: (key: GeometryKey) => Outcome): Geometry => Object.fromEntries(geometryKeys.map((key) => [key, of(key)])) as Geometry
const all = (outcome: Outcome): Geometry => mapped(() => outcome)

function moved(notebook: Notebook, moves: GeometryMoves, sunk: { frontSagMm?: number; rearSagMm?: number }): Outcome<GeometryNow> {
  const steering = solvedSteeringOf(notebook)
  const { rakeDeg, offsetMm, frontRadiusMm } = found(steering)?.values ?? {}
  const { forkUpMm, rearRaisedMm } = moves
  const now = geometryNow({
    rakeDeg, offsetMm, frontRadiusMm, wheelbaseMm: figure(notebook, 'wheelbase'), rearRadiusMm: figure(notebook, 'rear_radius'),
    moved: {
      forkUpMm, rearRaisedMm, ...sunk,
      ...(moves.frontRadiusMm === undefined ? {} : { frontRadiusMm: moves.frontRadiusMm }),
      ...(moves.rearRadiusMm === undefined ? {} : { rearRadiusMm: moves.rearRadiusMm }),
    },
  })
  if (!isMissing(steering)) return now
  const rear = isMissing(now) ? now.missing.filter((name) => name.startsWith('wheelbase') || name.startsWith('rear')) : []
  return { missing: [...steering.missing, ...rear] }
}

function sunkBy(notebook: Notebook, entry: Entry): Outcome<{ frontSagMm: number; rearSagMm: number }> {
  const [front, rear] = [sagOf(notebook, entry, 'front', 'rider'), sagOf(notebook, entry, 'rear', 'rider')]
  if (isMissing(front) || isMissing(rear)) return { missing: [say('the rider sag of both ends, measured in this entry')] }
  return { frontSagMm: front.value, rearSagMm: rear.value }
}

/** One number from the figures alone, where nothing moved. */
function fromFigures(notebook: Notebook, key: GeometryKey, missing: string[]): Outcome {
  const { rakeDeg, trailMm } = steeringSetOf(notebook)
  const solved = key === 'wheelbaseMm' ? undefined : found(solvedSteeringOf(notebook))?.values[key]
  if (solved) return solved
  const written: Geometry = {
    rakeDeg: asWritten(say('rake'), '°', figure(notebook, 'rake', 'angle')), trailMm: asWritten(say('trail'), 'mm', figure(notebook, 'trail')),
    normalTrailMm: normalFromTrail({ rakeDeg, trailMm }), wheelbaseMm: asWritten(say('wheelbase'), 'mm', figure(notebook, 'wheelbase')),
  }
  return isMissing(written[key]) ? { missing } : written[key]
}

/** How one number of the geometry differs between two entries, now less then. */
export function geometryChange(notebook: Notebook, entry: Entry, since: Entry, key: GeometryKey, stance: Stance = 'figures'): Outcome {
  const [now, then] = [geometryOf(notebook, entry, stance)[key], geometryOf(notebook, since, stance)[key]]
  return isMissing(now) || isMissing(then) ? { missing: reasons(now, then) } : changeSince(now, then, since.key)
}
