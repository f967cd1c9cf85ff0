import type { Rotation } from '../../../src/core/adjusters/adjuster'

/*
 * The independent check: a head with its normal, a rotation as a vector along its axis, an eye somewhere, and a mark on
 * the head of which we watch which way it moves across the eye's picture. x is forward, y left, z up: right-handed.
 */
export type Vector = readonly [number, number, number]

export const directions: Record<string, Vector> = {
  up: [0, 0, 1], down: [0, 0, -1], front: [1, 0, 0], rear: [-1, 0, 0], left: [0, 1, 0], right: [0, -1, 0],
  above: [0, 0, 1], below: [0, 0, -1],
}
export const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
export const cross = (a: Vector, b: Vector): Vector => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
export const times = (a: Vector, factor: number): Vector => [a[0] * factor, a[1] * factor, a[2] * factor]

/** Right-hand rule: the thumb points out of the head for a rotation that its face shows as anticlockwise. */
export function rotationVector(head: Vector, facingHead: Rotation): Vector {
  return times(head, facingHead === 'anticlockwise' ? 1 : -1)
}

/** What an eye at `eye` sees of a turning head: does the topmost mark of its picture move to the right? */
export function seenFrom(eye: Vector, rotation: Vector): Rotation | undefined {
  const sight = times(eye, -1)
  const upward: Vector = Math.abs(sight[2]) === 1 ? [1, 0, 0] : [0, 0, 1]
  const right = cross(sight, upward)
  const top = cross(right, sight)
  const speed = dot(cross(rotation, top), right)
  return speed === 0 ? undefined : speed > 0 ? 'clockwise' : 'anticlockwise'
}

/** Where a point goes that lies at `point` on something turning about `rotation`: a quarter of a turn on, by Rodrigues’ formula. */
export function quarterTurned(point: Vector, rotation: Vector): Vector {
  const [c, s] = [Math.cos(Math.PI / 2), Math.sin(Math.PI / 2)]
  const [along, across] = [times(rotation, dot(rotation, point) * (1 - c)), times(cross(rotation, point), s)]
  return [0, 1, 2].map((at) => Math.round(point[at]! * c + across[at]! + along[at]!) + 0) as unknown as Vector
}
