import assert from 'node:assert/strict'
import { sagPercent } from '../../../../src/core/compute/sag/sagPercent'
import { get, missingOf, near, valueOf } from '../near'

describe('sagPercent', () => {
  it('CR125R 2007 handbook, p. 94: 100 mm of 300 mm is one third', () => {
    near(valueOf(sagPercent({ sagMm: 100, travelMm: 300 })), 100 / 3, 1e-12)
  })

  it('crfsonly forum: one third of 230 mm, printed as 77 mm', () => {
    near(valueOf(sagPercent({ sagMm: 76.67, travelMm: 230 })), 33.3, 0.1)
  })

  it('perunmoto: 75 mm of 250 mm is 30 %', () => {
    assert.equal(valueOf(sagPercent({ sagMm: 75, travelMm: 250 })), 30)
  })

  it('carries the uncertainty of the sag', () => {
    near(get(sagPercent({ sagMm: { value: 38, u: 0.6 }, travelMm: 120 })).u, 0.5, 1e-12)
  })

  it('is missing without a travel above zero', () => {
    assert.deepEqual(missingOf(sagPercent({ sagMm: 38, travelMm: undefined })), ['travel of this end'])
    assert.deepEqual(missingOf(sagPercent({ sagMm: 38, travelMm: 0 })), ['a travel above zero'])
  })
})
