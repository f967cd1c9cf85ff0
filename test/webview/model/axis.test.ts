import assert from 'node:assert/strict'
import { Axis, scrollToShow } from '../../../webview/grid/model/axis'

describe('an axis of the grid', () => {
  const axis = new Axis([10, 20, 30, 40])

  it('knows where each item begins and how long all are together', () => {
    assert.deepEqual([0, 1, 2, 3].map((index) => axis.offset(index)), [0, 10, 30, 60])
    assert.equal(axis.total, 100)
  })
  it('finds the item at a px, and the first or last beyond the ends', () => {
    assert.deepEqual([-5, 0, 9, 10, 29, 30, 99, 500].map((px) => axis.at(px)), [0, 0, 0, 1, 1, 2, 3, 3])
  })
  it('has no item when it is empty', () => {
    assert.equal(new Axis([]).at(0), -1)
    assert.equal(new Axis([]).reach(100, 3), 0)
  })
  it('reaches over any stretch with its smallest items and what is to spare, never over more than there are', () => {
    assert.equal(new Axis(Array.from({ length: 100 }, () => 10)).reach(55, 3), 13)
    assert.equal(axis.reach(1000, 3), 4)
  })
  it('covers the whole stretch in sight from wherever it is scrolled to', () => {
    const long = new Axis(Array.from({ length: 200 }, (_, index) => 18 + (index % 3) * 18))
    const reach = long.reach(300, 4)
    for (let scroll = 0; scroll <= long.total - 300; scroll += 7) {
      const first = long.firstOf(scroll, reach, 4)
      assert.ok(long.offset(first) <= scroll && long.offset(first + reach) >= scroll + 300, `at ${scroll}`)
    }
  })
  it('scrolls as little as shows an item whole', () => {
    assert.equal(scrollToShow(axis, 1, 0, 50), 0)
    assert.equal(scrollToShow(axis, 2, 0, 50), 10)
    assert.equal(scrollToShow(axis, 0, 25, 50), 0)
  })
  it('shows the start of an item that is longer than the sight', () => {
    assert.equal(scrollToShow(axis, 3, 0, 30), 60)
  })
})
