import assert from 'node:assert/strict'
import fc from 'fast-check'
import { Speeds, type SpeedOptions } from '../../../../src/core/logs/statistics/speeds'
import { near } from '../../compute/near'

// scipy.signal.savgol_filter(x, 5, 2, deriv=1, delta=0.005) of the reference record.
const velocities = [-50.2857143, 166.857143, 384, 618, 856, 1014, 1014, 814, 448, 2, -426, -748, -906, -890, -748, -548, -348]
const usual: SpeedOptions = { limits: { compressionMmPerS: 150, reboundMmPerS: 150 }, binMmPerS: 300, toMmPerS: 1200 }

function speedsOf(values: readonly number[], options: Partial<SpeedOptions> = {}) {
  const speeds = new Speeds()
  speeds.add(Float64Array.from(values), values.length)
  return speeds.summary({ ...usual, ...options })!
}

describe('Speeds', () => {
  it('numpy.histogram of the reference velocities: counts 1, 3, 3, 1, 2, 2, 3, 2', () => {
    const { histogram } = speedsOf(velocities)
    assert.equal(histogram.from, -1200)
    assert.equal(histogram.sharesPct.length, 8)
    for (const [at, share] of [5.882353, 17.647059, 17.647059, 5.882353, 11.764706, 11.764706, 17.647059, 11.764706].entries()) near(histogram.sharesPct[at], share, 1e-6)
  })

  it('the four shares of the reference velocities at 150 mm/s: 7, 1, 1 and 8 of 17', () => {
    const { sharesPct } = speedsOf(velocities)
    const of = (count: number) => (100 * count) / 17
    near(sharesPct.highRebound, of(7), 1e-9)
    near(sharesPct.lowRebound, of(1), 1e-9)
    near(sharesPct.still, 0, 1e-9)
    near(sharesPct.lowCompression, of(1), 1e-9)
    near(sharesPct.highCompression, of(8), 1e-9)
  })

  // Segers, Tuning shock absorbers using the shock speed histogram: equal bins, the same reach both ways, shares of the whole.
  it('has bins of equal width, symmetric about zero, that add up to 100 with their tails', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: -150000, max: 150000 }), { minLength: 1, maxLength: 80 }), fc.constantFrom(25, 50, 300), (tenths, bin) => {
      const { histogram, sharesPct } = speedsOf(tenths.map((tenth) => tenth / 10), { binMmPerS: bin })
      near(histogram.from, -(histogram.from + bin * histogram.sharesPct.length), 1e-9)
      near(histogram.sharesPct.reduce((sum, share) => sum + share, histogram.belowPct + histogram.abovePct), 100, 1e-9)
      near(Object.values(sharesPct).reduce((sum, share) => sum + share, 0), 100, 1e-9)
    }), { numRuns: 50 })
  })

  // The same: where no bin is about zero, its two neighbours together are the share of ±12.5 mm/s (30.16 + 18.02 = 48.18 % there).
  it('gives the share about zero as the sum of the two bins beside it', () => {
    const { histogram } = speedsOf([-12, -5, 0, 3, 11, 12, 13, -13, 200, -200], { binMmPerS: 12.5 })
    const middle = histogram.sharesPct.length / 2
    near(histogram.sharesPct[middle - 1]! + histogram.sharesPct[middle]!, 60, 1e-9)
  })

  // Arcsine law: |v| is below V/2 for a third of the time, below 25 of 376.99 mm/s for (2/π)·asin(25/376.99).
  it('the arcsine law for a sine, sampled 10,000 times', () => {
    const top = 376.99
    const sine = Array.from({ length: 10_000 }, (_, at) => top * Math.sin((2 * Math.PI * (at + 0.5)) / 10_000))
    const low = ({ sharesPct }: ReturnType<typeof speedsOf>) => (sharesPct.lowCompression + sharesPct.lowRebound + sharesPct.still) / 100
    near(low(speedsOf(sine, { limits: { compressionMmPerS: top / 2, reboundMmPerS: top / 2 } })), 1 / 3, 0.002)
    near(low(speedsOf(sine, { limits: { compressionMmPerS: 25, reboundMmPerS: 25 } })), 0.0422482, 0.002)
  })

  // kinghamtech.com: low to 2 and mid to 6 in/s on the road; inch by definition 25.4 mm.
  it('takes other limits for either direction, such as 2 and 6 in/s', () => {
    const { sharesPct } = speedsOf([50.7, 50.8, -152.3, -152.5], { limits: { compressionMmPerS: 2 * 25.4, reboundMmPerS: 6 * 25.4 } })
    assert.deepEqual(sharesPct, { highRebound: 25, lowRebound: 25, still: 0, lowCompression: 25, highCompression: 25 })
  })

  it('tells extremes, tails and stillness', () => {
    const found = speedsOf([0, 0, 2500, -1900, 12_000])
    assert.deepEqual([found.fastestCompressionMmPerS, found.fastestReboundMmPerS, found.sharesPct.still], [10_000, 1900, 40])
    near(found.histogram.abovePct, 40, 1e-9)
    near(found.histogram.belowPct, 20, 1e-9)
    assert.equal(new Speeds().summary(usual), undefined)
  })
})
