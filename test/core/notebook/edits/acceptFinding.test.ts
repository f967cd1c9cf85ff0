import assert from 'node:assert/strict'
import { applyGesture } from '../../../../src/core/grid/applyGesture'
import { findingIds } from '../../../../src/core/grid/findingIds'
import { readNotebook } from '../../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../../src/core/text'
import { head } from '../../grid/editing'

const text = `${head}entries:\n  - id: a\n    settings: {fork: {left: 3, right: 6}}\n`

/** Accepts the first finding of a code and gives the text; the finding must be gone from it. */
function accepted(before: string, code: string, reason: string): string {
  const notebook = readNotebook(before)
  const findings = checkNotebook(notebook)
  const finding = findingIds(findings)[findings.findIndex((each) => each.code === code)]!
  const answer = applyGesture(notebook, findings, { kind: 'acceptFinding', finding, reason })
  if (answer.changes === undefined) return answer.refused
  const after = applyChanges(before, answer.changes)
  assert.deepEqual(checkNotebook(readNotebook(after)).filter((each) => each.code === code), [])
  return after
}

describe('accepting a finding', () => {
  it('begins the list of what is accepted, with the reason', () => {
    assert.equal(accepted(text, 'legs-differ', ' worn: known '), `${text}accepted:\n  - finding: legs-differ\n    entry: a\n    about: fork/right\n    reason: "worn: known"\n`)
  })

  it('goes behind what was accepted before', () => {
    const before = `${text}accepted:\n- {finding: no-reason, reason: x}   # first\n`
    assert.equal(accepted(before, 'legs-differ', 'one\ntwo'), `${before}- finding: legs-differ\n  entry: a\n  about: fork/right\n  reason: |-\n    one\n    two\n`)
  })

  it('names an entry without an id by its place', () => {
    assert.match(accepted(text.replace('id: a', 'date: 2026-04-18'), 'legs-differ', 'x'), /entry: "#1"\n/)
  })

  it('needs a reason, and a finding', () => {
    assert.match(accepted(text, 'legs-differ', ' '), /accepted with a reason/)
    assert.equal(accepted(text, 'no-such-code', 'x'), 'this finding is gone')
  })
})
