import assert from 'node:assert/strict'
import { readChartKey } from '../../../../webview/charts/model/chartKeys'
import { pointWords } from '../../../../webview/charts/model/pointWords'
import { dashOf, isHollow, markPath } from '../../../../webview/charts/view/manners'
import { line } from './someSeries'

const frame = { key: 'k', title: '', about: '', bands: [], notes: [], table: { columns: [], rows: [] }, x: { label: 'Speed', unit: 'mm/s', digits: 0 }, y: { label: 'Share', unit: '%', digits: 1 } }

describe('a point in words', () => {
  it('is as it was handed over, else its line, its number with uncertainty, and its place', () => {
    const plain = line('left', [[120, 3.25], [140, 4]])
    assert.equal(pointWords({ ...frame, series: [{ ...plain, said: ['so it is', 'and so'] }] }, { series: 0, at: 1 }), 'and so')
    assert.equal(pointWords({ ...frame, series: [{ ...plain, u: [0.5, null] }] }, { series: 0, at: 0 }), 'left: 3.3 % ± 0.5 %, Speed 120 mm/s')
    assert.equal(pointWords({ ...frame, series: [plain] }, { series: 0, at: 1 }), 'left: 4 %, Speed 140 mm/s')
    assert.equal(pointWords({ ...frame, x: { ...frame.x, names: ['a', 'b'] }, series: [line('left', [[1, 2]])] }, { series: 0, at: 0 }), 'left: 2 %, Speed b')
  })
})

describe('the lines of a chart', () => {
  it('differ without colour: no two of the first eight share dash and mark', () => {
    const looks = Array.from({ length: 8 }, (_, at) => JSON.stringify([dashOf(at), markPath(at, 0, 0, 3), isHollow(at)]))
    assert.equal(new Set(looks).size, 8)
  })
})

describe('the keys of a chart', () => {
  const press = (key: string, more = {}) => readChartKey({ key, ctrlKey: false, metaKey: false, altKey: false, ...more })
  it('walk, choose, zoom and leave', () => {
    assert.deepEqual(['ArrowRight', 'ArrowUp', 'End', 'Enter', 'Escape', '+', '0'].map((key) => press(key)?.kind), ['step', 'across', 'end', 'choose', 'leave', 'zoom', 'showAll'])
  })
  it('leave the editor its own: those with Ctrl, Cmd or Alt, and letters', () => {
    for (const key of ['a', 'F8', 'Tab', 'toString', '__proto__']) assert.equal(press(key), undefined)
    for (const more of [{ ctrlKey: true }, { metaKey: true }, { altKey: true }]) assert.equal(press('ArrowRight', more), undefined)
  })
})
