import assert from 'node:assert/strict'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { packView, type PackedWords } from '../../../src/core/grid/packView'
import type { GridView } from '../../../src/core/grid/view'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { unpackView } from '../../../webview/grid/model/unpackView'
import { seasonNotebook } from '../../bench/seasonNotebook'

function season(entries: number) {
  const notebook = readNotebook(seasonNotebook(entries))
  return buildGrid(notebook, checkNotebook(notebook))
}

/** The view as it was, of what arrived at the page. */
function whole(packed: ReturnType<typeof packView>): GridView {
  const { cells, findings, ...view } = unpackView(structuredClone(packed))
  const row = (y: number) => view.columns.map((_, x) => cells.at(y, x)!)
  return { ...view, cells: view.rows.map(({ kind }, y) => (kind === 'group' ? [] : row(y))), findings: [...findings.list] }
}

describe('a grid on its way to the page', () => {
  it('arrives as it was', () => {
    for (const entries of [0, 1, 12]) assert.deepEqual(whole(packView(season(entries))), season(entries))
  })

  it('has each kind of cell once', () => {
    const view = season(12)
    const { words, cells } = packView(view)
    const { kinds } = JSON.parse(words) as PackedWords
    assert.equal(new Set(kinds.map((cell) => JSON.stringify(cell))).size, kinds.length)
    assert.ok(kinds.length * 2 < cells.length, `${kinds.length} kinds of ${cells.length} cells`)
  })

  it('has each wording of a finding once, and grows by less than the words of what is found', () => {
    const [few, many] = [season(12), season(24)]
    const { wordings } = JSON.parse(packView(many).words) as PackedWords
    assert.equal(new Set(many.findings.map(({ message }) => message)).size, wordings.length)
    const grownBy = packView(many).words.length - packView(few).words.length
    const found = JSON.stringify(many.findings).length - JSON.stringify(few.findings).length
    assert.ok(grownBy < found, `${grownBy} more of words, where findings are ${found} more`)
  })

  it('tells apart what only looks alike, and keeps ids that need all 32 bits', () => {
    const [cell, other] = [{ state: 'set', text: '1 out', remark: 'a' }, { state: 'set', text: '1 out remark 1 a' }] as const
    const finding = { id: 0xfffffff0, code: 'test', severity: 'info', message: 'x', fixes: ['a', 'b'] } as const
    const view = {
      ...season(1), cells: season(1).cells.map((row) => row.map((each, at) => (at === 0 ? cell : each))).map((row, at) => (at === 1 ? [{ ...other, findings: [0xfffffff0] }] : row)),
      findings: [{ ...finding, fixes: [...finding.fixes], line: 7 }, { ...finding, id: 1, fixes: ['a,b'], column: 'run-1', row: '' }],
    } satisfies GridView
    assert.deepEqual(whole(packView(view)), view)
  })

  it('has nothing where there is nothing', () => {
    const empty = buildGrid(readNotebook(''), [])
    assert.deepEqual(whole(packView(empty)), empty)
  })
})
