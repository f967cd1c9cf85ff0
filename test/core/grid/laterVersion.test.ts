import assert from 'node:assert/strict'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { sketchWith } from '../derived/ternSketch'

const branches = sketchWith(['      fork_height: 5\n', ''], ['{fork_rebound: 3 out}', '{fork_rebound: 3 out, fork_height: 5}'])
  + '  - id: other\n    from: as-found\n    settings: {fork_height: 9}\n'

describe('the grid of a text that was changed elsewhere', () => {
  const cells = (notebook: ReturnType<typeof readNotebook>) => {
    const view = buildGrid(notebook, [])
    return view.cells.map((row, at) => row.map(({ text, about }) => `${view.rows[at]!.key}: ${text} ${about ?? ''}`))
  }

  it('is the one that reading it afresh would make, also where geometry stands on an entry of another branch', () => {
    const before = readNotebook(branches)
    cells(before)
    for (const after of [branches.replace('fork_height: 5', 'fork_height: 7'), branches.replace(', fork_height: 5', ''), branches.replace('travel: 120', 'travel: 100'), branches.replace('rake: 24', 'rake: 25')]) {
      assert.deepEqual(cells(readNotebook(after, before)), cells(readNotebook(after)), after)
    }
  })

  it('remembers no more of an entry, however often it is made', () => {
    const notebook = readNotebook(branches)
    const remembered = () => {
      cells(notebook)
      return notebook.entries.map(({ content }) => content.kept.size)
    }
    const once = remembered()
    assert.ok(once.every((size) => size > 0))
    remembered()
    assert.deepEqual(remembered(), once)
  })
})
