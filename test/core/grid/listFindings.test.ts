import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { Finding } from '../../../src/core/finding'
import { differing } from '../../../src/core/grid/differing'
import { findingIds } from '../../../src/core/grid/findingIds'
import { listFindings } from '../../../src/core/grid/listFindings'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const notebook = readNotebook(`format: 1\nentries:\n${Array.from({ length: 9 }, (_, at) => `  - {id: run-${at}, date: 2026-04-18}\n`).join('')}`)

/** A finding of one of few rules about one of few cells, so that some ask for the same number; every fifth is about no entry. */
const findingOf = (seed: number, at: number): Finding => ({
  code: `rule-${seed % 3}`, severity: 'warning', message: `number ${seed}`, range: { start: at, end: at + 1 },
  ...(seed % 5 === 0 ? {} : { place: { entry: `run-${seed % 9}`, ...(seed % 2 === 0 ? { row: 'verdict' } : {}) } }),
})

describe('differing', () => {
  it('tells the stretches that make one list of another', () => {
    fc.assert(fc.property(fc.array(fc.nat(30), { maxLength: 60 }), fc.array(fc.tuple(fc.nat(60), fc.nat(3), fc.array(fc.nat(30), { maxLength: 3 })), { maxLength: 5 }), (before, edits) => {
      const now = [...before]
      for (const [at, went, came] of edits) now.splice(at, went, ...came)
      const gaps = differing(before, now)
      assert.ok(gaps)
      const made = [...before]
      for (const { at, went, to, came } of [...gaps].reverse()) made.splice(at, went, ...now.slice(to, to + came))
      assert.deepEqual(made, now)
    }))
  })

  it('gives up where they differ for long or in many places, and has nothing to tell of what is alike', () => {
    const many = Array.from({ length: 500 }, (_, at) => at)
    assert.equal(differing(many, many.map((each) => each + 1000)), undefined)
    assert.equal(differing(many, many.filter((each) => each % 2 === 0)), undefined)
    assert.deepEqual(differing(many, [...many]), [])
  })
})

describe('listFindings', () => {
  it('lists what it lists of a notebook that it has never seen, whatever came and went', () => {
    const edit = fc.record({ at: fc.nat(80), went: fc.nat(4), came: fc.array(fc.nat(200), { maxLength: 4 }) })
    fc.assert(fc.property(fc.array(fc.nat(200), { maxLength: 80 }), fc.array(fc.array(edit, { maxLength: 3 }), { maxLength: 6 }), (seeds, versions) => {
      let findings = seeds.map(findingOf)
      listFindings(findings, notebook)
      for (const edits of versions) {
        findings = [...findings]
        for (const { at, went, came } of edits) findings.splice(at, went, ...came.map(findingOf))
        const { shown, about } = listFindings(findings, notebook)
        const anew = findings.map((finding) => ({ ...finding }))
        assert.deepEqual(shown.map(({ id }) => id), findingIds(findings))
        const { shown: wanted, about: wantedAbout } = listFindings(anew, notebook)
        assert.deepEqual([shown, about], [wanted, wantedAbout])
        listFindings(findings, notebook)
      }
    }), { numRuns: 300 })
  })

  it('keeps what is the same', () => {
    const findings = [1, 2, 3, 4, 6, 7].map(findingOf)
    const before = listFindings(findings, notebook)
    const after = listFindings([...findings.slice(0, 5), findingOf(8, 5)], notebook)
    assert.deepEqual(after.shown.map((finding, at) => finding === before.shown[at]), [true, true, true, true, true, false])
    assert.equal(after.about.get('run-1'), before.about.get('run-1'))
  })
})
