import assert from 'node:assert/strict'
import { assumedRiderShare, sharedRiderLoad, weighedRiderLoad } from '../../../../src/core/compute/loads/riderLoad'
import { get, missingOf, near, valueOf } from '../near'

describe('weighedRiderLoad', () => {
  it('statics: what the scale under the axle shows more, times g', () => {
    near(valueOf(weighedRiderLoad({ withRiderKg: 140, withoutRiderKg: 100 })), 40 * 9.80665, 1e-12)
  })

  it('carries both weighings', () => {
    near(get(weighedRiderLoad({ withRiderKg: { value: 140, u: 0.3 }, withoutRiderKg: { value: 100, u: 0.4 } })).u, 0.5 * 9.80665, 1e-9)
  })

  it('names what is missing', () => {
    assert.deepEqual(missingOf(weighedRiderLoad({ withRiderKg: 140, withoutRiderKg: undefined })), ['this axle’s weight without the rider'])
  })
})

describe('sharedRiderLoad', () => {
  it('takes the share that is given', () => {
    const result = get(sharedRiderLoad({ end: 'front', riderKg: 84, share: 0.45 }))
    near(result.value, 84 * 0.45 * 9.80665, 1e-9)
    assert.deepEqual(result.working.assumptions, [])
  })

  it('from memory, no source: else 40 ± 10 % in front and 60 ± 10 % at the rear, said and in the uncertainty', () => {
    const [front, rear] = [get(sharedRiderLoad({ end: 'front', riderKg: 84 })), get(sharedRiderLoad({ end: 'rear', riderKg: 84 }))]
    near(front.value + rear.value, 84 * 9.80665, 1e-9)
    for (const end of [front, rear]) near(end.u, (84 * 9.80665 * 0.1) / Math.sqrt(3), 1e-9)
    assert.match(front.working.assumptions.join(), /40 ± 10 %.*assumption/)
    near(assumedRiderShare.front.value + assumedRiderShare.rear.value, 1, 1e-12)
  })

  it('takes a share of nothing and of all', () => {
    assert.equal(valueOf(sharedRiderLoad({ end: 'rear', riderKg: 84, share: 0 })), 0)
    near(valueOf(sharedRiderLoad({ end: 'rear', riderKg: 84, share: 1 })), 84 * 9.80665, 1e-9)
  })

  it('has none for a share that is none, or without a rider', () => {
    assert.deepEqual(missingOf(sharedRiderLoad({ end: 'rear', riderKg: 84, share: 1.2 })), ['a share between 0 and 1'])
    assert.deepEqual(missingOf(sharedRiderLoad({ end: 'rear', riderKg: undefined })), ['rider’s kitted mass'])
  })
})
