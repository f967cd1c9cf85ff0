import assert from 'node:assert/strict'
import fc from 'fast-check'
import { combinedCentre, riderFrontShare } from '../../../../src/core/compute/loads/riderShare'
import { missingOf, near, valueOf } from '../near'

describe('riderFrontShare', () => {
  it('statics: what the front scale shows more, over the rider’s mass', () => {
    near(valueOf(riderFrontShare({ frontWithKg: 136, frontWithoutKg: 98, riderKg: 80 })), 0.475, 1e-12)
  })

  it('tells a share that cannot be instead of clipping it', () => {
    near(valueOf(riderFrontShare({ frontWithKg: 190, frontWithoutKg: 98, riderKg: 80 })), 1.15, 1e-12)
  })

  it('needs a rider', () => assert.equal(missingOf(riderFrontShare({ frontWithKg: 136, frontWithoutKg: 98, riderKg: 0 })).length, 1))
})

describe('combinedCentre', () => {
  it('statics: the mass-weighted mean, in which the axle loads add up', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(100, 250), number(400, 900), number(50, 120), number(300, 1100), (bike, bikeAt, rider, riderAt) => {
      const [L, total] = [1400, bike + rider]
      const rearLoad = (bike * bikeAt + rider * riderAt) / L
      near(combinedCentre([{ massKg: bike, atMm: bikeAt }, { massKg: rider, atMm: riderAt }]), (L * rearLoad) / total, 1e-9)
    }))
  })

  it('is undefined without mass', () => assert.equal(combinedCentre([]), undefined))
})
