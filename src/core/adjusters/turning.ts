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
}

const opposite: Record<Facing, Facing> = { up: 'down', down: 'up', front: 'rear', rear: 'front', left: 'right', right: 'left' }
const places = new Map<string, WorkedFrom>([
  ['facing', 'facing'], ['above', 'up'], ['below', 'down'], ['front', 'front'], ['rear', 'rear'], ['left', 'left'], ['right', 'right'],
])

/** The other way round. */
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
  return { view, in: turnsIn, out: reversed(turnsIn) }
}

function viewOf(faces: Facing | undefined, workedFrom: string | undefined): View {
  const place = places.get(workedFrom ?? 'facing')
  if (place === 'facing') return 'face'
  if (faces === undefined || place === undefined) return 'unknown'
  return faces === place ? 'face' : opposite[faces] === place ? 'back' : 'side'
}
