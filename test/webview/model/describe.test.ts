import assert from 'node:assert/strict'
import { spokenMore, spokenName, withUnit } from '../../../webview/grid/model/describe'
import { GridModel } from '../../../webview/grid/model/gridModel'
import { arrived, finding, smallView } from './small'

describe('what a screen reader is told of a cell', () => {
  const model = new GridModel()
  const view = smallView(2, [finding(1, 'warning', 'rebound', 'e1')])
  view.cells[1]![1] = { ...view.cells[1]![1]!, text: '3 out', about: 'as in e0', remark: 'counted twice' }
  view.cells[5]![1] = { state: 'empty', text: '' }
  model.show(arrived(view))

  it('is its text, its row and its entry', () => {
    assert.equal(spokenName(model, { row: 1, column: 1 }, undefined), '3 out, Rebound left, e1')
  })
  it('says when it is empty', () => {
    assert.equal(spokenName(model, { row: 5, column: 1 }, undefined), 'empty, laps, e1')
  })
  it('goes on with where it comes from, the remark and the findings', () => {
    assert.equal(spokenMore(model, { row: 1, column: 1 }, undefined), 'carried forward. as in e0. Remark: counted twice. Warning: finding 1')
  })
  it('says that a row is worked out', () => {
    assert.match(spokenMore(model, { row: 4, column: 0 }, undefined), /worked out/)
  })
  it('says why a text was turned back', () => {
    const pending = { row: 'rebound', column: 'e1', text: 'four', gesture: 1, state: 'refused' as const, why: 'not a position' }
    assert.equal(spokenName(model, { row: 1, column: 1 }, pending), 'four, Rebound left, e1')
    assert.match(spokenMore(model, { row: 1, column: 1 }, pending), /Not written: not a position/)
  })
  it('has the unit after bare figures only', () => {
    assert.deepEqual(['5', '2.1', '30 ± 4.6', '40, 14, 5', '3 out', '0.95 kgf/mm', ''].map((text) => withUnit(text, 'mm')), ['5 mm', '2.1 mm', '30 ± 4.6 mm', '40, 14, 5 mm', '3 out', '0.95 kgf/mm', ''])
  })
})
