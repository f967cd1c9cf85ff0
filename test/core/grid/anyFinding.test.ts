import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import { findingIds } from '../../../src/core/grid/findingIds'
import type { Gesture } from '../../../src/core/grid/gesture'
import type { Finding } from '../../../src/core/finding'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../src/core/text'
import { Choices } from './choices'
import { commentsOf, plainNotebook } from './plainFacts'
import { randomText } from './randomGesture'
import { writeRandomNotebook } from './writeRandomNotebook'

const more = Number(process.env['DETENT_RUNS'] ?? 1)
const runs = 25 * more
const tape = fc.array(fc.nat(9999), { maxLength: 700, size: 'max' })

/** Does something with every finding of a random notebook and looks at the text that comes of it. */
function withFindings(numbers: readonly number[], gestures: (finding: Finding, at: number, choices: Choices) => Gesture[], check: (text: string, after: string) => void): number {
  const choices = new Choices(numbers)
  const text = writeRandomNotebook(choices)
  const notebook = readNotebook(text)
  if (notebook.broken) return 0
  const findings = checkNotebook(notebook)
  return findings.flatMap((finding, at) => gestures(finding, findingIds(findings)[at]!, choices)).filter((gesture) => {
    const { changes } = applyGesture(notebook, findings, gesture)
    if (!changes) return false
    const after = applyChanges(text, changes)
    assert.equal(readNotebook(after).broken, undefined, `${JSON.stringify(gesture)}\n${text}\n---\n${after}`)
    check(text, after)
    return true
  }).length
}

describe('any finding of any notebook', () => {
  it('is accepted with any reason, behind everything else', function () {
    this.timeout(60_000 * more)
    let done = 0
    fc.assert(fc.property(tape, (numbers) => {
      done += withFindings(numbers, (_, finding, choices) => [{ kind: 'acceptFinding', finding, reason: `${randomText(choices)}x` }], (text, after) => {
        const [before, now] = [plainNotebook(text), plainNotebook(after)]
        assert.deepEqual(now.entries, before.entries)
        for (const [path, value] of Object.entries(before.rest)) assert.equal(now.rest[path], value)
        assert.deepEqual(commentsOf(after), commentsOf(text))
      })
    }), { numRuns: runs, seed: 8 })
    assert.ok(done > runs, `${done} done`)
  })

  it('has only fixes that leave a text that parses', function () {
    this.timeout(60_000 * more)
    let done = 0
    fc.assert(fc.property(tape, (numbers) => {
      done += withFindings(numbers, ({ fixes }, finding) => (fixes ?? []).map((_, fix) => ({ kind: 'applyFix', finding, fix })), () => undefined)
    }), { numRuns: runs, seed: 9 })
    assert.ok(done > runs / 4, `${done} done`)
  })
})
