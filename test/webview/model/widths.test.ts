import assert from 'node:assert/strict'
import { receive } from '../../../webview/grid/model/receive'
import { readSavedState } from '../../../webview/grid/model/savedState'
import { setWidth } from '../../../webview/grid/model/widths'
import { openSession, smallView } from './small'

describe('the width of an entry', () => {
  it('is drawn within bounds, remembered by its name, and forgotten when it is the usual one', () => {
    const { session } = openSession()
    setWidth(session, 0, 200.4)
    setWidth(session, 1, 9999)
    setWidth(session, 2, 1)
    setWidth(session, 9, 200)
    assert.deepEqual(session.toSave().widths, { e0: 200, e1: 640, e2: 64 })
    assert.deepEqual([...openSession(smallView(), readSavedState(session.toSave())).session.widths], [['e0', 200], ['e1', 640], ['e2', 64]])
    setWidth(session, 0, 136)
    assert.equal(session.widths.has('e0'), false)
  })
  it('is stepped by keys for all selected entries', () => {
    const opened = openSession()
    opened.session.selectRange({ active: { row: 1, column: 1 }, anchor: { row: 1, column: 2 } })
    receive(opened.session, { type: 'commandGiven', command: 'widenColumn' })
    assert.deepEqual(opened.session.toSave().widths, { e1: 152, e2: 152 })
    assert.deepEqual(opened.said.at(-1), ['152 pixels wide.', 'polite'])
    receive(opened.session, { type: 'commandGiven', command: 'narrowColumn' })
    assert.deepEqual(opened.session.toSave().widths, {})
  })
  it('is left out where what was saved is odd', () => {
    assert.deepEqual(readSavedState({ widths: { a: 100, b: '200', c: -3, d: NaN } }).widths, { a: 100 })
  })
})
