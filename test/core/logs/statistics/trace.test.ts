import assert from 'node:assert/strict'
import fc from 'fast-check'
import { Trace } from '../../../../src/core/logs/statistics/trace'

const traceOf = (values: readonly number[], pieces: number, cuts: readonly number[] = []) => {
  const trace = new Trace(pieces, 0.01)
  const times = Float64Array.from(values, (_, at) => 5 + at * 0.01)
  const edges = [0, ...cuts.map((cut) => cut % (values.length + 1)).sort((a, b) => a - b), values.length]
  edges.slice(1).forEach((to, at) => trace.add(times, Float64Array.from(values), edges[at]!, to))
  return trace.summary()
}

describe('Trace', () => {
  it('keeps every sample of a short log', () => {
    const { fromS, stepS, leastMm, mostMm } = traceOf([1, 5, 3], 8)!
    assert.deepEqual([fromS, stepS, [...leastMm], [...mostMm]], [5, 0.01, [1, 5, 3], [1, 5, 3]])
  })

  it('has least and most of each piece, as taken one by one, however the samples came', () => {
    const values = fc.array(fc.integer({ min: -50, max: 300 }), { minLength: 1, maxLength: 400 })
    fc.assert(fc.property(values, fc.constantFrom(8, 16, 64), fc.array(fc.nat(), { maxLength: 4 }), (all, pieces, cuts) => {
      const { stepS, leastMm, mostMm } = traceOf(all, pieces, cuts)!
      const per = Math.round(stepS / 0.01)
      const groups = Array.from({ length: Math.ceil(all.length / per) }, (_, at) => all.slice(at * per, (at + 1) * per))
      assert.deepEqual([...leastMm], groups.map((group) => Math.min(...group)))
      assert.deepEqual([...mostMm], groups.map((group) => Math.max(...group)))
      assert.ok(leastMm.length <= pieces && (all.length <= pieces ? per === 1 : leastMm.length > pieces / 2 - 1))
    }))
  })

  it('has nothing where nothing was logged, and minds no time that runs backwards', () => {
    assert.equal(new Trace(8, 0.01).summary(), undefined)
    const trace = new Trace(8, 0.01)
    trace.add(Float64Array.of(1, 1.03), Float64Array.of(10, 20), 0, 2)
    trace.add(Float64Array.of(0.5, 1.01), Float64Array.of(99, 30), 0, 2)
    const { leastMm, mostMm } = trace.summary()!
    assert.deepEqual([...mostMm].map(String), ['10', '30', 'NaN', '20'])
    assert.deepEqual([...leastMm].map(String), ['10', '30', 'NaN', '20'])
  })
})
