import assert from 'node:assert/strict'
import { nearestOnLine } from '../../../src/core/derived/nearestOnLine'
import { factIn } from '../../../src/core/notebook/machine'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const season = (count: number, said: Record<number, string> = {}) => `format: 1\nentries:\n${Array.from({ length: count }, (_, at) => `  - id: run-${at}\n    ${said[at] ?? 'reason: on'}\n`).join('')}`
const tyres = (mm: number) => `tyres: {front_radius: ${mm}}`

describe('what holds until another entry of the line says otherwise', () => {
  let asked = 0
  const radiusOf = nearestOnLine((entry) => {
    asked++
    return factIn(entry.node, ['tyres', 'front_radius'], 'length')?.base
  })

  it('is what the nearest entry says, and nothing before any does', () => {
    const { entries } = readNotebook(season(6, { 1: tyres(300), 4: tyres(305) }))
    assert.deepEqual(entries.map((entry) => radiusOf(entry)), [undefined, 300, 300, 300, 305, 305])
  })
  it('is looked for in each entry a fixed number of times, however many ask and however long the line is', () => {
    const { entries } = readNotebook(season(5000, { 0: tyres(300) }))
    asked = 0
    assert.equal(radiusOf(entries.at(-1)!), 300)
    for (const entry of entries) radiusOf(entry)
    assert.ok(asked <= 2 * entries.length, String(asked))
  })
  it('is another in all entries below once it is said otherwise further up, and follows a branch', () => {
    const before = readNotebook(season(5, { 0: tyres(300), 3: 'from: run-0' }))
    assert.deepEqual(before.entries.map((entry) => radiusOf(entry)), [300, 300, 300, 300, 300])
    const after = readNotebook(season(5, { 0: tyres(300), 1: tyres(310), 3: 'from: run-0' }), before)
    assert.deepEqual(after.entries.map((entry) => radiusOf(entry)), [300, 310, 310, 300, 300])
    const again = readNotebook(season(5, { 0: tyres(299), 1: tyres(310), 3: 'from: run-0' }), after)
    assert.deepEqual(again.entries.map((entry) => radiusOf(entry)), [299, 310, 310, 299, 299])
    assert.deepEqual(readNotebook(season(5, { 0: tyres(299) }), again).entries.map((entry) => radiusOf(entry)), [299, 299, 299, 299, 299])
  })
})
