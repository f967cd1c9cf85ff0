import assert from 'node:assert/strict'
import { endOfTrace, tracePath } from '../../../src/core/charts/tracePath'
import type { LogTrace } from '../../../src/core/logs/statistics/trace'

const trace = (fromS: number, stepS: number, pieces: readonly (readonly [least: number, most: number])[]): LogTrace => ({ fromS, stepS, leastMm: Float32Array.from(pieces, ([least]) => least), mostMm: Float32Array.from(pieces, ([, most]) => most) })
const pairs = ({ x, y }: ReturnType<typeof tracePath>) => x.map((place, at) => [place, y[at]])
const asIs = (mm: number) => mm

const whole = trace(0, 1, [[1, 9], [2, 8], [3, 7], [4, 6]])

describe('tracePath', () => {
  it('has least and most of each piece one behind the other, a piece of one value once, and none that is unknown', () => {
    assert.deepEqual(pairs(tracePath(trace(0, 1, [[1, 9], [2, 2], [NaN, NaN], [3, 4]]), undefined, asIs)), [[0, 1], [0.5, 9], [1, 2], [3, 3], [3.5, 4]])
  })

  it('takes the points of a stretch that is known more closely in place of the pieces within it', () => {
    const closer = trace(1, 0.5, [[2, 5], [3, 8], [3, 3], [4, 7]])
    assert.equal(endOfTrace(closer), 3)
    assert.deepEqual(pairs(tracePath(whole, closer, asIs)), [[0, 1], [0.5, 9], [1, 2], [1.25, 5], [1.5, 3], [1.75, 8], [2, 3], [2.5, 4], [2.75, 7], [3, 4], [3.5, 6]])
  })

  it('keeps the pieces that reach beyond it, so that no peak is lost at its edges, and goes from left to right', () => {
    const path = tracePath(whole, trace(0.6, 0.5, [[2, 5], [3, 8]]), asIs)
    assert.deepEqual([...path.x].sort((a, b) => a - b), path.x)
    assert.ok(path.y.includes(9) && path.y.includes(8))
  })
})
