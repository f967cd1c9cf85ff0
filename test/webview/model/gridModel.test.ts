import assert from 'node:assert/strict'
import { GridModel } from '../../../webview/grid/model/gridModel'
import { arrived, finding, smallView } from './small'

describe('the model of the grid', () => {
  const frame = { title: 'Small', state: 'ready' as const }
  const shown = (entries = 3) => {
    const model = new GridModel()
    model.show(arrived(smallView(entries, [finding(4, 'error', 'rebound', 'e1')])))
    return model
  }

  it('finds places by key and gives keys to spots', () => {
    assert.deepEqual(shown().spotOf({ row: 'laps', column: 'e2' }), { row: 5, column: 2 })
    assert.deepEqual(shown().placeOf({ row: 5, column: 2 }), { row: 'laps', column: 'e2' })
    assert.deepEqual(shown().spotOf({ column: 'e2' }), { row: -1, column: 2 })
    assert.deepEqual(shown().spotOf({ row: 'laps' }), { row: 5, column: -1 })
    assert.equal(shown().spotOf({ row: 'laps', column: 'nowhere' }), undefined)
  })
  it('takes a patch and tells what it touched', () => {
    const model = shown()
    const touched = model.apply({ ...frame, columns: [], cells: [[1, 1, { state: 'set', text: '4 out' }]] })
    assert.deepEqual(touched, { cells: [{ row: 1, column: 1 }], columns: [], findings: false, lanes: false, frame: false })
    assert.equal(model.cell({ row: 1, column: 1 })?.text, '4 out')
  })
  it('follows an entry that was renamed', () => {
    const model = shown()
    model.apply({ ...frame, columns: [[1, { ...model.column(1)!, key: 'new', id: 'new' }]], cells: [] })
    assert.deepEqual(model.spotOf({ row: 'laps', column: 'new' }), { row: 5, column: 1 })
    assert.equal(model.spotOf({ row: 'laps', column: 'e1' }), undefined)
  })
  it('follows two entries that changed names with each other', () => {
    const model = shown()
    model.apply({ ...frame, columns: [[0, { ...model.column(0)!, key: 'e1' }], [1, { ...model.column(1)!, key: 'e0' }]], cells: [] })
    assert.equal(model.spotOf({ column: 'e1' })?.column, 0)
    assert.equal(model.spotOf({ column: 'e0' })?.column, 1)
  })
  it('refuses a patch that does not fit what is shown', () => {
    assert.equal(shown().apply({ ...frame, columns: [], cells: [[1, 9, { state: 'set', text: '' }]] }), undefined)
    assert.equal(shown().apply({ ...frame, columns: [], cells: [[0, 0, { state: 'set', text: '' }]] }), undefined)
  })
  it('drops trouble and findings that a patch no longer has', () => {
    const model = shown()
    model.apply({ title: 'Small', state: 'broken', trouble: { message: 'm', line: 3 }, columns: [], cells: [] })
    assert.equal(model.writable, false)
    const touched = model.apply({ ...frame, columns: [], cells: [], findings: { put: [], gone: [4] } })
    assert.deepEqual([model.view.trouble, model.writable, touched?.frame, model.findingsOf([4])], [undefined, true, true, []])
  })
})
