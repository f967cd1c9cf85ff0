import assert from 'node:assert/strict'
import type { Facing, Rotation } from '../../../src/core/adjusters/adjuster'
import { reversed, seenTurning } from '../../../src/core/adjusters/turning'
import { directions, dot, quarterTurned, rotationVector, seenFrom } from './seenFrom'

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
          // What is nearest to the eye of a turning head goes to where it is a quarter of a turn later.
          assert.deepEqual(seen.nearSide && directions[seen.nearSide], expected === undefined ? quarterTurned(eye, rotationVector(head, closes)) : undefined)
        })
      }
    }
  }

  it('was looked at in all 84 combinations', () => assert.equal(combinations, 6 * 7 * 2))

  it('of a collar facing up, worked from the left, moves its near side to the front', () => {
    // Clockwise from above, what is on the left comes to the front, as the hand of a clock goes from nine to twelve.
    assert.equal(seenTurning('up', 'left', 'clockwise').nearSide, 'front')
    assert.equal(seenTurning('up', 'right', 'clockwise').nearSide, 'rear')
    assert.equal(seenTurning('up', 'left', 'anticlockwise').nearSide, 'rear')
    assert.equal(seenTurning('left', 'above', 'clockwise').nearSide, 'rear')
  })

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
