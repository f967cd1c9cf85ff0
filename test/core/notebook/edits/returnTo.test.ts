import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../../../src/core/grid/applyGesture'
import type { Gesture } from '../../../../src/core/grid/gesture'
import { readNotebook } from '../../../../src/core/notebook/readNotebook'
import type { Entry } from '../../../../src/core/notebook/notebook'
import { applyChanges } from '../../../../src/core/text'
import { turnList } from '../../../../src/core/compare/turnList'
import { edited, head, inEntry, refusal } from '../../grid/editing'
import { architectures, machinesOf, trials } from '../../compare/randomStates'

const back = (column: string, reason = 'it pumped', id = 'n'): Gesture => ({ kind: 'returnTo', column, id, date: '2026-04-18', reason })
const twoEntries = `${head}entries:\n  - id: a\n  - id: b\n`

describe('going back to an entry', () => {
  it('adds one at the end that comes from it, with the reason', () => {
    assert.equal(inEntry('  - id: a\n  - id: b # tried\n', back('a')), '  - id: a\n  - id: b # tried\n  - id: n\n    date: 2026-04-18\n    from: a\n    reason: it pumped\n')
    assert.equal(inEntry('  - id: a\n  - id: b\n', back('a', ' "no": #1 ')), '  - id: a\n  - id: b\n  - id: n\n    date: 2026-04-18\n    from: a\n    reason: \'"no": #1\'\n')
  })

  it('is written as its neighbours are', () => {
    assert.equal(edited(`${head}entries: [{id: a}, {id: b}]\n`, back('a')), `${head}entries: [{id: a}, {id: b}, {id: n, date: 2026-04-18, from: a, reason: it pumped}]\n`)
    assert.equal(edited(`${head}entries:\n- id: a\n\n- id: b\n`, back('a')), `${head}entries:\n- id: a\n\n- id: b\n\n- id: n\n  date: 2026-04-18\n  from: a\n  reason: it pumped\n`)
  })

  it('offers an id where none is given, and shows the new entry', () => {
    const answer = applyGesture(readNotebook(`${head}entries:\n  - id: run-1\n  - id: run-2\n`), [], { kind: 'returnTo', column: 'run-1', date: '2026-04-18', reason: 'x' })
    assert.equal(answer.refused === undefined && answer.reveal?.column, 'run-3')
  })

  it('names ids that look like something else so that they are read as they are', () => {
    for (const id of ['12', 'true', 'a: b', '~', "it's"]) {
      const text = edited(`${head}entries:\n  - id: ${JSON.stringify(id)}\n  - id: b\n`, back(id))
      assert.equal(readNotebook(text).entries.at(-1)!.parent?.id?.value, id)
    }
  })

  it('is refused where the machine stands there already, where the entry has no name of its own, or no reason is given', () => {
    assert.equal(refusal(twoEntries, back('b')), '‘b’ is the last entry: the machine stands as it says already')
    assert.equal(refusal(`${head}entries:\n  - date: 2026-04-01\n  - id: b\n`, back('#1')), 'only an entry with an id can be gone back to; give it one first')
    assert.equal(refusal(`${head}entries:\n  - id: a\n  - id: a\n  - id: b\n`, back('#1')), '‘a’ names more than one entry; give this one an id of its own first')
    assert.equal(refusal(twoEntries, back('a', '  \n ')), 'going back needs a reason, so that the next reader can judge it')
    assert.equal(refusal(twoEntries, back('gone')), 'there is no entry ‘gone’ any more')
    assert.equal(refusal(twoEntries, back('a', 'x', 'b')), '‘b’ names another entry already')
    assert.match(refusal(`${head}entries:\n  - {id: a, x: "\n`, back('a')), /^The text has an error/)
  })

  it('leaves everything where it stood in that entry, on every kind of machine', () => {
    const standing = ({ state }: Entry) => [...state].map(([slot, { setting }]) => `${slot} ${setting.node.text}`).sort()
    fc.assert(fc.property(fc.constantFrom(...architectures).chain(machinesOf), fc.constantFrom('a', 'b'), ({ notebook }, column) => {
      const answer = applyGesture(notebook, [], back(column))
      assert.ok(answer.refused === undefined)
      const after = readNotebook(applyChanges(notebook.text, answer.changes))
      const [then, now] = [after.entries.find(({ key }) => key === column)!, after.entries.at(-1)!]
      assert.deepEqual(standing(now), standing(then))
      assert.deepEqual(turnList({ notebook: after, entry: then, file: '' }, { notebook: after, file: '' }).groups, [])
    }), trials(10))
  })
})
