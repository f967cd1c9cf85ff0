import assert from 'node:assert/strict'
import fc from 'fast-check'
import { firstPoint, keepPoint, nearestTo, stepAcross, stepAlong, toEnd } from '../../../../webview/charts/model/walkPoints'
import { line } from './someSeries'

const low = line('low', [[0, 10, 'a'], [1, null, 'b'], [2, 12, 'c'], [3, 11, 'd']])
const high = line('high', [[0, 30, 'a'], [2, 28, 'c']])
const middle = line('middle', [[1.9, 20, 'x']])
const series = [low, high, middle]

describe('walking the points of a chart', () => {
  it('goes on from point to point over gaps and stops at either end', () => {
    assert.equal(stepAlong(series, { series: 0, at: 0 }, 1).at, 2)
    assert.equal(stepAlong(series, { series: 0, at: 2 }, -1).at, 0)
    assert.equal(stepAlong(series, { series: 0, at: 3 }, 1).at, 3)
    assert.equal(stepAlong(series, { series: 0, at: 0 }, 9).at, 3)
    assert.deepEqual([toEnd(series, { series: 0, at: 2 }, false).at, toEnd(series, { series: 0, at: 2 }, true).at], [0, 3])
  })

  it('goes to the next line up or down at about the same place, in the order of what is drawn there', () => {
    const up = stepAcross(series, { series: 0, at: 2 }, true)
    assert.deepEqual(up, { series: 2, at: 0 })
    assert.deepEqual(stepAcross(series, up, true), { series: 1, at: 1 })
    assert.deepEqual(stepAcross(series, { series: 1, at: 1 }, true), { series: 1, at: 1 })
    assert.deepEqual(stepAcross(series, { series: 1, at: 1 }, false), { series: 2, at: 0 })
  })

  it('reaches every one of lines that lie on each other, and comes back', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 7 }), (heights) => {
      const stack = heights.map((y, at) => line(String(at), [[0, y]]))
      const seen: number[] = []
      let spot = { series: heights.indexOf(Math.min(...heights)), at: 0 }
      for (;;) {
        seen.push(spot.series)
        const next = stepAcross(stack, spot, true)
        if (next.series === spot.series) break
        assert.deepEqual(stepAcross(stack, next, false), spot)
        spot = next
      }
      assert.equal(new Set(seen).size, heights.length)
    }))
  })

  it('begins on the newest point of the entry looked at, else on the last point there is', () => {
    assert.deepEqual(firstPoint(series, 'c'), { series: 0, at: 2 })
    assert.deepEqual(firstPoint(series, 'x'), { series: 2, at: 0 })
    assert.deepEqual(firstPoint(series, 'b'), { series: 0, at: 3 })
    assert.deepEqual(firstPoint(series), { series: 0, at: 3 })
    assert.equal(firstPoint([line('none', [[0, null]])]), undefined)
    assert.equal(firstPoint([]), undefined)
  })

  it('stays with its entry when points come and go before it', () => {
    const grown = [high, line('low', [[0, 9, 'new'], [1, 10, 'a'], [2, 12, 'c'], [3, 11, 'd']])]
    assert.deepEqual(keepPoint(series, { series: 0, at: 2 }, grown), { series: 1, at: 2 })
  })

  it('stays near its place where the entry has many points or is gone, and is lost with its line', () => {
    const curve = line('low', [[0, 1, 'e'], [5, 2, 'e'], [10, 3, 'e']])
    assert.deepEqual(keepPoint([curve], { series: 0, at: 1 }, [line('low', [[0, 1, 'f'], [4, 2, 'f'], [10, 3, 'f']])]), { series: 0, at: 1 })
    assert.deepEqual(keepPoint(series, { series: 0, at: 3 }, [line('low', [[0, 9, 'a']])]), { series: 0, at: 0 })
    assert.equal(keepPoint(series, { series: 2, at: 0 }, [low]), undefined)
    assert.equal(keepPoint(series, undefined, [low]), undefined)
  })

  it('finds the point under the pointer, and none where there is none near', () => {
    const place = (x: number, y: number) => [x * 100, 300 - y * 10] as const
    assert.deepEqual(nearestTo(series, [205, 182], 20, place), { series: 0, at: 2 })
    assert.equal(nearestTo(series, [100, 100], 20, place), undefined)
  })
})
