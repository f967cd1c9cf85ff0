import fc from 'fast-check'
import { parallelRate, seriesRate } from '../../../../src/core/compute/springs/combinedRate'
import { near, nearRelative } from '../near'

describe('parallelRate and seriesRate', () => {
  it('symplyphysics, springs side by side: 50 and 100 N/m are 150 N/m', () => near(parallelRate([50, 100]), 150, 1e-12))
  it('encyclopaedia Series and parallel springs: 50 and 100 N/m are 33.3333 N/m in series', () => near(seriesRate([50, 100]), 100 / 3, 1e-12))
  it('fork of two legs of 9 N/mm: 18 N/mm, and unequal ones add up as well', () => {
    near(parallelRate([9, 9]), 18, 1e-12)
    near(parallelRate([9, 9.5]), 18.5, 1e-12)
  })

  it('in series springs are softer than the softest, side by side stiffer than the stiffest', () => {
    const rates = fc.array(fc.double({ min: 0.1, max: 200, noNaN: true }), { minLength: 2, maxLength: 5 })
    fc.assert(fc.property(rates, (all) => seriesRate(all) < Math.min(...all) && parallelRate(all) > Math.max(...all)))
  })

  it('n equal springs in series and side by side differ by n²', () => nearRelative(parallelRate([7, 7, 7]) / seriesRate([7, 7, 7]), 9, 1e-12))
})
