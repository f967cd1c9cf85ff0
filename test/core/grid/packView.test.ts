import assert from 'node:assert/strict'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { packView } from '../../../src/core/grid/packView'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { unpackView } from '../../../webview/grid/model/unpackView'
import { seasonNotebook } from '../../bench/seasonNotebook'

function season(entries: number) {
  const notebook = readNotebook(seasonNotebook(entries))
  return buildGrid(notebook, checkNotebook(notebook))
}

describe('a grid on its way to the page', () => {
  it('arrives as it was', () => {
    for (const entries of [0, 1, 12]) assert.deepEqual(unpackView(JSON.parse(JSON.stringify(packView(season(entries)))) as ReturnType<typeof packView>), season(entries))
  })

  it('has each kind of cell once', () => {
    const view = season(12)
    const { kinds, cells } = packView(view)
    assert.equal(new Set(kinds.map((cell) => JSON.stringify(cell))).size, kinds.length)
    assert.ok(kinds.length * 2 < cells.flat().length, `${kinds.length} kinds of ${cells.flat().length} cells`)
  })

  it('has nothing where there is nothing', () => {
    const empty = buildGrid(readNotebook(''), [])
    assert.deepEqual(unpackView(packView(empty)), empty)
  })
})
