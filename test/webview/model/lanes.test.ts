import assert from 'node:assert/strict'
import fc from 'fast-check'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { historyMore, spokenMore } from '../../../webview/grid/model/describe'
import { GridModel } from '../../../webview/grid/model/gridModel'
import { lanesOf, parentOf } from '../../../webview/grid/model/lanes'
import { arrived } from './small'

/** A notebook of entries, each with what it says it comes from. */
const columnsOf = (entries: readonly [id: string, from?: string][]) =>
  buildGrid(readNotebook(`entries:\n${entries.map(([id, from]) => `  - {id: ${id}${from === undefined ? '' : `, from: ${from}`}}`).join('\n')}\n`), []).columns

// A, B, back to A, then on: what testing one thing against another looks like.
const there = [['a'], ['b'], ['a2', 'a'], ['c']] as [string, string?][]

describe('the lanes of a history', () => {
  it('are none where entries follow one another', () => {
    assert.equal(lanesOf(columnsOf([['a'], ['b', 'a'], ['c']])), undefined)
    assert.equal(lanesOf([]), undefined)
  })

  it('leave an entry, pass the ones between and come into the one that goes back', () => {
    const { count, marks } = lanesOf(columnsOf(there))!
    assert.equal(count, 2)
    assert.deepEqual(marks, [
      { own: 0, passing: [], comes: false, goesOn: true, leaves: [1], left: false },
      { own: 0, passing: [1], comes: true, goesOn: false, leaves: [], left: true },
      { own: 1, passing: [], comes: true, goesOn: true, leaves: [], left: false },
      { own: 1, passing: [], comes: true, goesOn: false, leaves: [], left: false },
    ])
  })

  it('join on from column to column: whatever leaves to the right arrives from the left', () => {
    const history = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 2, maxLength: 12 }).map((parents) =>
      parents.map((parent, at): [string, string?] => (at === 0 || parent >= at ? [`e${at}`] : [`e${at}`, `e${parent}`])))
    fc.assert(fc.property(history, (entries) => {
      const lanes = lanesOf(columnsOf(entries))
      if (!lanes) return
      lanes.marks.forEach((marks, at) => {
        const right = new Set([...marks.passing, ...marks.leaves, ...(marks.goesOn ? [marks.own] : [])])
        const next = lanes.marks[at + 1]
        const arriving = new Set(next ? [...next.passing, ...(next.comes ? [next.own] : [])] : [])
        assert.deepEqual([...right].sort(), [...arriving].sort(), JSON.stringify(entries))
        assert.ok([marks.own, ...marks.passing, ...marks.leaves].every((lane) => lane >= 0 && lane < lanes.count))
        assert.ok(!marks.passing.includes(marks.own), 'no line runs through a dot of another')
      })
    }), { numRuns: 300 })
  })

  it('name what each entry comes from, written or not', () => {
    const columns = columnsOf(there)
    assert.deepEqual(columns.map((_, at) => parentOf(columns, at)), [undefined, 'a', 'a', 'a2'])
    const lost = columnsOf([['a'], ['b', 'nowhere'], ['c', 'a']])
    assert.equal(parentOf(lost, 1), undefined)
  })

  it('are told in words to those who do not see them', () => {
    const model = new GridModel()
    model.show(arrived(buildGrid(readNotebook('entries:\n  - {id: a}\n  - {id: b}\n  - {id: a2, from: a}\n  - {id: c}\n'), [])))
    assert.deepEqual([0, 1, 2, 3].map((at) => historyMore(model, at)), [['leads on to b, a2'], ['from a', 'tried and left'], ['from a'], ['from a2']])
    assert.match(spokenMore(model, { row: -1, column: 2 }, undefined), /from a/)
  })

  it('change with a patch of the columns', () => {
    const model = new GridModel()
    const view = buildGrid(readNotebook('entries:\n  - {id: a}\n  - {id: b}\n  - {id: c}\n'), [])
    model.show(arrived(view))
    const columns = columnsOf([['a'], ['b'], ['c', 'a']])
    const patch = { title: '', state: view.state, cells: [] }
    assert.equal(model.apply({ ...patch, columns: columns.map((column, at): [number, typeof column] => [at, column]) })?.lanes, true)
    assert.equal(model.lanes?.count, 2)
    assert.equal(model.apply({ ...patch, columns: [[2, columns[2]!]] })?.lanes, false)
  })
})
