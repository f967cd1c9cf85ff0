import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { Finding } from '../../../src/core/finding'
import { byPlace } from '../../../src/core/rules/byPlace'

const finding = (start: number, end: number, at: number): Finding => ({ code: 'a', severity: 'info', message: String(at), range: { start, end } })

describe('findings by place', () => {
  it('come out as a stable sort has them', () => {
    const place = fc.tuple(fc.nat(9), fc.nat(3))
    fc.assert(fc.property(fc.array(place, { maxLength: 30 }), (places) => {
      const findings = places.map(([start, length], at) => finding(start, start + length, at))
      assert.deepEqual(byPlace(findings), [...findings].sort((a, b) => a.range.start - b.range.start || a.range.end - b.range.end))
    }), { numRuns: 500 })
  })
})
