import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { ChartSeries, ChartView } from '../../../../src/core/charts/view'
import { rangeOfX, rangeOfY, shifted, zoomed } from '../../../../webview/charts/model/ranges'
import { line } from './someSeries'

const chart = (series: ChartSeries[], more: Partial<ChartView> = {}): ChartView => ({
  key: 'k', title: '', about: '', x: { label: '', unit: '', digits: 0 }, y: { label: '', unit: '', digits: 0 }, bands: [], notes: [], table: { columns: [], rows: [] }, series, ...more,
})

describe('the ranges of a chart', () => {
  it('give named places half a place on either side', () => {
    assert.deepEqual(rangeOfX(chart([line('a', [[0, 1], [2, 1]])], { x: { label: '', unit: '', digits: 0, names: ['p', 'q', 'r'] } })), [-0.5, 2.5])
  })
  it('reach from the first to the last x of all lines, and half a bar further', () => {
    assert.deepEqual(rangeOfX(chart([line('a', [[5, 1], [2, 1]]), line('b', [[9, 1]])])), [2, 9])
    assert.deepEqual(rangeOfX(chart([line('a', [[0, 1], [10, 1], [20, 1]], 'bars')])), [-5, 25])
  })
  it('hold points with their whiskers, windows, and zero under bars', () => {
    const [low, high] = rangeOfY(chart([{ ...line('a', [[0, 10], [1, 20]]), u: [3, null] }], { bands: [{ key: 'w', label: '', from: 12, to: 40 }] }))
    assert.ok(low < 7 && high > 40)
    assert.equal(rangeOfY(chart([line('a', [[0, 10], [1, 20]], 'bars')]))[0], 0)
  })
  it('have a length even where all points are alike, or there is none', () => {
    for (const points of [[[3, 7]], [[0, 0], [0, 0]], [[1, null]], []] as [number, number | null][][]) {
      for (const [from, to] of [rangeOfX(chart([line('a', points)])), rangeOfY(chart([line('a', points)]))]) assert.ok(to > from, JSON.stringify(points))
    }
  })
  it('show no less than the axis asks for, around what there is', () => {
    assert.deepEqual(rangeOfY(chart([line('a', [[0, 10], [1, 11]])], { y: { label: '', unit: '', digits: 0, span: 5 } })), [8, 13])
    const [low, high] = rangeOfY(chart([line('a', [[0, 10], [1, 30]])], { y: { label: '', unit: '', digits: 0, span: 5 } }))
    assert.ok(low > 7 && low < 10 && high > 30 && high < 33)
  })
  it('stay within all there is and keep their length, however they are zoomed and moved', () => {
    const number = fc.double({ min: -1e4, max: 1e4, noNaN: true })
    fc.assert(fc.property(fc.array(fc.record({ by: fc.double({ min: 0.1, max: 10, noNaN: true }), at: number }), { maxLength: 8 }), (moves) => {
      const all = [-100, 300] as const
      let range: readonly [number, number] = all
      for (const { by, at } of moves) {
        range = zoomed(range, by, Math.min(range[1], Math.max(range[0], at)), all)
        const length = range[1] - range[0]
        range = shifted(range, Math.min(300, Math.max(-100, at)), all)
        assert.ok(range[0] >= -100 - 1e-6 && range[1] <= 300 + 1e-6 && Math.abs(range[1] - range[0] - length) < 1e-6, String(range))
        assert.ok(Math.min(300, Math.max(-100, at)) >= range[0] - 1e-6 && Math.min(300, Math.max(-100, at)) <= range[1] + 1e-6)
      }
    }))
  })
  it('zoom around a place, which stays where it is', () => {
    assert.deepEqual(zoomed([0, 100], 0.5, 50, [0, 100]), [25, 75])
    assert.deepEqual(zoomed([0, 100], 0.5, 100, [0, 100]), [50, 100])
    assert.deepEqual(zoomed([25, 75], 4, 50, [0, 100]), [0, 100])
  })
})
