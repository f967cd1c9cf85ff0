import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { Finding } from '../../../src/core/finding'
import { byPlace, oneAfterTheOther, putAmong } from '../../../src/core/rules/byPlace'

const finding = (start: number, end: number, at: number): Finding => ({ code: 'a', severity: 'info', message: String(at), range: { start, end } })
const sorted = (findings: readonly Finding[]) => [...findings].sort((a, b) => a.range.start - b.range.start || a.range.end - b.range.end)

describe('findings by place', () => {
  it('come out as a stable sort has them', () => {
    const place = fc.tuple(fc.nat(9), fc.nat(3))
    fc.assert(fc.property(fc.array(place, { maxLength: 30 }), (places) => {
      const findings = places.map(([start, length], at) => finding(start, start + length, at))
      assert.deepEqual(byPlace(findings), [...findings].sort((a, b) => a.range.start - b.range.start || a.range.end - b.range.end))
    }), { numRuns: 500 })
  })

  it('come out so where most of them are in order already', () => {
    const places = fc.array(fc.tuple(fc.nat(9), fc.nat(3)), { maxLength: 30 })
    fc.assert(fc.property(places, places, (some, more) => {
      const inOrder = sorted(some.map(([start, length], at) => finding(start, start + length, at)))
      const others = more.map(([start, length], at) => finding(start, start + length, 100 + at))
      assert.deepEqual(putAmong(inOrder, others), sorted([...inOrder, ...others]))
    }), { numRuns: 500 })
  })

  it('may be as many as they like', () => {
    const many = Array.from({ length: 200_000 }, (_, at) => finding(at, at + 1, at))
    assert.equal(putAmong(many, many).length, 400_000)
  })

  it('are known to be in order, entry by entry', () => {
    const [one, two] = [finding(4, 5, 0), finding(5, 6, 1)]
    assert.deepEqual(oneAfterTheOther([[one], [], [one, two]]), { all: [one, one, two], inOrder: true })
    assert.deepEqual(oneAfterTheOther([[two], [one]]), { all: [two, one], inOrder: false })
  })
})
