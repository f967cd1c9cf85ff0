import assert from 'node:assert/strict'
import { eachCase, edited, head, inEntry, refusal, set } from '../../grid/editing'
import { asProse, setPath } from '../../../../src/core/notebook/edits/setPath'
import { readNotebook } from '../../../../src/core/notebook/readNotebook'

describe('writing words', () => {
  const said = (value: string) => `  - id: a\n    reason: ${value}\n    verdict: keep\n`
  eachCase([
    ['leaves plain words plain', said('x'), set('reason', 'steadier on the brakes, still dives'), said('steadier on the brakes, still dives')],
    ['quotes a colon', said('x'), set('reason', 'a: b'), said('"a: b"')],
    ['quotes a hash', said('x'), set('reason', 'a #b'), said('"a #b"')],
    ['quotes what would be a number', said('x'), set('reason', '12'), said('"12"')],
    ['quotes what would be nothing', said('x'), set('reason', 'null'), said('"null"')],
    ['keeps single quotes and doubles those within', said("'x'"), set('reason', "can't"), said("'can''t'")],
    ['keeps double quotes and escapes those within', said('"x"'), set('reason', 'a "b" \\ c'), said('"a \\"b\\" \\\\ c"')],
    ['leaves quotes and strokes within plain words', said('x'), set('reason', 'a "b" \\ c'), said('a "b" \\ c')],
    ['loses the blanks around them', said('x'), set('reason', '  two  words  '), said('two  words')],
    ['keeps every script', said('x'), set('reason', 'größer, 日本語, 𝄞'), said('größer, 日本語, 𝄞')],
    ['escapes what nobody can see', said('x'), set('reason', 'a\u2028b\0'), said('"a\\u2028b\\u0000"')],
    ['writes several lines as a block', said('x'), set('reason', 'one\n\n  two: #2'), said('|-\n      one\n\n        two: #2')],
    ['keeps the comment behind when several lines come', said('x   # why'), set('reason', 'one\ntwo'), said('|-   # why\n      one\n      two')],
    ['keeps the comment behind a block when one line comes', said('|   # why\n      one\n      two'), set('reason', 'three'), said('three   # why')],
    ['keeps the comment behind a block when others come', said('>-   # why\n      one\n      two'), set('reason', 'three\nfour'), said('|-   # why\n      three\n      four')],
    ['replaces a block with its trailing blanks', said('|\n      one  '), set('reason', 'two\nthree'), said('|-\n      two\n      three')],
    ['replaces a folded text', said('one\n      two'), set('reason', 'three'), said('three')],
    ['replaces quotes over several lines', said('"one\n      two" # why'), set('reason', 'a\nb'), said('|- # why\n      a\n      b')],
    ['takes line ends of any kind', said('x'), set('reason', 'one\r\ntwo\rthree'), said('|-\n      one\n      two\n      three')],
    ['quotes several lines in braces', '  - {id: a, reason: x, verdict: keep}\n', set('reason', 'one\ntwo'), '  - {id: a, reason: "one\\ntwo", verdict: keep}\n'],
    ['quotes a comma in braces', '  - {id: a, reason: x}\n', set('reason', 'one, two'), '  - {id: a, reason: "one, two"}\n'],
    ['quotes several lines above a comment that they would swallow', '  - id: a\n    reason: x\n        # really\n', set('reason', 'one\ntwo'), '  - id: a\n    reason: "one\\ntwo"\n        # really\n'],
    ['writes several lines behind a key without a value', '  - id: a\n    reason: # why\n    verdict: keep\n', set('reason', 'one\ntwo'), '  - id: a\n    reason: |- # why\n      one\n      two\n    verdict: keep\n'],
    ['writes several lines below a key', '  - id: a\n    reason:\n      old\n    verdict: keep\n', set('reason', 'one\ntwo'), '  - id: a\n    reason:\n      |-\n      one\n      two\n    verdict: keep\n'],
    ['keeps a tab by quoting the lines', said('x'), set('reason', 'one\n\ttwo'), said('"one\\n\\ttwo"')],
    ['puts a reason before the ride that came of it', '  - id: a\n    ride: {laps: 6}\n', set('reason', 'x'), '  - id: a\n    reason: x\n    ride: {laps: 6}\n'],
    ['puts a new key behind the first, whatever that is', '  - ours: 1\n    id: a\n', set('notes', 'x'), '  - ours: 1\n    id: a\n    notes: x\n'],
    ['clears a block with its lines and keeps its comment', said('|  # why\n      one\n      two'), set('reason', ''), '  - id: a\n    # why\n    verdict: keep\n'],
    ['clears one of a group and keeps the group', '  - id: a\n    ride: {laps: 6, felt: good}\n', set('ride.felt', ''), '  - id: a\n    ride: {laps: 6}\n'],
    ['clears a group with its last value', '  - id: a\n    ride: {felt: good}\n    notes: x\n', set('ride.felt', ''), '  - id: a\n    notes: x\n'],
    ['leaves a comment below a cleared value where a block would swallow it', '  - id: a\n    reason: |\n      because\n    verdict: keep\n        # after all\n', set('verdict', ''), '  - id: a\n    reason: |\n      because\n    # after all\n'],
  ])

  it('changes nothing where they stand so already, in whatever quotes', () => {
    for (const value of ["'can''t'", '"can\\u0027t"', "|\n      can't", ">-\n      can't"]) assert.equal(inEntry(said(value), set('reason', "can't")), said(value))
  })

  it('takes a very long text', () => {
    const long = 'word '.repeat(20_000).trim()
    assert.equal(inEntry(said('x'), set('reason', long)), said(long))
  })

  it('refuses to write over a group', () => {
    assert.equal(refusal(`${head}entries:\n  - id: a\n    reason: {why: x}\n`, set('reason', 'y')), '`reason` holds a group of values here; change it in the text')
    assert.equal(refusal(`${head}entries:\n  - id: a\n    reason: [x]\n`, set('reason', '')), '`reason` holds a group of values here; change it in the text')
  })
})

describe('the place of a new value', () => {
  it('is right behind a byte order mark too', () => {
    const text = '\ufeffentries:\n- id: a\n'
    assert.equal(edited(text, set('notes', 'x')), '\ufeffentries:\n- id: a\n  notes: x\n')
  })

  it('stands under keys of an indented document', () => {
    assert.equal(edited('  entries:\n    - id: a\n', set('notes', 'x')), '  entries:\n    - id: a\n      notes: x\n')
  })

  it('stands under a key that is anchored, by the others', () => {
    assert.equal(inEntry('  - &k id: a\n    date: 2026-04-18\n', set('notes', 'x')), '  - &k id: a\n    date: 2026-04-18\n    notes: x\n')
  })

  it('is refused where no key shows the column', () => {
    assert.match(refusal(`${head}entries:\n  - &k id: a\n`, set('notes', 'x')), /cannot be continued/)
    assert.match(refusal(`${head}entries: [id: a]\n`, set('notes', 'x')), /without braces/)
  })

  it('is refused for a name that YAML cannot hold', () => {
    const { text, entries } = readNotebook(`${head}entries:\n  - id: a\n`)
    assert.throws(() => setPath(text, entries[0]!.node, ['remarks', 'x'.repeat(1001)], 'y', asProse), /too long for a key/)
  })
})
