import assert from 'node:assert/strict'
import fc from 'fast-check'
import { baselineFor } from '../../../src/core/derived/baselineFor'
import type { Entry } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

/** An entry of a made-up season: whether it is a baseline, and which one it comes from, where not from the one before. */
const seasons = fc.array(fc.record({ baseline: fc.boolean(), from: fc.option(fc.nat(20), { nil: undefined }) }), { minLength: 1, maxLength: 12 })

type Season = { baseline: boolean; from: number | undefined }[]

const textOf = (season: Season) => `format: 1\nmachine: {name: Tern 650}\nentries:\n${season.map(({ baseline, from }, at) =>
  `  - {id: run-${at}, date: 2026-04-18${baseline ? ', baseline: true' : ''}${from !== undefined && from < at ? `, from: run-${from}` : ''}}\n`).join('')}`

/** Step by step, as the definition says. */
function steppedTo(entry: Entry): Entry | undefined {
  for (let at = entry.parent; at; at = at.parent) if (at.baseline) return at
  return undefined
}

describe('the baseline before an entry', () => {
  it('is the last one on the line it comes from, in whichever order it is asked for, and after an edit too', () => {
    fc.assert(fc.property(seasons, seasons, fc.array(fc.nat(11)), (before, after, order) => {
      const first = readNotebook(textOf(before))
      for (const notebook of [first, readNotebook(textOf(after), first)]) {
        for (const entry of [...order.flatMap((at) => notebook.entries[at] ?? []), ...notebook.entries]) assert.equal(baselineFor(entry), steppedTo(entry))
      }
    }))
  })
})
