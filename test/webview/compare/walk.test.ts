import assert from 'node:assert/strict'
import fc from 'fast-check'
import { buildLines } from '../../../webview/compare/model/buildLines'
import { columns, columnsOf, type Line } from '../../../webview/compare/model/lines'
import { filled, settle, walk, type Move } from '../../../webview/compare/model/walk'
import { pairOf } from './views'

const nothing = { text: '' }
const make = (key: string, kind: Line['kind'], change = true): Line => ({ key, kind, label: key, left: nothing, right: nothing, different: key === 'c', ...(change ? { change: { words: '' } } : {}) })
const lines = [make('g', 'group'), make('a', 'position'), make('b', 'words', false), make('h', 'group'), make('c', 'position'), make('d', 'position')]
const go = (line: string, column: Line['key'], move: Move) => {
  const spot = walk(lines, { line, column: column as 'left' }, move, 2)
  return spot && `${spot.line} ${spot.column}`
}

describe('walking the table', () => {
  it('goes from line to line over headings, and no further than the ends', () => {
    assert.equal(go('b', 'left', { kind: 'step', lines: 1, columns: 0 }), 'c left')
    assert.equal(go('c', 'left', { kind: 'step', lines: -1, columns: 0 }), 'b left')
    assert.equal(go('a', 'left', { kind: 'step', lines: -1, columns: 0 }), 'a left')
    assert.equal(go('d', 'left', { kind: 'step', lines: 1, columns: 0 }), 'd left')
    assert.equal(go('a', 'right', { kind: 'page', down: true }), 'c right')
    assert.equal(go('a', 'right', { kind: 'last' }), 'd right')
    assert.equal(go('d', 'right', { kind: 'first' }), 'a right')
  })
  it('goes from side to side over a change that a line has not, and stays in its column past such a line', () => {
    assert.equal(go('b', 'left', { kind: 'step', lines: 0, columns: 1 }), 'b right')
    assert.equal(go('b', 'right', { kind: 'step', lines: 0, columns: -1 }), 'b left')
    assert.equal(go('b', 'change', { kind: 'step', lines: 0, columns: -1 }), 'b label')
    assert.equal(go('a', 'change', { kind: 'step', lines: 1, columns: 0 }), 'b change')
    assert.equal(go('b', 'change', { kind: 'step', lines: 1, columns: 0 }), 'c change')
    assert.equal(go('a', 'change', { kind: 'lineEnd' }), 'a right')
    assert.equal(go('a', 'change', { kind: 'lineStart' }), 'a label')
  })
  it('begins at the first line where the one it stood on is gone, and nowhere where there is none', () => {
    assert.equal(go('gone', 'left', { kind: 'step', lines: 0, columns: 0 }), 'a left')
    assert.equal(walk([make('g', 'group')], { line: 'g', column: 'label' }, { kind: 'first' }, 5), undefined)
    assert.equal(settle([], undefined), undefined)
  })
  it('settles on the same line, else on the first that differs', () => {
    assert.deepEqual(settle(lines, { line: 'b', column: 'right' }), { line: 'b', column: 'right' })
    assert.deepEqual(settle(lines, { line: 'gone', column: 'right' }), { line: 'c', column: 'right' })
    assert.deepEqual(settle(lines.slice(0, 3), undefined), { line: 'a', column: 'label' })
    assert.deepEqual(settle(lines, { line: 'g', column: 'label' }), { line: 'c', column: 'label' })
  })
  it('always stands on a cell that is there', () => {
    const real = buildLines(pairOf('run-2', 'run-3'), false)
    const step = (lines: number, columns: number): Move => ({ kind: 'step', lines, columns })
    const anyMove = fc.constantFrom<Move>(step(1, 0), step(-1, 0), step(0, 1), step(0, -1), { kind: 'page', down: true }, { kind: 'page', down: false }, { kind: 'first' }, { kind: 'last' }, { kind: 'lineStart' }, { kind: 'lineEnd' })
    fc.assert(fc.property(fc.constantFrom(...real), fc.constantFrom(...columns), fc.array(anyMove, { maxLength: 20 }), ({ key }, column, moves) => {
      let spot = { line: key, column }
      for (const move of moves) spot = walk(real, spot, move, 7)!
      const line = real.find((each) => each.key === (moves.length > 0 ? spot.line : key))!
      assert.ok(moves.length === 0 || line.kind !== 'group')
      assert.ok(columnsOf(line).includes(filled(line, spot.column)))
    }))
  })
})
