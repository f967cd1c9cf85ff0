import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { summarizeNotebook, tallyWords, worstOf } from '../../../src/core/summary/summarizeNotebook'

const sum = (text: string, today = '2026-04-30') => {
  const notebook = readNotebook(text)
  return summarizeNotebook(notebook, checkNotebook(notebook), today)
}

const head = `format: 1
machine: {name: Tern 650, use: track, front: {travel: 120}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
`
const asFound = `  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_rebound: {left: 3 out, right: 6 out}, shock_rebound: 7 out}
`

describe('the summary of a notebook', () => {
  it('has the machine, the entries oldest first, and the days since the last one', () => {
    const { title, entries, days } = sum(`${head}${asFound}  - {id: run-1, date: 2026-04-20, settings: {fork_rebound: 3 out}, reason: right to left, verdict: keep}\n`)
    assert.deepEqual([title, entries.map(({ key }) => key), days], ['Tern 650', ['as-found', 'run-1'], 10])
    assert.deepEqual(entries[1], { key: 'run-1', id: 'run-1', date: '2026-04-20', reason: 'right to left', verdict: 'keep', asFound: false, baseline: false, findings: { error: 0, warning: 0, info: 0 } })
  })

  it('counts as open what is about the machine as it stands, whichever entry set it', () => {
    assert.deepEqual(sum(head + asFound).open, { error: 0, warning: 1, info: 0 })
    assert.equal(sum(`${head}${asFound}  - {id: run-1, date: 2026-04-20, settings: {shock_rebound: 8 out}, reason: try it}\n`).open.warning, 1, 'the legs still differ')
    assert.equal(sum(`${head}${asFound}  - {id: run-1, date: 2026-04-20, settings: {fork_rebound: 3 out}, reason: right to left}\n`).open.warning, 0, 'they were brought alike')
  })

  it('keeps what was found about an earlier entry with that entry', () => {
    const { entries, open } = sum(`${head}${asFound}  - {id: run-1, date: 2026-04-20, settings: {fork_rebound: 3 out}, reason: right to left}\n`)
    assert.deepEqual([entries[0]!.findings.warning, open.warning], [1, 0])
  })

  it('counts as open what is about no entry', () => {
    assert.equal(sum(`${head}${asFound}  - {id: run-1, date: 2026-04-20, settings: {fork_rebound: 3 out}, reason: right to left}\naccepted: [{finding: sag-window}]\n`).open.warning, 2, 'unknown rule, and accepted without a reason')
  })

  it('names the entry it comes from where that is not the one before', () => {
    const { entries } = sum(`${head}${asFound}  - {id: a, from: as-found}\n  - {id: b, from: as-found}\n`)
    assert.deepEqual(entries.map(({ from }) => from), [undefined, undefined, 'as-found'])
  })

  it('says where a text cannot be read, and never throws', () => {
    const broken = sum(`${head}${asFound}  - {id: "run\n`)
    assert.equal(typeof broken.trouble?.line, 'number')
    assert.equal(worstOf(broken.open), 'error')
    for (const text of ['', '- 1', 'entries: 3', 'machine: []', '\u0000', '{', 'entries: [null, 3, {}]']) assert.doesNotThrow(() => sum(text), text)
    assert.deepEqual(sum('').entries, [])
  })

  it('knows no days where the last entry has no day', () => {
    assert.equal('days' in sum(`${head}  - {id: a, date: 2026-04-18}\n  - {id: b}\n`), false)
    assert.equal('days' in sum(`${head}  - {id: a, date: in spring}\n`), false)
  })

  it('says counts in words, none as nothing', () => {
    assert.deepEqual([{ error: 1, warning: 2, info: 1 }, { error: 0, warning: 0, info: 0 }, { error: 2, warning: 1, info: 3 }].map(tallyWords), ['1 error, 2 warnings, 1 note', '', '2 errors, 1 warning, 3 notes'])
    assert.equal(worstOf({ error: 0, warning: 0, info: 0 }), undefined)
    assert.equal(worstOf({ error: 0, warning: 0, info: 2 }), 'info')
  })
})
