import assert from 'node:assert/strict'
import { nameOfPage, Outliving, type Store } from '../../../webview/grid/model/outliving'

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

const hour = 60 * 60 * 1000
const typed = (text: string) => ({ unwritten: [{ row: 'laps', column: 'e0', text }] })
const nothing = { unwritten: [] }

function shelfWith() {
  const shelf = new Shelf()
  const page = (name: string, notebook = 'file:///a', session = 's') => new Outliving(shelf, { notebook, session, page: name })
  const living = (...names: string[]) => names.map((name) => nameOfPage({ notebook: 'file:///a', session: 's', page: name }))
  return { shelf, page, living }
}

describe('what a page leaves behind', () => {
  it('is found once, by another page on the same notebook', () => {
    const { page } = shelfWith()
    page('1').keep(typed('11 out'), 1000)
    page('2', 'file:///ab').keep(typed('another'), 1000)
    assert.deepEqual(page('3').take({ now: 2000, anew: true, living: [] }), typed('11 out'))
    assert.equal(page('3').take({ now: 2000, anew: true, living: [] }), undefined)
    assert.deepEqual(page('4', 'file:///ab').take({ now: 2000, anew: true, living: [] }), typed('another'))
  })

  it('is not offered again by the page that it was taken from, unless more was typed there since', () => {
    const { page } = shelfWith()
    page('1').keep(typed('11'), 1000)
    page('2').take({ now: 2000, anew: true, living: undefined })
    page('1').keep(typed('11'), 2100)
    assert.equal(page('3').take({ now: 2200, anew: true, living: undefined }), undefined)
    page('1').keep(typed('112'), 2300)
    assert.deepEqual(page('3').take({ now: 2400, anew: true, living: undefined }), typed('112'))
  })

  it('is kept for each of two pages that lose their host at once', () => {
    const { page } = shelfWith()
    page('1').keep(typed('left'), 1000)
    page('2').keep(typed('right'), 2000)
    const taken = ['3', '4'].map((name) => page(name).take({ now: 3000, anew: true, living: undefined }))
    assert.deepEqual(taken, [typed('right'), typed('left')])
  })

  it('is that of the same window before another’s, and that in which something was typed', () => {
    const { page } = shelfWith()
    page('1').keep(typed('mine'), 1000)
    page('2').keep(nothing, 2000)
    page('3', 'file:///a', 'other window').keep(typed('theirs'), 3000)
    assert.deepEqual(page('4').take({ now: 4000, anew: true, living: undefined }), typed('mine'))
  })

  it('is taken by a page that is opened as any other only from one that is there no more, and where something was typed', () => {
    const { page, living } = shelfWith()
    page('1').keep(typed('lives'), 1000)
    page('2').keep(nothing, 1000)
    assert.equal(page('4').take({ now: 2000, anew: false, living: living('1') }), undefined)
    page('3').keep(typed('gone'), 1000)
    assert.equal(page('4').take({ now: 2000, anew: false, living: undefined }), undefined, 'where nobody can tell who lives')
    assert.deepEqual(page('4').take({ now: 2000, anew: false, living: living('1') }), typed('gone'))
  })

  it('is gone after a day', () => {
    const { page, shelf } = shelfWith()
    page('1').keep(typed('old'), 0)
    assert.equal(page('2').take({ now: 25 * hour, anew: true, living: [] }), undefined)
    assert.equal(shelf.kept.size, 0)
  })

  it('is what a page begins anew with where that is newer than what the editor kept of it', () => {
    const { page } = shelfWith()
    page('1').keep(typed('12'), 2000)
    assert.deepEqual([page('1').own(1000), page('1').own(2000), page('2').own(0)], [typed('12'), undefined, undefined])
  })

  it('is no trouble where the store is full, cannot be had or holds anything else', () => {
    const { page, shelf } = shelfWith()
    shelf.kept.set('detent.page:file:///a#1', '{')
    shelf.kept.set('other', 'x')
    assert.equal(page('2').take({ now: 25 * hour, anew: true, living: [] }), undefined)
    assert.deepEqual([...shelf.kept.keys()], ['other'])
    shelf.full = true
    page('2').keep(typed('x'), 0)
    assert.equal(page('2').own(-1), undefined)
  })
})
