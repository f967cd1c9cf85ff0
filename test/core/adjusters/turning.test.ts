import assert from 'node:assert/strict'
import type { Facing, Rotation } from '../../../src/core/adjusters/adjuster'
import { reversed, seenTurning } from '../../../src/core/adjusters/turning'

/*
 * The independent check: a head with its normal, a rotation as a vector along its axis, an eye somewhere, and a mark on
 * the head of which we watch which way it moves across the eye's picture. x is forward, y left, z up: right-handed.
 */
type Vector = readonly [number, number, number]

const directions: Record<string, Vector> = {
  up: [0, 0, 1], down: [0, 0, -1], front: [1, 0, 0], rear: [-1, 0, 0], left: [0, 1, 0], right: [0, -1, 0],
  above: [0, 0, 1], below: [0, 0, -1],
}
const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const cross = (a: Vector, b: Vector): Vector => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
const times = (a: Vector, factor: number): Vector => [a[0] * factor, a[1] * factor, a[2] * factor]

/** Right-hand rule: the thumb points out of the head for a rotation that its face shows as anticlockwise. */
function rotationVector(head: Vector, facingHead: Rotation): Vector {
  return times(head, facingHead === 'anticlockwise' ? 1 : -1)
}

/** What an eye at `eye` sees of a turning head: does the topmost mark of its picture move to the right? */
function seenFrom(eye: Vector, rotation: Vector): Rotation | undefined {
  const sight = times(eye, -1)
  const upward: Vector = Math.abs(sight[2]) === 1 ? [1, 0, 0] : [0, 0, 1]
  const right = cross(sight, upward)
  const top = cross(right, sight)
  const speed = dot(cross(rotation, top), right)
  return speed === 0 ? undefined : speed > 0 ? 'clockwise' : 'anticlockwise'
}

const facings: Facing[] = ['up', 'down', 'front', 'rear', 'left', 'right']
const places = ['facing', 'above', 'below', 'front', 'rear', 'left', 'right']
const threads: Rotation[] = ['clockwise', 'anticlockwise']

describe('the vectors of this test', () => {
  it('see a clock as clockwise, and a right-hand screw go in clockwise', () => {
    const clock = rotationVector(directions.up!, 'clockwise')
    assert.equal(seenFrom(directions.above!, clock), 'clockwise')
    assert.equal(seenFrom(directions.below!, clock), 'anticlockwise')
    assert.equal(seenFrom(directions.left!, clock), undefined)
    // A right-hand thread advances along its rotation vector; turned clockwise it goes away from the face, hence in.
    assert.ok(dot(clock, directions.up!) < 0)
  })
})

describe('the way to turn an adjuster', () => {
  let combinations = 0
  for (const faces of facings) {
    for (const workedFrom of places) {
      for (const closes of threads) {
        combinations++
        it(`facing ${faces}, worked from ${workedFrom}, closing ${closes}, is what vectors say`, () => {
          const head = directions[faces]!
          const eye = workedFrom === 'facing' ? head : directions[workedFrom]!
          const seen = seenTurning(faces, workedFrom, closes)
          const expected = seenFrom(eye, rotationVector(head, closes))
          const facingHead = seenFrom(head, rotationVector(head, closes))
          assert.equal(facingHead, closes)
          assert.equal(seen.view, expected === undefined ? 'side' : dot(eye, head) > 0 ? 'face' : 'back')
          assert.equal(seen.in, expected ?? facingHead)
          const opening = rotationVector(head, reversed(closes))
          assert.equal(seen.out, seenFrom(eye, opening) ?? seenFrom(head, opening))
        })
      }
    }
  }

  it('was looked at in all 84 combinations', () => assert.equal(combinations, 6 * 7 * 2))

  it('is anticlockwise for the screw at a shock’s foot from above, and clockwise from below', () => {
    assert.deepEqual(seenTurning('down', 'above', 'clockwise'), { view: 'back', in: 'anticlockwise', out: 'clockwise' })
    assert.deepEqual(seenTurning('down', 'below', 'clockwise'), { view: 'face', in: 'clockwise', out: 'anticlockwise' })
  })

  // RR 4T workshop manual p. 20: clockwise decreases low-speed compression; some older shocks likewise (J. Siddall).
  it('is the adjuster’s own where it closes against the custom', () => {
    assert.deepEqual(seenTurning('up', 'above', 'anticlockwise'), { view: 'face', in: 'anticlockwise', out: 'clockwise' })
    assert.deepEqual(seenTurning('down', 'above', 'anticlockwise'), { view: 'back', in: 'clockwise', out: 'anticlockwise' })
  })

  it('is told facing the head where it is not known which way the head faces, or from where it is worked', () => {
    assert.deepEqual(seenTurning(undefined, undefined, 'clockwise'), { view: 'face', in: 'clockwise', out: 'anticlockwise' })
    assert.deepEqual(seenTurning(undefined, 'above', 'clockwise'), { view: 'unknown', in: 'clockwise', out: 'anticlockwise' })
    for (const nonsense of ['sideways', '', '__proto__', 'constructor']) assert.equal(seenTurning('up', nonsense, 'clockwise').view, 'unknown', nonsense)
  })
})
