import assert from 'node:assert/strict'
import { EvenSamples } from '../../../../src/core/logs/series/evenSamples'
import { Averaged } from '../../../../src/core/logs/series/averaged'
import { findSpacing } from '../../../../src/core/logs/series/spacing'
import { Timeline } from '../../../../src/core/logs/series/timeline'
import { isLogProblem, told } from '../../../../src/core/logs/problem'
import { near } from '../../compute/near'

const spacing = { s: 0.01, toleranceS: 0.0002 }

function even(rows: readonly (readonly number[])[], by = spacing, block = rows.length) {
  const out: { stretches: number[][][] } = { stretches: [] }
  const samples = new EvenSamples(by, ['straight', 'hold'], ({ count, times, channels, fresh }) => {
    if (fresh) out.stretches.push([])
    for (let at = 0; at < count; at++) out.stretches.at(-1)!.push([times[at]!, ...channels.map((channel) => channel[at]!)])
  })
  for (let at = 0; at < rows.length; at += block) {
    const some = rows.slice(at, at + block)
    samples.push(Float64Array.from(some, ([t]) => t!), [Float64Array.from(some, ([, x]) => x!), Float64Array.from(some, ([, , lap]) => lap ?? 1)], some.length, false)
  }
  samples.finish()
  return { ...out, samples }
}

const at = (time: number) => [time, time * 100] as const

describe('EvenSamples', () => {
  it('passes on what is even, whatever the blocks, within the tolerance', () => {
    const rows = Array.from({ length: 50 }, (_, row) => at(row * 0.01 + (row % 2) * 0.0001))
    for (const block of [1, 7, 50]) {
      const { stretches, samples } = even(rows, spacing, block)
      assert.deepEqual([stretches.length, stretches[0]!.length, samples.interpolated], [1, 50, 0])
      assert.deepEqual(stretches[0]!.map(([t, x]) => [t, x]), rows)
    }
  })

  it('draws a straight line where rows are missing or not at their time, holds what is held, and counts', () => {
    const { stretches, samples } = even([[0, 0, 1], [0.01, 1, 1], [0.04, 4, 2], [0.05, 5, 2]])
    assert.deepEqual(stretches[0]!.map((row) => row.map((value) => Number(value.toFixed(9)))), [[0, 0, 1], [0.01, 1, 1], [0.02, 2, 1], [0.03, 3, 1], [0.04, 4, 2], [0.05, 5, 2]])
    assert.equal(samples.interpolated, 2)
    const jittery = even([at(0), at(0.013), at(0.018), at(0.031), at(0.04)])
    for (const [t, x] of jittery.stretches[0]!) near(x, t! * 100, 1e-9)
    assert.equal(jittery.samples.interpolated, 3)
  })

  it('begins anew behind a gap and where time runs backwards, and draws nothing across', () => {
    const { stretches, samples } = even([at(0), at(0.01), at(0.5), at(0.51), at(0.2), at(0.21)])
    assert.deepEqual(stretches.map((stretch) => stretch.map(([t]) => t)), [[0, 0.01], [0.5, 0.51], [0.2, 0.21]])
    assert.deepEqual([samples.gaps, samples.backwards, samples.interpolated], [1, 1, 0])
    near(samples.gapS, 0.49, 1e-12)
  })

  it('leaves out a row with the time of the one before, and counts it', () => {
    const { stretches, samples } = even([at(0), at(0.01), [0.01, 99], at(0.02)])
    assert.deepEqual(stretches[0]!.map(([, x]) => x), [0, 1, 2])
    assert.equal(samples.repeated, 1)
  })
})

describe('findSpacing', () => {
  const lines = Array.from({ length: 500 }, (_, row) => row + 2)
  const spacingOf = (times: number[]) => {
    const found = findSpacing(times, lines)
    assert.ok(!isLogProblem(found))
    return found
  }

  it('finds the rate through times that are rounded, gaps and doubles', () => {
    near(spacingOf(Array.from({ length: 300 }, (_, row) => Math.round((row * 1000) / 300) / 1000)).s, 1 / 300, 1e-5)
    near(spacingOf([0, 0.01, 0.02, 0.02, 0.03, 5, 5.01, 5.02]).s, 0.01, 1e-9)
  })

  it('takes rounding of the time column for even', () => {
    const { toleranceS } = spacingOf(Array.from({ length: 300 }, (_, row) => Math.round((row * 1000) / 300) / 1000))
    assert.ok(toleranceS > 0.001 && toleranceS < 0.0012)
    near(spacingOf(Array.from({ length: 100 }, (_, row) => row * 0.005 + 0.0000001)).toleranceS, 0.0001, 1e-5)
  })

  it('says where a time column cannot be used', () => {
    const problem = (times: number[]) => told(findSpacing(times, lines) as { message: string })
    assert.match(problem([1, 1, 1]), /time does not move on/)
    assert.match(problem([0, 0, 0, 0, 1, 1, 1, 1, 2]), /^line 3: time stands still/)
    assert.match(problem([5]), /does not move/)
  })
})

describe('Timeline', () => {
  it('counts from the first row, in s, and sees time run backwards', () => {
    const timeline = new Timeline({ perS: 0.001, clock: false })
    const times = Float64Array.of(5000, 5010, 5005, 5020)
    timeline.convert(times, 4)
    assert.deepEqual([[...times], timeline.backwardsRow], [[0, 0.01, 0.005, 0.02], 2])
  })

  it('goes on past midnight, once each night', () => {
    const timeline = new Timeline({ perS: 1, clock: true })
    const times = Float64Array.of(86399, 86399.5, 0, 0.5)
    timeline.convert(times, 4)
    const more = Float64Array.of(1, 1.5)
    timeline.convert(more, 2)
    assert.deepEqual([[...times], [...more], timeline.midnights, timeline.backwardsRow], [[0, 0.5, 1, 1.5], [2, 2.5], 1, -1])
  })
})

describe('Averaged', () => {
  it('averages groups across blocks, and leaves out what a gap cuts off', () => {
    const found: number[][] = []
    const averaged = new Averaged(3, 1, ({ count, times, channels, fresh }) => {
      for (let row = 0; row < count; row++) found.push([times[row]!, channels[0]![row]!, Number(fresh && row === 0)])
    })
    const push = (from: number, values: number[], fresh: boolean) => averaged.push({ count: values.length, times: Float64Array.from(values, (_, row) => from + row), channels: [Float64Array.from(values)], fresh, holes: false })
    push(0, [1, 2], true)
    push(2, [6, 10, 20], false)
    push(100, [3, 3, 3], true)
    averaged.finish()
    assert.deepEqual(found, [[1, 3, 1], [101, 3, 1]])
  })
})
