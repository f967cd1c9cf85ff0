import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { merge } from './merging'

const head = 'format: 1\nadjusters:\n  rebound: {on: shock, controls: rebound, counts: clicks}\n  preload: {on: shock, controls: preload, counts: turns}\nentries:\n'
/** An entry of one line a thing; without an id where that is empty. */
const entry = (id: string, day: number, more = '') => `  - ${id === '' ? '' : `id: ${id}\n    `}date: 2026-04-${10 + day}\n    settings: {rebound: ${day}}\n${more}`
const [a, b, c] = [entry('a', 1), entry('b', 2), entry('c', 3)]
const notebook = (...entries: string[]) => head + entries.join('')

/** What each entry of the merged text comes from, what it says that it comes from, and what is in dispute. */
function merged(base: string, ours: string, theirs: string) {
  const { text, conflicts } = merge(base, ours, theirs)
  const comes = conflicts.length > 0 ? [] : readNotebook(text).entries.map((each) => `${each.key} < ${each.parent?.key ?? '-'}${each.from ? ' as written' : ''}`)
  return { text, comes, about: conflicts.map(({ message }) => message) }
}

describe('what an entry comes from, after a merge', () => {
  it('is what it came from on the side that put another one above it', () => {
    const ours = notebook(a, b, entry('n', 2), c)
    assert.deepEqual(merged(notebook(a, b, c), ours, notebook(a, b, entry('c', 3, '    reason: theirs\n'))).comes, ['a < -', 'b < a', 'n < b', 'c < n'])
  })

  it('is what one side wrote, beside what the other put above it', () => {
    const theirs = notebook(a, b, entry('c', 3, '    from: a\n'))
    assert.deepEqual(merged(notebook(a, b, c), notebook(a, b, entry('n', 2), c), theirs).comes, ['a < -', 'b < a', 'n < b', 'c < a as written'])
    assert.deepEqual(merged(notebook(a, b, c), theirs, notebook(a, b, entry('n', 2), c)).comes, ['a < -', 'b < a', 'n < b', 'c < a as written'])
  })

  it('is written where the merge puts another one above it, into the one that stands below', () => {
    const { text, comes } = merged(notebook(a), notebook(a, entry('o', 3)), notebook(a, entry('t', 2), entry('u', 4)))
    assert.deepEqual(comes, ['a < -', 't < a', 'o < a as written', 'u < t as written'])
    assert.equal(text.match(/from:/g)?.length, 2)
  })

  it('is what it came to on the side that took out the one between', () => {
    assert.deepEqual(merged(notebook(a, b, c), notebook(a, c), notebook(a, b, entry('c', 3, '    reason: theirs\n'))).comes, ['a < -', 'c < a'])
  })

  it('is left to a person where one side took out what the other added to, with all that was added there', () => {
    const { about, text } = merged(notebook(a, b), notebook(a, b, entry('o', 3), entry('p', 4)), notebook(a))
    assert.deepEqual(about, ['entry ‘o’, entry ‘p’: say with `from` what each comes from'])
    assert.match(text, /<{7} ours\n {2}- id: o\n[^]* {2}- id: p\n[^]*={7}\n>{7} theirs\n/)
    assert.doesNotMatch(text, /from:/)
  })

  it('is left to a person where it has no name to be written', () => {
    const nameless = entry('', 1)
    assert.deepEqual(merged(notebook(nameless), notebook(nameless, entry('o', 3)), notebook(nameless, entry('t', 2))).about, ['entry ‘t’, entry ‘o’: say with `from` what each comes from'])
  })

  it('is not asked of an entry that one side took out and the other left as it was', () => {
    assert.deepEqual(merged(notebook(a, b, c), notebook(a, b), notebook(a, b, c, entry('t', 4, '    from: a\n'))).comes, ['a < -', 'b < a', 't < a as written'])
  })

  it('stays with an entry that one side took out and the other changed, which is marked', () => {
    const { about, text } = merged(notebook(a, b, c), notebook(a, c), notebook(a, entry('b', 2, '    reason: theirs\n'), c))
    assert.deepEqual(about, ['one side took out entry ‘b’, which the other changed'])
    assert.match(text, /id: c\n(?: {4}.*\n)* {4}from: a\n/)
  })
})
