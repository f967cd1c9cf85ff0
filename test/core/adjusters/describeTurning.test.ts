import assert from 'node:assert/strict'
import { controls } from '../../../src/core/adjusters/controls'
import { describeTurning, isTurned } from '../../../src/core/adjusters/describeTurning'
import { anAdjuster } from './anAdjuster'

describe('how to turn it, in words', () => {
  it('says what is seen from where one stands, and what it gives', () => {
    const rebound = anAdjuster('rebound', 'clicks', { on: 'shock', faces: 'down', workedFrom: 'above' })
    const turning = describeTurning(rebound)!
    assert.equal(turning.in.sentence, 'Turn it anticlockwise, as you look down on it from above, to turn it in (more rebound damping).')
    assert.equal(turning.out.sentence, 'Turn it clockwise, as you look down on it from above, to turn it out (less rebound damping).')
    assert.equal(turning.view, 'back')
  })

  it('asks to face the head where one sees only its side', () => {
    const turning = describeTurning(anAdjuster('compression', 'clicks', { faces: 'rear', workedFrom: 'left' }))!
    assert.equal(turning.view, 'side')
    assert.equal(turning.in.sentence, 'Face the head, which points to the rear: turn it clockwise to turn it in (more compression damping).')
    assert.equal(turning.nearSide, 'As you work it from the machine’s left, the side of it nearest to you moves up for more compression damping, down for less compression damping.')
  })

  it('is facing the head where nothing else is written', () => {
    assert.equal(describeTurning(anAdjuster('preload', 'turns'))!.in.sentence, 'Turn it clockwise, facing its head, to turn it in (more preload).')
    assert.equal(describeTurning(anAdjuster('preload', 'turns', { workedFrom: 'above' }))!.in.sentence, 'Face the head: turn it clockwise to turn it in (more preload).')
  })

  it('says where a head points that one is to face', () => {
    assert.equal(describeTurning(anAdjuster('rebound', 'clicks', { faces: 'rear' }))!.in.sentence, 'Turn it clockwise, facing its head, which points to the rear, to turn it in (more rebound damping).')
    assert.equal(describeTurning(anAdjuster('rebound', 'clicks', { faces: 'left', workedFrom: 'facing' }))!.out.sentence, 'Turn it anticlockwise, facing its head, which points to the left, to turn it out (less rebound damping).')
  })

  it('names the viewpoint of each side', () => {
    const seen = { above: /down on it from above/, below: /up at it from below/, front: /front of the machine/, rear: /behind the machine/, left: /machine’s left/, right: /machine’s right/ }
    const faces = { above: 'up', below: 'down', front: 'front', rear: 'rear', left: 'left', right: 'right' } as const
    for (const place of Object.keys(seen) as (keyof typeof seen)[]) {
      const turning = describeTurning(anAdjuster('rebound', 'clicks', { faces: faces[place], workedFrom: place }))!
      assert.equal(turning.view, 'face')
      assert.equal(turning.nearSide, undefined)
      assert.match(turning.in.sentence, seen[place])
    }
  })

  it('says which way the count goes', () => {
    const counts: [Parameters<typeof anAdjuster>, 'rises' | 'falls'][] = [
      [['rebound', 'clicks'], 'falls'], [['preload', 'turns'], 'rises'], [['preload', 'rings'], 'falls'],
      [['rebound', 'clicks', { end: 'open' }], 'rises'],
      // Steps: 1 soft to 7 hard on one machine (FJ-09 2014), 7 soft to 1 hard on another (XP560D).
      [['preload', 'steps', { higherIs: 'more' }], 'rises'], [['preload', 'steps', { higherIs: 'less' }], 'falls'],
    ]
    for (const [made, expected] of counts) {
      const turning = describeTurning(anAdjuster(...made))!
      assert.equal(turning.in.count, expected)
      assert.notEqual(turning.out.count, expected)
    }
  })

  // A set length that grows with preload (YZF-R1 2023) and one that shrinks with it.
  it('lets a set length grow or shrink with preload, as the adjuster says', () => {
    for (const [higherIs, expected] of [['more', 'rises'], ['less', 'falls']] as const) {
      const collar = anAdjuster('preload', 'mm', { higherIs })
      delete collar.end
      assert.equal(describeTurning(collar)!.in.count, expected)
      assert.equal(describeTurning(collar)!.in.gives, 'more preload')
    }
  })

  it('is not there for what is not turned', () => {
    for (const [control, counts] of [['fork_height', 'mm'], ['fork_height', 'rings'], ['air_pressure', 'psi'], ['spring_rate', 'N/mm'], ['oil_level', 'mm'], ['tyre_pressure', 'bar'], ['ride_height', 'mm']] as const) {
      assert.equal(describeTurning(anAdjuster(control, counts)), undefined, control)
    }
    assert.ok(isTurned(anAdjuster('ride_height', 'turns')))
    assert.ok(isTurned(anAdjuster('ride_height', 'mm', { mmPerTurn: 1.5 })))
  })

  it('speaks of more and less rather than of in and out for what has no end', () => {
    assert.equal(describeTurning(anAdjuster('ride_height', 'turns', { faces: 'up', workedFrom: 'above' }))!.out.sentence,
      'Turn it anticlockwise, as you look down on it from above, for a shorter shock or link.')
  })

  it('gives opposite rotations and opposite effects, for everything that is turned', () => {
    for (const control of controls.filter((each) => each.counted !== undefined)) {
      const turning = describeTurning(anAdjuster(control.name, 'clicks', { faces: 'up' }))!
      assert.notEqual(turning.in.rotation, turning.out.rotation)
      assert.equal(turning.in.gives, control.more)
      assert.equal(turning.out.gives, control.less)
      assert.match(turning.in.sentence, /^[A-Z].*\.$/)
    }
  })
})
