import assert from 'node:assert/strict'
import { GridModel } from '../../../webview/grid/model/gridModel'
import { layPaste } from '../../../webview/grid/model/paste'
import { only } from '../../../webview/grid/model/selection'
import { arrived, smallView } from './small'

describe('pasting', () => {
  const model = new GridModel()
  model.show(arrived(smallView()))
  const place = (row: string, column: string, text: string) => ({ row, column, text })

  it('lays a block from the selected cell on', () => {
    const { cells, skipped } = layPaste(model, only({ row: 1, column: 0 }), [['a', 'b'], ['c', 'd']])
    assert.deepEqual(cells, [place('rebound', 'e0', 'a'), place('rebound', 'e1', 'b'), place('preload', 'e0', 'c'), place('preload', 'e1', 'd')])
    assert.deepEqual(skipped, [])
  })
  it('steps over headings and leaves out computed rows, naming them', () => {
    const { cells, skipped } = layPaste(model, only({ row: 2, column: 0 }), [['a'], ['b'], ['c']])
    assert.deepEqual(cells, [place('preload', 'e0', 'a'), place('laps', 'e0', 'c')])
    assert.deepEqual(skipped, [{ row: 'sag', column: 'e0' }])
  })
  it('counts what lies beyond the last entry and the last row', () => {
    assert.equal(layPaste(model, only({ row: 6, column: 2 }), [['a', 'b'], ['c', 'd']]).beyond, 3)
  })
  it('fills the whole selection with one text', () => {
    const { cells } = layPaste(model, { anchor: { row: 1, column: 0 }, active: { row: 2, column: 1 } }, [['7']])
    assert.deepEqual(cells.map(({ text }) => text), ['7', '7', '7', '7'])
  })
  it('tiles a selection that the block goes into evenly, and no other', () => {
    const selection = { anchor: { row: 1, column: 0 }, active: { row: 1, column: 2 } }
    assert.deepEqual(layPaste(model, selection, [['x']]).cells.length, 3)
    assert.deepEqual(layPaste(model, selection, [['x', 'y']]).cells.map(({ text }) => text), ['x', 'y'])
  })
  it('takes lines of unequal length as they are', () => {
    assert.deepEqual(layPaste(model, only({ row: 1, column: 0 }), [['a'], ['b', 'c']]).cells.map(({ text }) => text), ['a', 'b', 'c'])
  })
})
