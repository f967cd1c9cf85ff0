import assert from 'node:assert/strict'
import type { Gesture } from '../../../../src/core/grid/gesture'
import { edited, head, inEntry, refusal } from '../../grid/editing'

const add = (more: Partial<Extract<Gesture, { kind: 'addEntry' }>> = {}): Gesture => ({ kind: 'addEntry', date: '2026-04-18', id: 'n', ...more })
const rename = (id: string, column = 'a'): Gesture => ({ kind: 'setHeader', column, field: 'id', text: id })
const remove = (column: string): Gesture => ({ kind: 'removeEntry', column })
const item = '  - id: n\n    date: 2026-04-18\n'

describe('a new entry', () => {
  it('stands behind the last one', () => {
    assert.equal(inEntry('  - id: a\n    settings:\n      shock: 3   # as found\n', add()), `  - id: a\n    settings:\n      shock: 3   # as found\n${item}`)
  })

  it('has its reason in whatever way it is read', () => {
    assert.equal(inEntry('  - id: a\n', add({ reason: ' a: b ' })), `  - id: a\n${item}    reason: "a: b"\n`)
    assert.equal(inEntry('  - id: a\n', add({ reason: 'one\n\ntwo' })), `  - id: a\n${item}    reason: |-\n      one\n\n      two\n`)
  })

  it('names the one it comes from, unless that is the last', () => {
    assert.equal(inEntry('  - id: a\n  - id: b\n', add({ after: 'a' })), `  - id: a\n  - id: b\n${item}    from: a\n`)
    assert.equal(inEntry('  - id: a\n  - id: b\n', add({ after: 'b' })), `  - id: a\n  - id: b\n${item}`)
    assert.equal(refusal(`${head}entries:\n  - date: 2026-04-01\n  - id: b\n`, add({ after: '#1' })), 'only an entry with an id can be come from; give it one first')
  })

  it('has an id of its own', () => {
    assert.equal(refusal(`${head}entries:\n  - id: n\n`, add()), '‘n’ names another entry already')
    assert.equal(inEntry('  - id: run-9\n  - id: x\n', add({ id: ' ' })), '  - id: run-9\n  - id: x\n  - id: run-10\n    date: 2026-04-18\n')
    assert.equal(inEntry('  - id: a\n', add({ id: ' 12\n b' })), '  - id: a\n  - id: 12 b\n    date: 2026-04-18\n')
    assert.equal(inEntry('  - id: a\n', add({ id: '12' })), '  - id: a\n  - id: "12"\n    date: 2026-04-18\n')
  })

  it('is written as its neighbours are', () => {
    assert.equal(inEntry('-   id: a\n    date: 2026-04-01\n', add()), '-   id: a\n    date: 2026-04-01\n-   id: n\n    date: 2026-04-18\n')
    assert.equal(inEntry(' - id: a\n', add()), ' - id: a\n - id: n\n   date: 2026-04-18\n')
    assert.equal(inEntry('  - id: a\n\n  - id: b\n', add()), `  - id: a\n\n  - id: b\n\n${item}`)
    assert.equal(inEntry('  - # first\n    id: a\n', add()), `  - # first\n    id: a\n${item}`)
    assert.equal(inEntry('  - {id: a}\n', add()), `  - {id: a}\n${item}`)
  })

  it('leaves the comments to the entry they belong to', () => {
    assert.equal(inEntry('  - id: a\n    # to be continued\n# the end\n', add()), `  - id: a\n    # to be continued\n${item}# the end\n`)
  })

  it('begins the list wherever there is none', () => {
    const first = '  - id: n\n    date: 2026-04-18\n    as_found: true\n'
    const cases: [string, string][] = [
      ['', `entries:\n${first}`],
      ['# only this\n', `# only this\nentries:\n${first}`],
      ['format: 1', `format: 1\nentries:\n${first}`],
      ['format: 1\n...\n# behind\n', `format: 1\nentries:\n${first}...\n# behind\n`],
      ['---\nformat: 1\n', `---\nformat: 1\nentries:\n${first}`],
      ['\ufeffformat: 1\n', `\ufeffformat: 1\nentries:\n${first}`],
      ['\ufeff', `\ufeffentries:\n${first}`],
      ['  format: 1\n', `  format: 1\n  entries:\n${first.replaceAll(/^/gm, '  ').trimEnd()}\n`],
      ['{format: 1}\n', '{format: 1, entries: [{id: n, date: 2026-04-18, as_found: true}]}\n'],
      ['{}\n', '{entries: [{id: n, date: 2026-04-18, as_found: true}]}\n'],
      ['{format: 1, entries: []}\n', '{format: 1, entries: [{id: n, date: 2026-04-18, as_found: true}]}\n'],
      ['{format: 1, entries: }\n', '{format: 1, entries: [{id: n, date: 2026-04-18, as_found: true}] }\n'],
      ['{format: 1, entries}\n', '{format: 1, entries: [{id: n, date: 2026-04-18, as_found: true}]}\n'],
      ['entries:\nformat: 1\n', `entries:\n${first}format: 1\n`],
      ['entries: # none\nformat: 1\n', `entries: # none\n${first}format: 1\n`],
      ['entries:\n  # none\nformat: 1\n', `entries:\n  # none\n${first}format: 1\n`],
      ['entries: []\nformat: 1\n', `entries:\n${first}format: 1\n`],
      ['entries: []   # none\nformat: 1\n', `entries:   # none\n${first}format: 1\n`],
      ['entries: ~\nformat: 1\n', `entries:\n${first}format: 1\n`],
      ['entries: [ # none\n  ]\n', 'entries: [{id: n, date: 2026-04-18, as_found: true} # none\n  ]\n'],
      ['"entries":\n', `"entries":\n${first}`],
      ['notes: |+\n  x\n\n', `notes: |+\n  x\n\nentries:\n${first}`],
    ]
    for (const [before, after] of cases) assert.equal(edited(before, add()), after)
  })

  it('goes behind the last one in brackets', () => {
    assert.equal(edited('entries: [{id: a}, ] # all\n', add()), 'entries: [{id: a}, {id: n, date: 2026-04-18}, ] # all\n')
    assert.equal(edited('entries: [{id: a}]\n', add({ reason: 'one\ntwo, three' })), 'entries: [{id: a}, {id: n, date: 2026-04-18, reason: "one\\ntwo, three"}]\n')
  })

  it('is refused where there is something else', () => {
    assert.equal(refusal('entries: 3\n', add()), '`entries` must be a list; mend it in the text first')
    assert.equal(refusal('entries: {a: 1}\n', add()), '`entries` must be a list; mend it in the text first')
    assert.equal(refusal('- a\n', add()), 'this file holds something else than a notebook; mend it in the text first')
    assert.equal(refusal('old: &o [{id: a}]\nentries: *o\n', add()), 'this value is shared with another place; change it in the text')
    assert.match(refusal('? entries\n: - id: a\n', add()), /cannot be continued/)
  })
})

