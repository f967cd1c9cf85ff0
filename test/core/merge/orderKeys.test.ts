import assert from 'node:assert/strict'
import { orderKeys } from '../../../src/core/merge/orderKeys'

const list = (text: string) => (text === '' ? [] : text.split(' '))
/** Keys by their first letters; the day of a key is what stands behind its slash. */
const ordered = (base: string, ours: string, theirs: string) => orderKeys({ base: list(base), ours: list(ours), theirs: list(theirs) }, (key) => key.split('/')[1]).join(' ')

describe('the order of a merged list', () => {
  it('is that of the side which put what both have in another order, and ours where both did', () => {
    assert.equal(ordered('a b c', 'a b c', 'c a b'), 'c a b')
    assert.equal(ordered('a b c', 'c a b', 'a b c'), 'c a b')
    assert.equal(ordered('a b c', 'c a b', 'b c a'), 'c a b')
    assert.equal(ordered('a b c', 'c a b', 'c a b'), 'c a b')
  })

  it('is not told by what one side took out', () => {
    assert.equal(ordered('a b c d', 'a b d', 'd a b c'), 'd a b c')
    assert.equal(ordered('a b c', 'b c', 'a b c'), 'a b c')
  })

  it('has an addition of either side behind what it follows there', () => {
    assert.equal(ordered('a b', 'a b', 'a x b'), 'a x b')
    assert.equal(ordered('a b', 'a b', 'x a b'), 'x a b')
    assert.equal(ordered('a b', 'a b', 'a b x y'), 'a b x y')
    assert.equal(ordered('a b', 'a o b', 'b a'), 'b a o')
    assert.equal(ordered('a b', 'b a o', 'a b x'), 'b x a o')
  })

  it('has what both added once, and what one side added beside it in its place', () => {
    assert.equal(ordered('a', 'a x o', 'a t x'), 'a t x o')
    assert.equal(ordered('', 'x o', 'x t'), 'x o t')
  })

  it('sorts additions of both at one place by their days, ours first on the same day', () => {
    assert.equal(ordered('a', 'a o/2 p/4', 'a t/1 u/3 v/5'), 'a t/1 o/2 u/3 p/4 v/5')
    assert.equal(ordered('a', 'a o/1', 'a t/1'), 'a o/1 t/1')
    assert.equal(ordered('a', 'a o/1 p/1', 'a t/1'), 'a o/1 p/1 t/1')
    assert.equal(ordered('a b', 'a o/2 b p/1', 'a t/1 b u/2'), 'a t/1 o/2 b p/1 u/2')
  })

  it('leaves them one side after the other where those of a side are in no order, or have no day', () => {
    assert.equal(ordered('a', 'a o/3 p/2', 'a t/1'), 'a o/3 p/2 t/1')
    assert.equal(ordered('a', 'a o/3', 'a t/2 u/1'), 'a o/3 t/2 u/1')
    assert.equal(ordered('a', 'a o', 'a t/1'), 'a o t/1')
    assert.equal(ordered('a', 'a o/2', 'a t/1 u'), 'a o/2 t/1 u')
  })
})
