import assert from 'node:assert/strict'
import fc from 'fast-check'
import { freshState, readSavedState } from '../../../webview/grid/model/savedState'

describe('what the grid remembers', () => {
  it('is read as it was saved', () => {
    const state = {
      active: { row: 'a', column: 'b' }, anchor: { column: 'b' }, scroll: { row: 'a', rowPx: 3, column: 'b', columnPx: 7 }, findingsOpen: true, cautionsOpen: false,
      open: { row: 'a', column: 'b', text: '3', how: 'replace' as const }, unwritten: [{ row: 'a', column: 'c', text: '4' }],
    }
    assert.deepEqual(readSavedState(JSON.parse(JSON.stringify(state))), state)
  })
  it('is fresh when nothing was saved', () => {
    for (const nothing of [undefined, null, 3, 'x', []]) assert.deepEqual(readSavedState(nothing), freshState)
  })
  it('is never spoilt by what an older version left', () => {
    fc.assert(fc.property(fc.anything(), (saved) => {
      const state = readSavedState(saved)
      assert.equal(typeof state.findingsOpen, 'boolean')
      assert.ok(Array.isArray(state.unwritten))
    }))
  })
})
