import assert from 'node:assert/strict'
import { outliving, type Store } from '../../../webview/grid/model/outliving'

/** A browser's storage, which may be full. */
class Shelf implements Store {
  readonly kept = new Map<string, string>()
  full = false
  get length() { return this.kept.size }
  key(index: number) { return [...this.kept.keys()][index] ?? null }
  getItem(key: string) { return this.kept.get(key) ?? null }
  setItem(key: string, value: string) {
    if (this.full) throw new Error('QuotaExceededError')
    this.kept.set(key, value)
  }
  removeItem(key: string) { this.kept.delete(key) }
}

const soon = () => Date.now() + 1000
const later = () => Date.now() + 25 * 60 * 60 * 1000

describe('what a page leaves behind', () => {
  it('is found once, by another page on the same notebook', () => {
    const shelf = new Shelf()
    outliving(shelf, { notebook: 'file:///a', page: '1' }).keep({ unwritten: ['11 out'] })
    outliving(shelf, { notebook: 'file:///ab', page: '2' }).keep('another')
    const next = outliving(shelf, { notebook: 'file:///a', page: '3' })
    assert.deepEqual(next.take(soon()), { unwritten: ['11 out'] })
    assert.equal(next.take(soon()), undefined)
    assert.equal(outliving(shelf, { notebook: 'file:///ab', page: '4' }).take(soon()), 'another')
  })

  it('is the last page’s, and nothing after a day', () => {
    const shelf = new Shelf()
    shelf.kept.set('detent.page:file:///a#1', JSON.stringify({ at: Date.now() - 5000, state: 'before' }))
    outliving(shelf, { notebook: 'file:///a', page: '2' }).keep('after')
    assert.equal(outliving(shelf, { notebook: 'file:///a', page: '3' }).take(soon()), 'after')
    outliving(shelf, { notebook: 'file:///b', page: '1' }).keep('old')
    assert.equal(outliving(shelf, { notebook: 'file:///b', page: '2' }).take(later()), undefined)
    assert.equal(shelf.kept.size, 0)
  })

  it('is no trouble where the store is full, or holds anything else', () => {
    const shelf = new Shelf()
    shelf.kept.set('detent.page:file:///a#1', '{')
    shelf.kept.set('other', 'x')
    assert.equal(outliving(shelf, { notebook: 'file:///a', page: '2' }).take(soon()), undefined)
    assert.equal(shelf.kept.get('other'), 'x')
    shelf.full = true
    outliving(shelf, { notebook: 'file:///a', page: '2' }).keep('x')
  })
})
