import assert from 'node:assert/strict'
import fc from 'fast-check'
import { sagsAfter } from '../../../../src/core/compute/preload/sagsAfter'
import { near } from '../near'

describe('sagsAfter', () => {
  it('moves both sags by the change over the motion ratio', () => {
    assert.deepEqual(sagsAfter({ bikeMm: 25, riderMm: 36 }, 2, 0.5), { bikeMm: 21, riderMm: 32, toppingOut: [] })
  })

  it('says which end of which load case comes to stand on its top stop, with no sag below zero', () => {
    assert.deepEqual(sagsAfter({ bikeMm: 5, riderMm: 36 }, 8, 1), { bikeMm: 0, riderMm: 28, toppingOut: ['bike'] })
    assert.deepEqual(sagsAfter({ bikeMm: 5, riderMm: 6 }, 8, 1).toppingOut, ['bike', 'rider'])
  })

  it('counts an end that just reaches its top stop as topping out', () => {
    assert.deepEqual(sagsAfter({ bikeMm: 8 }, 8, 1), { bikeMm: 0, toppingOut: ['bike'] })
  })

  it('tells one sag where only one is known', () => {
    assert.deepEqual(sagsAfter({ riderMm: 36 }, 2, 1), { riderMm: 34, toppingOut: [] })
  })

  it('never changes the difference of the two while neither tops out', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(1, 50), number(1, 50), number(-10, 10), number(0.3, 1), (bikeMm, more, change, m) => {
      const after = sagsAfter({ bikeMm, riderMm: bikeMm + more }, change, m)
      fc.pre(after.toppingOut.length === 0)
      near(after.riderMm! - after.bikeMm!, more, 1e-9)
    }))
  })
})
