import assert from 'node:assert/strict'
import { compareStates } from '../../../src/core/compare/compareStates'
import { stepPair } from '../../../src/core/compare/stepPair'
import { turnList } from '../../../src/core/compare/turnList'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const text = (...entries: string[]) => `format: 1
machine: {name: Tern 650}
adjusters:
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
${entries.map((entry) => `  - {${entry}}\n`).join('')}`
const history = readNotebook(text('id: a, settings: {shock_rebound: 7 out}', 'id: b', 'id: c', 'id: d, from: b', 'id: e'))
const at = (notebook: Notebook, key?: string) => ({ notebook, file: 'x', ...(key === undefined ? {} : { entry: notebook.entries.find((each) => each.key === key)! }) })
const stepped = (left: string, right: string, newer: boolean) => {
  const pair = stepPair(at(history, left), at(history, right), newer)
  return pair && `${pair.left} ${pair.right}`
}

describe('a step through the history', () => {
  it('moves an entry and the one it comes from together, also where the history branches', () => {
    assert.equal(stepped('a', 'b', true), 'b c')
    assert.equal(stepped('b', 'c', true), 'b d')
    assert.equal(stepped('b', 'd', true), 'd e')
    assert.equal(stepped('d', 'e', false), 'b d')
    assert.equal(stepped('b', 'd', false), 'b c')
  })

  it('ends at the first entry, which comes from none, and at the last', () => {
    assert.equal(stepped('a', 'b', false), undefined)
    assert.equal(stepped('d', 'e', true), undefined)
  })

  it('leads back where it came from', () => {
    for (const [left, right] of [['a', 'b'], ['b', 'c'], ['b', 'd']] as const) {
      const pair = stepPair(at(history, left), at(history, right), true)!
      assert.equal(stepped(pair.left, pair.right, false), `${left} ${right}`)
    }
  })

  it('keeps the sides of a pair that was swapped', () => {
    assert.equal(stepped('b', 'a', true), 'c b')
    assert.equal(stepped('d', 'b', false), 'c b')
  })

  it('leaves a left side that everything is held against, and passes it over on the right', () => {
    assert.equal(stepped('a', 'd', true), 'a e')
    assert.equal(stepped('c', 'e', false), 'c d')
    assert.equal(stepped('c', 'd', false), 'c b')
    assert.equal(stepped('a', 'a', true), 'a b')
  })

  it('takes the last entries where none is named', () => {
    assert.deepEqual(stepPair(at(history, 'd'), at(history), false), { left: 'b', right: 'd' })
  })

  it('steps through two versions of a notebook together, past what one of them has not', () => {
    const earlier = readNotebook(text('id: a', 'id: b', 'id: c'))
    const step = (left: string, right: string, newer: boolean) => stepPair(at(earlier, left), at(history, right), newer)
    assert.deepEqual(step('a', 'a', true), { left: 'b', right: 'b' })
    assert.deepEqual(step('c', 'c', true), { left: 'b', right: 'd' })
    assert.deepEqual(step('b', 'd', true), { left: 'b', right: 'e' })
    assert.equal(step('a', 'a', false), undefined)
  })

  it('moves the right side alone where the two are of different machines', () => {
    const other = readNotebook(text('id: x', 'date: 2026-01-01', 'id: z'))
    assert.deepEqual(stepPair(at(other, 'x'), at(history, 'c'), true), { left: 'x', right: 'd' })
    assert.deepEqual(stepPair(at(other, '#2'), at(history, 'c'), false), { left: '#2', right: 'b' })
  })

  it('takes entries without an id for what they are, not for one another', () => {
    const [one, other] = [readNotebook(text('date: 2026-01-01', 'date: 2026-01-02', 'date: 2026-01-03')), readNotebook(text('date: 2026-02-01', 'date: 2026-02-02', 'date: 2026-02-03'))]
    assert.deepEqual(stepPair(at(one, '#1'), at(other, '#1'), true), { left: '#1', right: '#2' })
    assert.deepEqual(stepPair(at(one, '#1'), at(one, '#2'), true), { left: '#2', right: '#3' })
  })

  it('is none where a side has no entries', () => {
    assert.equal(stepPair(at(readNotebook('')), at(history), true), undefined)
    assert.equal(stepPair(at(history), at(readNotebook('format: [')), true), undefined)
  })

  it('does not run on for ever in a loop of entries', () => {
    const loop = readNotebook(text('id: a, from: b', 'id: b, from: a', 'id: c, from: b'))
    assert.doesNotThrow(() => stepPair(at(loop, 'b'), at(loop, 'c'), false))
  })
})

describe('a side of which there is no text', () => {
  const missing = { notebook: readNotebook(''), file: 'mian:tern.setup.yaml', missing: 'there is no revision ‘mian’' }
  it('says why, and leaves the other side to be read alone', () => {
    const comparison = compareStates(missing, at(history, 'b'))
    assert.equal(comparison.left.missing, 'there is no revision ‘mian’')
    assert.equal(comparison.left.trouble, undefined)
    assert.equal(comparison.left.file, 'mian:tern.setup.yaml')
    assert.deepEqual([comparison.notes, comparison.between, comparison.findings], [[], [], { new: [], gone: [], notReadAgain: [], foundBefore: [] }])
    assert.ok(comparison.groups.flatMap(({ rows }) => rows).some(({ right }) => right.text === '7 clicks out'))
  })
  it('has no turn list, which says so', () => {
    assert.equal(turnList(missing, at(history)).refused, 'there is no revision ‘mian’')
  })
})
