import assert from 'node:assert/strict'
import fc from 'fast-check'
import { mean, quantileSeq } from 'mathjs'
import { CountedValues } from '../../../../src/core/logs/statistics/countedValues'
import { histogram } from '../../../../src/core/logs/statistics/histogram'
import { countsOf, meanOf, percentiles } from '../../../../src/core/logs/statistics/percentiles'
import { near } from '../../compute/near'

const x = [2.0, 2.5, 3.7, 6.1, 9.8, 14.9, 20.7, 26.0, 29.6, 30.8, 29.5, 26.1, 21.3, 16.2, 11.8, 8.6, 6.4]

function counted(values: readonly number[], expected: { from: number; to: number; unit?: number } = { from: -100, to: 200 }): CountedValues {
  const counts = new CountedValues(expected)
  counts.add(Float64Array.from(values), 0, values.length)
  return counts
}

const percentilesOf = (values: readonly number[], wanted: readonly number[]) => percentiles(counted(values).counts(), wanted)

describe('percentiles', () => {
  // numpy.org, percentile: 3.5; cnblogs.com/keye/p/16965985.html: 2.6, 6.4.
  it('numpy’s worked examples of the method linear', () => {
    assert.deepEqual(percentilesOf([10, 7, 4, 3, 2, 1], [50]), [3.5])
    const [p50, p40, p90] = percentilesOf([1, 2, 3, 4, 8], [50, 40, 90])
    near(p50, 3, 1e-12)
    near(p40, 2.6, 1e-12)
    near(p90, 6.4, 1e-12)
  })

  it('numpy 2.4.6 on the reference record: 5 to 99 %, mean', () => {
    const found = percentilesOf(x, [5, 10, 25, 50, 75, 90, 95, 99])
    for (const [at, value] of [2.4, 3.22, 6.4, 14.9, 26.0, 29.54, 29.84, 30.608].entries()) near(found[at], value, 1e-9)
    near(meanOf(counted(x).counts()), 15.647058824, 1e-9)
  })

  it('mathjs: any readings of a decimal sensor, exactly', () => {
    const readings = fc.tuple(fc.constantFrom(1, 10, 100, 1000), fc.array(fc.integer({ min: -90, max: 190 * 1 }), { minLength: 1, maxLength: 60 }))
    fc.assert(fc.property(readings, fc.integer({ min: 0, max: 100 }), ([scale, counts], percent) => {
      const values = counts.map((count) => count / scale)
      const kept = counted(values)
      assert.ok(kept.exact)
      near(percentiles(kept.counts(), [percent])[0], Number(quantileSeq(values, percent / 100)), 1e-9)
      near(meanOf(kept.counts()), mean(values), 1e-9)
    }), { numRuns: 200 })
  })

  it('are not a number where there are no values', () => {
    assert.deepEqual(percentilesOf([], [50]), [NaN])
  })
})

describe('CountedValues', () => {
  it('finds the grid of a sensor with any scale', () => {
    const counts = Array.from({ length: 500 }, (_, at) => (at * 37) % 1024)
    const kept = counted(counts.map((count) => count * (150 / 1024) - 3.125), { from: -150, to: 300, unit: 150 / 1024 })
    assert.ok(kept.exact || kept.step < 0.002)
    const onGrid = counted(counts.map((count) => count * (150 / 1024)), { from: -150, to: 300, unit: 150 / 1024 })
    assert.deepEqual([onGrid.exact, onGrid.step], [true, 150 / 1024])
  })

  it('says its resolution where values lie on no grid, and is off by no more than half of it', () => {
    const values = Array.from({ length: 400 }, (_, at) => 60 + 50 * Math.sin(at))
    const kept = counted(values)
    assert.ok(!kept.exact && kept.step <= 0.001)
    for (const percent of [1, 50, 99]) near(percentiles(kept.counts(), [percent])[0], Number(quantileSeq(values, percent / 100)), kept.step / 2 + 1e-12)
  })

  it('keeps its grid through glitches, and counts those beyond all travel at the ends', () => {
    const kept = counted([...x, 65535, -1e9])
    assert.deepEqual([kept.exact, kept.step, kept.outside], [true, 0.1, 2])
    const { values, times } = kept.counts()
    assert.deepEqual([values[0], times[0], values.at(-1), times.at(-1)], [-1e9, 1, 65535, 1])
  })

  it('passes over what is no number', () => {
    assert.deepEqual(counted([1, NaN, 2]).counts(), countsOf([[1, 1], [2, 1]]))
  })
})

describe('histogram', () => {
  it('has edges at whole multiples of the bin, and shares that add up to 100', () => {
    const { from, sharesPct } = histogram(counted(x).counts(), 5)
    assert.equal(from, 0)
    sharesPct.forEach((share, at) => near(share, (100 * x.filter((value) => value >= at * 5 && value < at * 5 + 5).length) / 17, 1e-9))
    near(sharesPct.reduce((sum, share) => sum + share, 0), 100, 1e-9)
  })

  it('puts a value on an edge into the bin above it, though its last bit falls short', () => {
    assert.deepEqual(histogram(countsOf([[0.1 + 0.2, 1], [0.3, 1]]), 0.1), { bin: 0.1, from: 0.30000000000000004, sharesPct: [100] })
  })

  it('is widened rather than made of millions of bins', () => {
    assert.ok(histogram(countsOf([[0, 1], [1e9, 1]]), 5).sharesPct.length <= 2001)
    assert.deepEqual(histogram(countsOf([]), 5).sharesPct, [])
  })
})