describe('an entry’s new name', () => {
  it('is written everywhere that names it', () => {
    const before = "  - id: a   # first\n  - {id: b, from: 'a'}\n  - id: c\n    from: b\naccepted:\n  - {finding: legs-differ, entry: a, reason: worn}\n"
    const after = "  - id: z 1   # first\n  - {id: b, from: 'z 1'}\n  - id: c\n    from: b\naccepted:\n  - {finding: legs-differ, entry: z 1, reason: worn}\n"
    assert.equal(inEntry(before, rename('z  1')), after)
  })

  it('is given to one that had none, and to what was accepted by its place', () => {
    const before = '  - date: 2026-04-18\naccepted:\n  - {finding: no-reason, entry: "#1", reason: x}\n'
    assert.equal(inEntry(before, rename('z', '#1')), '  - date: 2026-04-18\n    id: z\naccepted:\n  - {finding: no-reason, entry: "z", reason: x}\n')
  })

  it('is not guessed at where two share the old one', () => {
    assert.equal(inEntry('  - id: a\n  - id: a\n  - id: c\n    from: a\n', rename('z', '#2')), '  - id: a\n  - id: z\n  - id: c\n    from: a\n')
  })

  it('must be there, and no one else’s', () => {
    assert.match(refusal(`${head}entries:\n  - id: a\n`, rename(' ')), /needs an id/)
    assert.equal(refusal(`${head}entries:\n  - id: a\n  - id: b\n`, rename('b')), '‘b’ names another entry already')
  })

  it('may look like a place in the list and is not taken for one', () => {
    const text = '  - id: "#2"\n  - id: b\n'
    assert.equal(inEntry(text, rename('z', '#1')), '  - id: "z"\n  - id: b\n')
    assert.equal(refusal(`${head}entries:\n${text}`, rename('z', '#2')), 'there is no entry ‘#2’ any more')
  })
})

describe('an entry that goes', () => {
  it('takes its lines and the comments in them along', () => {
    assert.equal(inEntry('  - id: a\n  # about b\n  - id: b # one\n    # two\n    reason: x # three\n      # four\n  # the end\n', remove('b')), '  - id: a\n  # about b\n  # the end\n')
  })

  it('takes one of two blank lines that would meet', () => {
    assert.equal(inEntry('  - id: a\n\n  - id: b\n\nnotes: x\n', remove('b')), '  - id: a\n\nnotes: x\n')
  })

  it('leaves brackets in its place when it is the only one', () => {
    assert.equal(edited('entries:\n  - id: a\n    settings: {shock: 3}\nnotes: x\n', remove('a')), 'entries: []\nnotes: x\n')
    assert.equal(edited('entries: # all\n  - id: a\nnotes: x\n', remove('a')), 'entries: # all\n  []\nnotes: x\n')
    assert.equal(edited('entries: # all\n- id: a\n', remove('a')), 'entries: # all\n  []\n')
  })

  it('may be the last line of a text without a line end', () => {
    assert.equal(inEntry('  - id: a\n  - id: b', remove('b')), '  - id: a')
  })

  it('stays where another would stand differently without it', () => {
    const stays = (entries: string, column: string) => assert.match(refusal(`${head}entries:\n${entries}`, remove(column)), /would stand differently/)
    stays('  - id: a\n    settings: {shock: 3}\n  - id: b\n', 'a')
    stays('  - id: a\n  - id: b\n    from: a\n', 'a')
    stays('  - id: a\n  - id: b\n  - id: c\n    from: a\n  - id: d\n', 'c')
    assert.equal(inEntry('  - id: a\n    settings: {shock: 3}\n  - id: b\n  - id: c\n', remove('b')), '  - id: a\n    settings: {shock: 3}\n  - id: c\n')
  })

  it('stays where another place stands for a value in it', () => {
    assert.match(refusal(`${head}entries:\n  - id: a\n    settings: &s {shock: 3}\n  - id: b\n    from: nowhere\n    settings: *s\n`, remove('a')), /another place stands for a value/)
    assert.match(refusal('entries: [{id: a}, {id: b}]\n', remove('b')), /written in one line/)
  })
})
