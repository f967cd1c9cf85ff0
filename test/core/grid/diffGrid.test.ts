import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { diffGrid } from '../../../src/core/grid/diffGrid'
import type { GridFinding, GridView } from '../../../src/core/grid/view'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../src/core/text'
import { Choices } from './choices'
import { head } from './editing'
import { randomGesture } from './randomGesture'
import { writeRandomNotebook } from './writeRandomNotebook'

function gridOf(text: string): GridView {
  const notebook = readNotebook(text)
  return buildGrid(notebook, checkNotebook(notebook))
}

const before = `${head}entries:\n  - id: a\n    settings: {shock: 3}\n  - id: b\n`

describe('the difference of two grids', () => {
  it('is nothing where nothing is different', () => {
    assert.deepEqual(diffGrid(gridOf(before), gridOf(before)), { columns: [], cells: [] })
  })

  it('is the cell that was set and those that carry it', () => {
    const [from, to] = [gridOf(before), gridOf(before.replace('shock: 3', 'shock: 4'))]
    const row = from.rows.findIndex(({ key }) => key === 'settings/shock')
    assert.deepEqual(diffGrid(from, to)!.cells.map(([at, column, { text }]) => [at, column, text]), [[row, 0, '4'], [row, 1, '4']])
  })

  it('is not told where rows or columns came, went or changed their names', () => {
    for (const after of [`${before}  - id: c\n`, before.replace('id: b', 'id: c'), before.replace('  shock: {on: shock, controls: rebound, counts: clicks}\n', ''), before.replace('on: shock, ', 'on: shock, label: Other, ')]) {
      assert.equal(diffGrid(gridOf(before), gridOf(after)), undefined)
    }
  })

  it('is one finding where one comes, with no other cell touched, whatever stands before it', () => {
    const many = `${head}entries:\n${Array.from({ length: 30 }, (_, at) => `  - id: e${at}\n    settings: {shock: ${at % 2 ? '3 xx' : '3 out'}}\n    reason: x\n`).join('')}`
    const difference = diffGrid(gridOf(many), gridOf(many.replace('3 out', '3 yy')))!
    assert.deepEqual([...new Set(difference.cells.map(([, column]) => column))], [0])
    assert.equal(difference.findings!.put.length, 1)
    const lower = diffGrid(gridOf(many), gridOf(many.replace('    reason: x\n', '    reason: x\n    session: y\n')))!
    assert.equal(lower.findings, undefined)
    assert.deepEqual(lower.columns.map(([at]) => at), [0])
  })

  it('is the same where the new grid was made with what is kept of the old one', () => {
    let some = 0
    fc.assert(fc.property(fc.array(fc.nat(9999), { maxLength: 600, size: 'max' }), (tape) => {
      const choices = new Choices(tape)
      const before = readNotebook(writeRandomNotebook(choices))
      const { changes } = applyGesture(before, [], randomGesture(before, choices))
      if (!changes) return
      const old = buildGrid(before, checkNotebook(before))
      const text = applyChanges(before.text, changes)
      const after = readNotebook(text, before)
      const difference = diffGrid(old, buildGrid(after, checkNotebook(after)))
      assert.deepEqual(difference, diffGrid(gridOf(before.text), gridOf(text)))
      if (difference && difference.cells.length > 0) some++
    }), { numRuns: 60 * Number(process.env['DETENT_RUNS'] ?? 1), seed: 9 })
    assert.ok(some > 5, `${some} had other cells`)
  }).timeout(60_000 * Number(process.env['DETENT_RUNS'] ?? 1))

  it('makes the new grid out of the old one, whatever was done', function () {
    this.timeout(60_000 * Number(process.env['DETENT_RUNS'] ?? 1))
    fc.assert(fc.property(fc.array(fc.nat(9999), { maxLength: 600, size: 'max' }), (tape) => {
      const choices = new Choices(tape)
      const text = writeRandomNotebook(choices)
      const { changes } = applyGesture(readNotebook(text), [], randomGesture(readNotebook(text), choices))
      if (!changes) return
      const [from, to] = [gridOf(text), gridOf(applyChanges(text, changes))]
      const difference = diffGrid(from, to)
      if (!difference) return
      for (const [at, column] of difference.columns) from.columns[at] = column
      for (const [row, column, cell] of difference.cells) from.cells[row]![column] = cell
      assert.deepEqual([from.columns, from.cells, from.rows], [to.columns, to.cells, to.rows])
      const found = new Map(from.findings.map((each) => [each.id, each]))
      for (const id of difference.findings?.gone ?? []) assert.ok(found.delete(id))
      for (const each of difference.findings?.put ?? []) found.set(each.id, each)
      const sorted = (all: Iterable<GridFinding>) => [...all].sort((a, b) => a.id - b.id)
      assert.deepEqual(sorted(found.values()), sorted(to.findings))
    }), { numRuns: 25 * Number(process.env['DETENT_RUNS'] ?? 1), seed: 6 })
  })
})
