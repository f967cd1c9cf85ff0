import assert from 'node:assert/strict'
import fc from 'fast-check'
import { composeChanges } from '../../../../src/core/notebook/edits/composeChanges'
import { applyChanges, type TextChange } from '../../../../src/core/text'

/** Lists of changes that do not overlap, for a text of any length. */
const steps = fc.array(fc.array(fc.tuple(fc.nat(20), fc.nat(5), fc.string({ maxLength: 4 })), { maxLength: 4 }), { maxLength: 5 })

function apart(raw: readonly (readonly [number, number, string])[], length: number): TextChange[] {
  let at = 0
  return raw.flatMap(([skip, size, text]) => {
    const start = at + skip
    const end = start + size
    at = end + 1
    return end <= length ? [{ start, end, text }] : []
  })
}

describe('changes that follow one another', () => {
  it('come to one list that does the same to the first text', () => {
    fc.assert(fc.property(fc.string({ maxLength: 80 }), steps, (text, raw) => {
      let now = text
      const made = raw.map((each) => {
        const changes = apart(each, now.length)
        now = applyChanges(now, changes)
        return changes
      })
      const composed = composeChanges(text.length, made)
      assert.equal(applyChanges(text, composed), now)
      composed.forEach(({ start, end }, at) => assert.ok(start <= end && end <= text.length && (at === 0 || start > composed[at - 1]!.end)))
    }), { numRuns: 200 * Number(process.env['DETENT_RUNS'] ?? 1), seed: 3 })
  })

  it('keep the order of what is put into one place', () => {
    const inserts = [{ start: 1, end: 1, text: 'x' }, { start: 1, end: 1, text: 'y' }]
    assert.equal(applyChanges('ab', inserts), 'axyb')
    assert.deepEqual(composeChanges(2, [inserts]), [{ start: 1, end: 1, text: 'xy' }])
  })

  it('leave nothing of what was put in and taken out again', () => {
    assert.deepEqual(composeChanges(2, [[{ start: 1, end: 1, text: 'x' }], [{ start: 1, end: 2, text: '' }]]), [])
  })
})
