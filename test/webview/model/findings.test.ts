import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { GridFinding } from '../../../src/core/grid/view'
import type { GridPatch } from '../../../src/protocol'
import { arrived, finding, smallView } from './small'

type FindingsPatch = NonNullable<GridPatch['findings']>

const severity = fc.constantFrom('error' as const, 'warning' as const, 'info' as const)
const some = fc.uniqueArray(fc.record({ id: fc.nat(9), severity }).map((each) => finding(each.id, each.severity, 'rebound', 'e1')), { selector: ({ id }) => id })
const patches = fc.array(fc.record({ put: some, gone: fc.uniqueArray(fc.nat(9)) }), { maxLength: 4 })

/** What differs stays in its place, what is new comes last. */
function patched(list: readonly GridFinding[], { put, gone }: FindingsPatch): GridFinding[] {
  const kept = list.filter(({ id }) => !gone.includes(id))
  const now = (id: number) => put.find((each) => each.id === id)
  return [...kept.map((each) => now(each.id) ?? each), ...put.filter(({ id }) => !kept.some((each) => each.id === id))]
}

describe('the findings at the page', () => {
  it('are those that came and what patches made of them, in order, counted and known by their ids', () => {
    fc.assert(fc.property(some, patches, fc.nat(9), fc.boolean(), (came, changes, early, looked) => {
      const { findings } = arrived(smallView(3, came))
      const first = findings.get(early)
      assert.deepEqual(first, came.find(({ id }) => id === early))
      if (looked && first) assert.equal(findings.list.find(({ id }) => id === early), first)
      let list: readonly GridFinding[] = came
      if (looked) assert.deepEqual(findings.list, list)
      for (const change of changes) {
        findings.take(change)
        list = patched(list, change)
      }
      const counts = { error: 0, warning: 0, info: 0 }
      for (const each of list) counts[each.severity]++
      assert.deepEqual(findings.counts, counts)
      assert.deepEqual(findings.list, list)
      for (let id = 0; id < 10; id++) assert.deepEqual(findings.get(id), list.find((each) => each.id === id))
    }))
  })
})

describe('the cells at the page', () => {
  const view = smallView(3, [finding(1, 'warning', 'rebound', 'e1'), finding(2, 'info', 'rebound', 'e1'), finding(3, 'error', 'felt', 'e2')])

  it('are those that came, marked or not, the same each time, and none where none are', () => {
    const { cells } = arrived(view)
    view.rows.forEach((_, y) => view.columns.forEach((__, x) => {
      assert.equal(cells.isMarked(y, x), view.cells[y]![x]?.findings !== undefined)
      assert.deepEqual(cells.at(y, x), view.cells[y]![x])
      assert.equal(cells.at(y, x), cells.at(y, x))
    }))
    assert.deepEqual([cells.at(0, 0), cells.at(1, 3), cells.at(1, -1), cells.at(-1, 0), cells.at(9, 0)], [undefined, undefined, undefined, undefined, undefined])
  })
  it('change one by one', () => {
    const { cells } = arrived(view)
    cells.put(1, 1, { state: 'set', text: '9 out' })
    cells.put(1, 2, { state: 'set', text: '8 out', findings: [7], worst: 'info' })
    cells.put(0, 0, { state: 'set', text: 'nowhere' })
    assert.deepEqual([cells.at(1, 1)?.text, cells.isMarked(1, 1), cells.isMarked(1, 2), cells.at(0, 0)], ['9 out', false, true, undefined])
    assert.deepEqual(cells.at(2, 1), view.cells[2]![1])
  })
})
