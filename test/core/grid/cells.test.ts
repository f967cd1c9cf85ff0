import assert from 'node:assert/strict'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import type { Cell } from '../../../src/core/grid/view'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { head } from './editing'

/** The cell of a row in the last entry's column. */
function last(entries: string, row: string): Cell {
  const notebook = readNotebook(`${head}entries:\n${entries}`)
  const grid = buildGrid(notebook, checkNotebook(notebook))
  return grid.cells[grid.rows.findIndex(({ key }) => key === row)]!.at(-1)!
}

describe('a cell', () => {
  it('shows what was written, not what was made of it', () => {
    assert.deepEqual(last('  - id: a\n    settings: {shock: 1.0}\n', 'settings/shock'), { state: 'set', text: '1.0' })
    assert.equal(last('  - id: a\n    ride: {log: 012}\n', 'ride.log').text, '012')
    assert.equal(last('  - id: a\n    ride: {felt: "it\'s \\"good\\""}\n', 'ride.felt').text, 'it\'s "good"')
  })

  it('shows a block without the line end behind it', () => {
    assert.equal(last('  - id: a\n    reason: |\n      one\n\n      two\n', 'reason').text, 'one\n\ntwo')
  })

  it('says that a position is carried, and where from', () => {
    const entries = '  - id: a\n    settings: {shock: 3}\n  - id: b\n'
    assert.deepEqual(last(entries, 'settings/shock'), { state: 'carried', text: '3', about: 'as in a' })
    assert.deepEqual(last(entries, 'settings/fork/left'), { state: 'empty', text: '' })
  })

  it('says that a position was changed here, and not that it was set to the same', () => {
    const before = '  - id: a\n    settings: {shock: 3}\n  - id: b\n    reason: x\n    settings: '
    assert.equal(last(`${before}{shock: 4 out}\n`, 'settings/shock').changed, true)
    assert.equal(last(`${before}{shock: 3 out}\n`, 'settings/shock').changed, undefined)
    assert.equal(last(`${before}{fork: 3}\n`, 'settings/fork/left').changed, undefined)
  })

  it('shows a reading in each of its three forms', () => {
    for (const reading of ['[128, 122]', '{lifted: 128, pushed: 122}']) {
      assert.equal(last(`  - id: a\n    sag: {front: {bike: ${reading}}}\n`, 'sag.front.bike.lifted').text, '128')
      assert.equal(last(`  - id: a\n    sag: {front: {bike: ${reading}}}\n`, 'sag.front.bike.pushed').text, '122')
    }
    assert.equal(last('  - id: a\n    sag: {front: {bike: 128}}\n', 'sag.front.bike.lifted').text, '128')
    assert.equal(last('  - id: a\n    sag: {front: {bike: 128}}\n', 'sag.front.bike.pushed').state, 'empty')
    assert.equal(last('  - id: a\n    sag: {front: {bike: ~}}\n', 'sag.front.bike.lifted').state, 'empty')
  })

  it('has what a person wrote about it, in remarks and behind it', () => {
    assert.equal(last('  - id: a\n    settings:\n      shock: 3   # worn\n    remarks: {shock: look again}\n', 'settings/shock').remark, 'look again · worn')
    assert.equal(last('  - id: a\n    settings: {fork: 3} # "both"\n', 'settings/fork/left').remark, '"both"')
    assert.equal(last('  - id: a\n    remarks: {fork: both, fork/left: this}\n', 'settings/fork/left').remark, 'this')
    assert.equal(last('  - id: a\n    remarks: {fork: both, fork/left: this}\n', 'settings/fork/right').remark, 'both')
    assert.equal(last('  - id: a\n    sag: {front: {bike: [128, 122]}} # cold\n    remarks: {sag.front.bike: twice}\n', 'sag.front.bike.pushed').remark, 'twice · cold')
    assert.equal(last('  - id: a\n    remarks: {computed/front.static_sag_mm: odd}\n', 'computed/front.static_sag_mm').remark, 'odd')
    assert.equal(last('  - id: a\n    reason: "x # y"\n', 'reason').remark, undefined)
  })

  it('carries the findings about it, worst first', () => {
    const cell = last('  - id: a\n    settings: {fork: {left: 3, right: 6 frobs}}\n', 'settings/fork/right')
    assert.equal(cell.worst, 'error')
    assert.equal(cell.findings?.length, 1)
  })
})

describe('the grid', () => {
  const grid = (text: string) => {
    const notebook = readNotebook(text)
    return buildGrid(notebook, checkNotebook(notebook))
  }

  it('is as wide as there are entries and as high as there are rows', () => {
    const view = grid(`${head}entries:\n  - id: a\n  - id: b\n`)
    assert.deepEqual(view.columns.map(({ key }) => key), ['a', 'b'])
    assert.equal(view.cells.length, view.rows.length)
    view.rows.forEach(({ kind }, at) => assert.equal(view.cells[at]!.length, kind === 'group' ? 0 : 2))
    assert.equal(new Set(view.rows.map(({ key }) => key)).size, view.rows.length)
  })

  it('says in what state the text is', () => {
    assert.equal(grid(`${head}entries:\n  - id: a\n`).state, 'ready')
    assert.equal(grid('').state, 'empty')
    assert.equal(grid('format: 2\n').state, 'newer')
    const broken = grid(`${head}entries:\n  - id: a\n  - {\n`)
    assert.equal(broken.state, 'broken')
    assert.ok(broken.trouble!.line >= 8 && broken.trouble!.line <= 9)
  })
})
