import assert from 'node:assert/strict'
import fc from 'fast-check'
import { barOf } from '../../../webview/compare/model/bar'

const cell = (at?: number) => ({ text: 'x', state: 'set' as const, ...(at === undefined ? {} : { at }) })

describe('the bar of a change', () => {
  const change = { words: '', by: -2, direction: 'less' as const }
  it('goes from where it stood to where it stands', () => {
    assert.deepEqual(barOf({ left: cell(0.5), right: cell(0.25), change: { ...change, size: 0.25, sizeIs: 'range' } }), { kind: 'range', from: 0.5, to: 0.25 })
  })
  it('begins in the middle where one end of it is not known', () => {
    assert.deepEqual(barOf({ left: cell(0.5), right: cell(), change: { ...change, size: 0.4, sizeIs: 'range' } }), { kind: 'step', size: 0.4, more: false, of: 'range' })
  })
  it('is none without a change, and none for what is no position', () => {
    assert.equal(barOf({ left: cell(0.5), right: cell(0.5) }), undefined)
    assert.equal(barOf({ left: cell(), right: cell(), change }), undefined)
  })
  it('stays within its line, however far beyond the range something is recorded', () => {
    fc.assert(fc.property(fc.double({ noNaN: true, min: -9, max: 9 }), fc.double({ noNaN: true, min: -9, max: 9 }), (from, to) => {
      const bar = barOf({ left: cell(from), right: cell(to), change: { ...change, size: 1 } })
      assert.ok(bar?.kind === 'range' && bar.from >= 0 && bar.from <= 1 && bar.to >= 0 && bar.to <= 1)
    }))
  })
})
