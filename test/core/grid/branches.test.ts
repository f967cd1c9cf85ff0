import assert from 'node:assert/strict'
import fc from 'fast-check'
import { branchesOf } from '../../../src/core/grid/branches'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { trials } from '../compare/randomStates'

/** Entries named after letters: `b<a` comes from a, `b` from the one before. */
const notebook = (...entries: string[]) => readNotebook(`format: 1\nentries:\n${entries.map((each) => `  - id: ${each.split('<')[0]}\n${each.includes('<') ? `    from: ${each.split('<')[1]}\n` : ''}`).join('')}`)
const branches = (...entries: string[]) => branchesOf(notebook(...entries).entries)
/** A column as `lane<from |passing >heirs`. */
const drawn = (...entries: string[]) => branches(...entries)!.map(({ lane, from, begins, passing, heirs }) => `${lane}${from ? `<${from.column}${from.drawn ? '' : '?'}` : ''}${begins ? '!' : ''}${passing.length > 0 ? `|${passing.join()}` : ''}${heirs.length > 0 ? `>${heirs.join()}` : ''}`)

describe('the branches of a history', () => {
  it('are none where every entry comes from the one before', () => {
    assert.equal(branches('a', 'b', 'c'), undefined)
    assert.equal(branches('a', 'b<a', 'c<b'), undefined)
    assert.equal(buildGrid(notebook('a', 'b'), []).columns.some((column) => 'branch' in column), false)
  })

  it('show A-B-A: a line that passes what was tried, which is left without heirs', () => {
    assert.deepEqual(drawn('a', 'b', 'c<a', 'd'), ['0>b,c', '0|1', '1<a>d', '1'])
    assert.deepEqual(drawn('a', 'b', 'c', 'd<a', 'e<b'), ['0>b,d', '0|1>c,e', '0|1,2', '1<a|2', '2<b'])
  })

  it('take a lane again that has become free', () => {
    assert.deepEqual(drawn('a', 'b', 'c<a', 'd', 'e<c', 'f'), ['0>b,c', '0|1', '1<a>d,e', '1|0', '0<c>f', '0'])
  })

  it('begin anew where nothing is known of what an entry comes from, and only name one that stands later', () => {
    assert.deepEqual(drawn('a', 'b<gone', 'c'), ['0', '1!>c', '1'])
    assert.deepEqual(drawn('a', 'b<c', 'c<a'), ['0>c', '0<c?|1', '1<a>b'])
  })

  it('are not drawn in more lanes than can be told apart', () => {
    const all = branches('a', ...Array.from({ length: 20 }, (_, n) => `b${n}<a`))!
    assert.equal(Math.max(...all.map(({ lane }) => lane)), 5)
    assert.deepEqual(all.at(-1)!.from, { column: 'a', drawn: false })
    assert.equal(all[0]!.heirs.length, 20)
  })

  it('never run a line through an entry, or two through one place', () => {
    fc.assert(fc.property(fc.array(fc.nat(30), { minLength: 2, maxLength: 30 }), (parents) => {
      const all = branches(...parents.map((parent, at) => (at === 0 || parent >= at ? `e${at}` : `e${at}<e${parent}`)))
      for (const { lane, passing } of all ?? []) {
        assert.equal(new Set(passing).size, passing.length)
        assert.ok(!passing.includes(lane))
      }
    }), trials(200))
  })
})
