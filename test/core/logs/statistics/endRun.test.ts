import assert from 'node:assert/strict'
import fc from 'fast-check'
import { usualOptions } from '../../../../src/core/logs/options'
import { EndRun } from '../../../../src/core/logs/statistics/endRun'
import { Stops } from '../../../../src/core/logs/statistics/stops'

const travelMm = 100

/** What an end makes of samples that come in blocks of a size. */
function runOf(samples: readonly number[], block: number) {
  const run = new EndRun({ column: 1, name: 'Fork', factor: 1, shift: 0, travelMm }, usualOptions, { points: 5, order: 2 }, 0.01)
  for (let from = 0; from < samples.length; from += block) {
    const values = Float64Array.from(samples.slice(from, from + block))
    const times = values.map((_, at) => (from + at) / 100)
    run.add({ count: values.length, times, channels: [values], fresh: from === 0, holes: false }, values, { from: 0, to: values.length, whole: true })
  }
  return run.finish()!
}

/** The same, looking at every sample closely. */
function closely(samples: readonly number[]) {
  const stops = [new Stops(usualOptions.bottoming, 1, travelMm), new Stops(usualOptions.topping, -1, 0)]
  const values = Float64Array.from(samples)
  const times = values.map((_, at) => at / 100)
  for (const stop of stops) {
    stop.add(times, values, { from: 0, to: values.length, extreme: stop.sign * Infinity })
    stop.finish()
  }
  const [deepestMm, leastMm] = [Math.max(...samples), Math.min(...samples)]
  return { deepestMm, deepestAtS: samples.indexOf(deepestMm) / 100, leastMm, leastAtS: samples.indexOf(leastMm) / 100, bottoming: stops[0]!.summary(), topping: stops[1]!.summary() }
}

describe('EndRun', () => {
  it('finds the furthest places and every stop, though it looks closely only where something may be', () => {
    // On the limits of both stops and of being off them again, a last bit beside them, and anywhere.
    const limits = [98, 93, 1, 6].flatMap((mm) => [mm, mm * (1 + 2 ** -52), mm * (1 - 2 ** -53)])
    const sample = fc.oneof({ arbitrary: fc.constantFrom(...limits), weight: 1 }, { arbitrary: fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10), weight: 1 }, { arbitrary: fc.integer({ min: 30, max: 60 }), weight: 6 })
    fc.assert(fc.property(fc.array(sample, { minLength: 1, maxLength: 120 }), fc.integer({ min: 1, max: 40 }), (samples, block) => {
      const { position: { deepestMm, deepestAtS, leastMm, leastAtS }, bottoming, topping } = runOf(samples, block)
      assert.deepEqual({ deepestMm, deepestAtS, leastMm, leastAtS, bottoming, topping }, closely(samples))
    }), { numRuns: 500 })
  })
})
