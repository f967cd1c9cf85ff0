import assert from 'node:assert/strict'
import * as moves from '../../../webview/grid/model/moves'
import { canStand, HEADER, LABELS, nearestSpot } from '../../../webview/grid/model/spot'
import { smallView } from './small'

describe('moving about the grid', () => {
  const { rows } = smallView()
  const ground = { rows, columns: 3 }
  const at = (row: number, column: number) => ({ row, column })

  it('steps from cell to cell, over headings', () => {
    assert.deepEqual(moves.step(ground, at(1, 1), 1, 0), at(2, 1))
    assert.deepEqual(moves.step(ground, at(2, 1), 1, 0), at(4, 1))
    assert.deepEqual(moves.step(ground, at(4, 1), -1, 0), at(2, 1))
  })
  it('steps up from the first row into the header and left into the labels', () => {
    assert.deepEqual(moves.step(ground, at(1, 1), -1, 0), at(HEADER, 1))
    assert.deepEqual(moves.step(ground, at(1, 0), 0, -1), at(1, LABELS))
  })
  it('stands on headings in the label column', () => {
    assert.deepEqual(moves.step(ground, at(2, LABELS), 1, 0), at(3, LABELS))
  })
  it('stays where it is at the edges and never stands in the corner', () => {
    assert.deepEqual(moves.step(ground, at(6, 1), 1, 0), at(6, 1))
    assert.deepEqual(moves.step(ground, at(1, 2), 0, 1), at(1, 2))
    assert.deepEqual(moves.step(ground, at(HEADER, 0), 0, -1), at(HEADER, 0))
    assert.deepEqual(moves.step(ground, at(0, LABELS), -1, 0), at(0, LABELS))
  })
  it('jumps to the edges, to cells first and to headers and labels next', () => {
    assert.deepEqual(moves.toEdge(ground, at(4, 1), 0, 1), at(4, 2))
    assert.deepEqual(moves.toEdge(ground, at(4, 1), 0, -1), at(4, 0))
    assert.deepEqual(moves.toEdge(ground, at(4, 0), 0, -1), at(4, LABELS))
    assert.deepEqual(moves.toEdge(ground, at(4, 1), -1, 0), at(1, 1))
    assert.deepEqual(moves.toEdge(ground, at(1, 1), -1, 0), at(HEADER, 1))
    assert.deepEqual(moves.toEdge(ground, at(1, 1), 1, 0), at(6, 1))
  })
  it('goes to the ends of the row and of the grid', () => {
    assert.deepEqual(moves.toRowStart(ground, at(4, LABELS)), at(4, 0))
    assert.deepEqual(moves.toRowEnd(ground, at(4, 0)), at(4, 2))
    assert.deepEqual(moves.toFirst(ground, at(6, 2)), at(1, 0))
    assert.deepEqual(moves.toLast(ground, at(1, 0)), at(6, 2))
  })
  it('pages towards a row without leaving the cells or stopping on a heading', () => {
    assert.deepEqual(moves.towardsRow(ground, at(1, 1), 3), at(2, 1))
    assert.deepEqual(moves.towardsRow(ground, at(6, 1), 0), at(1, 1))
    assert.deepEqual(moves.towardsRow(ground, at(6, 1), 6), at(6, 1))
  })
  it('walks down the newest entry by Tab', () => {
    assert.deepEqual(moves.tab(ground, at(1, 2), 2), at(2, 2))
    assert.deepEqual(moves.tab(ground, at(2, 2), 2), at(4, 2))
  })
  it('comes back to the column where the run of Tabs began', () => {
    assert.deepEqual(moves.tab(ground, at(1, 1), 1), at(1, 2))
    assert.deepEqual(moves.tab(ground, at(1, 2), 1), at(2, 1))
  })
  it('leaves the grid by Tab after the last cell and by Shift+Tab before the first', () => {
    assert.equal(moves.tab(ground, at(6, 2), 2), undefined)
    assert.equal(moves.tabBack(ground, at(1, 0)), undefined)
  })
  it('goes back by Shift+Tab to the end of the row above', () => {
    assert.deepEqual(moves.tabBack(ground, at(2, 1)), at(2, 0))
    assert.deepEqual(moves.tabBack(ground, at(4, 0)), at(2, 2))
  })
  it('has nothing to move to but labels while there is no entry', () => {
    const empty = { rows, columns: 0 }
    assert.deepEqual(moves.step(empty, at(1, LABELS), 0, 1), at(1, LABELS))
    assert.deepEqual(moves.toLast(empty, at(1, LABELS)), at(6, LABELS))
    assert.deepEqual(nearestSpot(empty, at(4, 2)), at(4, LABELS))
  })
  it('never leads anywhere one cannot stand', () => {
    for (let row = HEADER; row < rows.length; row++) {
      for (let column = LABELS; column < 3; column++) {
        const from = at(row, column)
        if (!canStand(ground, from)) continue
        const reached = [
          moves.step(ground, from, 1, 0), moves.step(ground, from, -1, 0), moves.step(ground, from, 0, 1), moves.step(ground, from, 0, -1),
          moves.toEdge(ground, from, 1, 0), moves.toEdge(ground, from, -1, 0), moves.toEdge(ground, from, 0, 1), moves.toEdge(ground, from, 0, -1),
          moves.toRowStart(ground, from), moves.toRowEnd(ground, from), moves.toFirst(ground, from), moves.toLast(ground, from),
          moves.tab(ground, from, 0) ?? from, moves.tabBack(ground, from) ?? from, moves.towardsRow(ground, from, 0), moves.towardsRow(ground, from, 6),
        ]
        for (const spot of reached) assert.ok(canStand(ground, spot), `${JSON.stringify(from)} led to ${JSON.stringify(spot)}`)
      }
    }
  })
  it('finds the nearest spot to one that is gone', () => {
    assert.deepEqual(nearestSpot(ground, at(99, 99)), at(6, 2))
    assert.deepEqual(nearestSpot(ground, at(3, 1)), at(4, 1))
    assert.deepEqual(nearestSpot(ground, at(0, 1)), at(1, 1))
    assert.equal(nearestSpot({ rows: [], columns: 0 }, at(0, 0)), undefined)
  })
})
