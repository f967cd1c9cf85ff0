import assert from 'node:assert/strict'
import fc from 'fast-check'
import { rateFromWire } from '../../../../src/core/compute/springs/rateFromWire'
import { stagedDeflection, stagedForce } from '../../../../src/core/compute/springs/stagedSprings'
import { near, valueOf } from '../near'

describe('stagedForce and stagedDeflection', () => {
  it('Bhandari, example 10.19: 28.2535 and 29.4307 N/mm, 423.802 N where the inner joins at 15 mm, 24.988839 mm under 1000 N', () => {
    const rate = (wireMm: number, meanDiameterMm: number, activeCoils: number) => valueOf(rateFromWire({ wireMm, meanDiameterMm, activeCoils, shearModulusGPa: 81.37 }))
    const [outer, inner] = [rate(6, 36, 10), rate(5, 30, 8)]
    near(outer, 28.253472, 1e-6)
    near(inner, 29.4307, 1e-6)
    const springs = [{ rateNPerMm: outer, gapMm: 0 }, { rateNPerMm: inner, gapMm: 15 }]
    near(stagedForce(springs, 15), 423.802, 1e-3)
    near(stagedDeflection(springs, 1000), 24.988839, 1e-5)
  })

  it('strength of materials, problem 8.8: of 100 N at 20 mm the outer takes 60 and an inner of 4 N/mm, 10 mm late, the other 40', () => {
    const springs = [{ rateNPerMm: 3, gapMm: 0 }, { rateNPerMm: 4, gapMm: 10 }]
    near(stagedForce(springs, 20), 100, 1e-12)
    near(stagedDeflection(springs, 100), 20, 1e-12)
  })

  it('undo each other', () => {
    const spring = fc.record({ rateNPerMm: fc.double({ min: 0.5, max: 50, noNaN: true }), gapMm: fc.double({ min: 0, max: 60, noNaN: true }) })
    fc.assert(fc.property(fc.array(spring, { minLength: 1, maxLength: 4 }), fc.double({ min: 0.1, max: 100, noNaN: true }), (springs, mm) => {
      const force = stagedForce(springs, mm)
      fc.pre(force > 0)
      near(stagedDeflection(springs, force), mm, 1e-7)
    }))
  })

  it('has none under no force', () => assert.equal(stagedDeflection([{ rateNPerMm: 3, gapMm: 0 }], 0), 0))

  it('has no deflection below zero force or without a spring', () => {
    assert.equal(stagedDeflection([{ rateNPerMm: 3, gapMm: 0 }], -1), undefined)
    assert.equal(stagedDeflection([], 10), undefined)
    assert.equal(stagedDeflection([{ rateNPerMm: 0, gapMm: 0 }], 10), undefined)
  })
})
