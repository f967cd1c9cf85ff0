import assert from 'node:assert/strict'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { workOutGrid } from '../../../src/core/grid/entryCells'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkEntries, checkNotebook } from '../../../src/core/rules/checkNotebook'
import { seasonNotebook } from '../../bench/seasonNotebook'

const text = seasonNotebook(12)

describe('a long notebook', () => {
  it('is worked out entry by entry to what it is when worked out at once, and nothing of that a second time', () => {
    const steps = readNotebook(text)
    let pauses = 0
    for (const work of [checkEntries(steps), workOutGrid(steps)]) while (!work.next().done) pauses++
    assert.equal(pauses, 3 * steps.entries.length)
    const kept = () => steps.entries.map(({ content }) => [...content.kept.values()])
    const before = kept()
    const findings = checkNotebook(steps)
    const view = buildGrid(steps, findings)
    kept().forEach((values, at) => assert.ok(values.every((value) => before[at]!.includes(value)), `entry ${at} was worked out again`))
    const atOnce = readNotebook(text)
    assert.deepEqual(findings, checkNotebook(atOnce))
    assert.deepEqual(view, buildGrid(atOnce, checkNotebook(atOnce)))
  })

  it('is first shown with all that is written, and with computed numbers in its last entries alone', () => {
    const notebook = readNotebook(text)
    const [first, whole] = [buildGrid(notebook, [], fileUnits, 3), buildGrid(readNotebook(text), [])]
    assert.equal(first.unfinished, true)
    assert.deepEqual(first.rows, whole.rows)
    first.rows.forEach(({ kind }, row) => whole.cells[row]!.forEach((cell, column) => {
      const isLater = kind === 'computed' && column < notebook.entries.length - 3
      assert.deepEqual(first.cells[row]![column], isLater ? { state: 'computed', text: '…' } : cell)
    }))
    assert.ok(first.rows.some(({ kind }) => kind === 'computed'))
  })

  it('is a short one where it has no more entries than are worked out first', () => {
    const notebook = readNotebook(text)
    assert.deepEqual(buildGrid(notebook, [], fileUnits, 12), buildGrid(notebook, []))
    assert.equal(buildGrid(notebook, []).unfinished, undefined)
  })
})
