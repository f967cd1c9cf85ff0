import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { applyChanges } from '../../../src/core/text'
import { occurrencesIn } from '../../../src/language/names/occurrences'
import { findRenamable, renameAt } from '../../../src/language/names/rename'
import { marked } from '../marked'

/** What a text becomes, or the sentence that refuses it. */
function check(source: string, name: string, expected: string) {
  const { text, offset } = marked(source)
  const renaming = renameAt(readNotebook(text), offset, name)
  assert.equal(renaming.changes ? applyChanges(text, renaming.changes) : renaming.refused, expected)
}

const machine = 'adjusters:\n  a: {on: fork, legs: [left, right], controls: rebound, counts: clicks}\n  b: {on: shock, controls: rebound, counts: clicks}\n'

describe('renameAt', () => {
  it('renames an adjuster where it is defined and set', () =>
    check(`${machine.replace('a:', '|a:')}entries:\n  - settings: {a: 3}\n`, 'fork_rebound', `${machine.replace('a:', 'fork_rebound:')}entries:\n  - settings: {fork_rebound: 3}\n`))
  it('renames it from where it is set', () => check(`${machine}entries:\n  - settings: {a|: 3}\n`, 'c', `${machine.replace('a:', 'c:')}entries:\n  - settings: {c: 3}\n`))
  it('renames it in remarks and acceptances, legs kept', () =>
    check(`${machine}entries:\n  - remarks: {|a: x, a/left: y}\naccepted:\n  - {finding: legs-differ, about: a/right, reason: z}\n  - about: settings/a\n`, 'c',
      `${machine.replace('a:', 'c:')}entries:\n  - remarks: {c: x, c/left: y}\naccepted:\n  - {finding: legs-differ, about: c/right, reason: z}\n  - about: settings/c\n`))
  it('renames it where another sits inside it', () =>
    check(`${machine.replace('a:', '|a:')}  c: {on: fork, controls: preload, counts: turns, inside: a}\n`, 'hex', `${machine.replace('a:', 'hex:')}  c: {on: fork, controls: preload, counts: turns, inside: hex}\n`))
  it('leaves words alone that only look like it', () => check(`${machine}entries:\n  - id: a\n    settings: {|a: 3}\n    reason: a\n`, 'c', `${machine.replace('a:', 'c:')}entries:\n  - id: a\n    settings: {c: 3}\n    reason: a\n`))
  it('keeps the kind of quotes', () => check(`${machine.replace('a:', '"a":')}entries:\n  - settings: {'|a': 3}\n`, 'c', `${machine.replace('a:', '"c":')}entries:\n  - settings: {'c': 3}\n`))
  it('takes letters of any language', () => check(`${machine.replace('a:', '|a:')}`, 'dämpfung', machine.replace('a:', 'dämpfung:')))
  it('quotes a word that YAML would take for something else', () => check(`${machine.replace('a:', '|a:')}`, 'null', machine.replace('a:', '"null":')))
  it('takes the same name for no change', () => check(machine.replace('a:', '|a:'), ' a ', machine))

  it('renames an entry, where it comes from and in acceptances', () =>
    check('entries:\n  - id: |x\n  - id: y\n    from: x\naccepted:\n  - {finding: no-reason, entry: x, reason: z}\n', 'found',
      'entries:\n  - id: found\n  - id: y\n    from: found\naccepted:\n  - {finding: no-reason, entry: found, reason: z}\n'))
  it('renames an entry from where it is named', () => check('entries:\n  - id: x\n  - id: y\n    from: |x\n', 'found', 'entries:\n  - id: found\n  - id: y\n    from: found\n'))
  it('writes a number so that it stays a name', () => check('entries:\n  - id: |x\n', '12', 'entries:\n  - id: "12"\n'))

  it('refuses an empty name', () => check(machine.replace('a:', '|a:'), ' ', 'An adjuster needs a name.'))
  it('refuses a name with a stroke, which sets the leg apart', () => check(machine.replace('a:', '|a:'), 'a/b', '‘a/b’ is no name for an adjuster: write letters, digits, ‘_’ and ‘-’, a letter first.'))
  it('refuses a name that is taken', () => check(machine.replace('a:', '|a:'), 'b', '‘b’ is in this notebook already.'))
  it('refuses a name that a setting uses, which would be taken for this', () => check(`${machine.replace('a:', '|a:')}entries:\n  - settings: {c: 1}\n`, 'c', '‘c’ is in this notebook already.'))
  it('refuses the name of something else that remarks can be about', () => check(machine.replace('a:', '|a:'), 'verdict', '‘verdict’ is the name of something else in every entry.'))
  it('refuses to rename what is not defined', () => check('entries:\n  - settings: {|c: 1}\n', 'd', '‘c’ is no adjuster of this machine.'))
  it('refuses to rename anything else', () => check('form|at: 1\n', 'd', 'Only adjusters and entries can be renamed.'))
  it('refuses an entry’s name that is taken', () => check('entries:\n  - id: |x\n  - id: y\n', 'y', '‘y’ is in this notebook already.'))
  it('refuses an entry’s name that looks like a place', () => check('entries:\n  - id: |x\n', '#2', 'A ‘#’ sets a file apart from its entry, so it cannot be in an entry’s name.'))
  it('refuses an entry’s name of two lines', () => check('entries:\n  - id: |x\n', 'a\nb', 'An entry’s name is one line.'))
  it('refuses in a broken text', () => {
    const { text, offset } = marked(`${machine.replace('a:', '|a:')}entries: [\n`)
    assert.match(renameAt(readNotebook(text), offset, 'c').refused!, /^The text has an error/)
  })
  it('refuses in a newer format', () => check(`format: 2\n${machine.replace('a:', '|a:')}`, 'c', 'This notebook is written in a newer format. Update Detent to edit it.'))
  it('refuses where the id belongs to an anchor', () => check('entries:\n  - id: &n |x\n    notes: *n\n', 'y', 'It cannot be renamed: this value is shared with another place; change it in the text.'))

  it('names what would be renamed', () => {
    const { text, offset } = marked(`${machine}entries:\n  - remarks: {a|/left: x}\n`)
    const found = findRenamable(readNotebook(text), offset)
    assert.ok(found.refused === undefined)
    assert.deepEqual([found.name, text.slice(found.range.start, found.range.end)], ['a', 'a'])
  })

  for (const file of readdirSync('samples').filter((name) => name.endsWith('.yaml'))) {
    it(`changes nothing but names in ${file}`, () => {
      const text = readFileSync(`samples/${file}`, 'utf8')
      const notebook = readNotebook(text)
      const states = (read: typeof notebook) => read.entries.map(({ state }) => [...state.values()].map(({ setting, setIn }) => [setting.node.text, setIn.index]))
      const defined = occurrencesIn(notebook).filter(({ role }) => role === 'definition')
      for (const definition of [defined[0]!, defined[1]!, defined.at(-2)!]) {
        const { changes } = renameAt(notebook, definition.range.start, 'somethingNew')
        assert.ok(changes, definition.name)
        const after = applyChanges(text, changes)
        const read = readNotebook(after)
        assert.deepEqual(states(read), states(notebook), definition.name)
        assert.equal(read.findings.length, notebook.findings.length)
        assert.equal(occurrencesIn(read).filter(({ of, name }) => of === definition.of && name === definition.name).length, 0)
        assert.equal(occurrencesIn(read).length, occurrencesIn(notebook).length)
      }
    })
  }
})
