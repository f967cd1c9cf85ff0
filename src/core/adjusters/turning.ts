import type { Facing, Rotation } from './adjuster'

/**
 * Which way to turn an adjuster, as the person sees it who turns it. Only directions stand here; the sentences are made
 * in `describeTurning`. Left and right are the machine's own, as one sits on it.
 */

/** From where an adjuster is worked: facing its head, or from a side of the machine. */
export type WorkedFrom = 'facing' | Facing

/**
 * What one sees of the head: its face, its back (it points away and turns the other way round), or only its side, where
 * clockwise means nothing and one has to face the head in thought. `unknown` is a side too: nobody wrote which way it faces.
 */
export type View = 'face' | 'back' | 'side' | 'unknown'

/** The rotations as they are seen; for a `side` or `unknown` view, as they are when facing the head. */
export interface SeenTurning {
  view: View
  in: Rotation
  out: Rotation
  /** Of a head seen from the side: where to the part of it nearest to the eye moves, turned in. */
  nearSide?: Facing
}

const opposite: Record<Facing, Facing> = { up: 'down', down: 'up', front: 'rear', rear: 'front', left: 'right', right: 'left' }
const places = new Map<string, WorkedFrom>([
  ['facing', 'facing'], ['above', 'up'], ['below', 'down'], ['front', 'front'], ['rear', 'rear'], ['left', 'left'], ['right', 'right'],
])

/** The other way round. */
export function oppositeOf(facing: Facing): Facing {
  return opposite[facing]
}

/** The other rotation. */
export function reversed(rotation: Rotation): Rotation {
  return rotation === 'clockwise' ? 'anticlockwise' : 'clockwise'
}

/**
 * The rotations that turn an adjuster in and out, as seen from where it is worked.
 *
 * `workedFrom` is the notebook's word (`facing`, `above`, `below`, `front`, `rear`, `left`, `right`), facing when it says
 * none. `closes` is the rotation that turns it in, facing its head.
 *
 * @example seenTurning('down', 'above', 'clockwise') // { view: 'back', in: 'anticlockwise', out: 'clockwise' }
 */
export function seenTurning(faces: Facing | undefined, workedFrom: string | undefined, closes: Rotation): SeenTurning {
  const view = viewOf(faces, workedFrom)
  const turnsIn = view === 'back' ? reversed(closes) : closes
  const eye = places.get(workedFrom ?? '')
  return { view, in: turnsIn, out: reversed(turnsIn), ...(view === 'side' ? { nearSide: nearSideOf(faces!, eye as Facing, closes) } : {}) }
}

type Vector = readonly [number, number, number]

/** To the front, to the left, up: right-handed. */
const axes: Record<Facing, Vector> = { front: [1, 0, 0], rear: [-1, 0, 0], left: [0, 1, 0], right: [0, -1, 0], up: [0, 0, 1], down: [0, 0, -1] }

/** The velocity of a turning point: the rotation as a vector, which points into the head for clockwise, crossed with where the point is. */
function nearSideOf(faces: Facing, eye: Facing, closes: Rotation): Facing {
  const sense = closes === 'clockwise' ? -1 : 1
  const [[a, b, c], [x, y, z]] = [axes[faces], axes[eye]]
  const moves = [b * z - c * y, c * x - a * z, a * y - b * x].map((each) => each * sense)
  return (Object.keys(axes) as Facing[]).find((each) => axes[each].every((part, at) => part === moves[at]! + 0))!
}

function viewOf(faces: Facing | undefined, workedFrom: string | undefined): View {
  const place = places.get(workedFrom ?? 'facing')
  if (place === 'facing') return 'face'
  if (faces === undefined || place === undefined) return 'unknown'
  return faces === place ? 'face' : opposite[faces] === place ? 'back' : 'side'
}
