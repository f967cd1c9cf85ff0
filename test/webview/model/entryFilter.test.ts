import assert from 'node:assert/strict'
import type { Column } from '../../../src/core/grid/view'
import { entryFilter } from '../../../webview/grid/model/entryFilter'

const column = (more: Partial<Column>): Column => ({ key: 'a', id: 'run-1', date: '2026-04-18', reason: 'wet track', asFound: false, baseline: false, verdict: 'keep', session: 'Friday afternoon', findings: [], ...more })
const passes = (words: string, more: Partial<Column> = {}) => entryFilter(words)(column(more))

describe('a filter of entries', () => {
  it('finds words anywhere, whatever their case, all of them', () => {
    for (const words of ['', 'WET', 'wet keep', 'friday', 'run-1 2026-04']) assert.ok(passes(words), words)
    for (const words of ['dry', 'wet dry']) assert.ok(!passes(words), words)
  })
  it('finds them by name, several in quotes', () => {
    for (const words of ['verdict:keep', 'Session:"friday after"', 'date:2026-04', 'name:run reason:track']) assert.ok(passes(words), words)
    for (const words of ['verdict:wet', 'session:keep', 'session:"friday morning"']) assert.ok(!passes(words), words)
    assert.ok(!passes('session:x', { session: undefined } as never))
  })
  it('takes a day, a month or a year as an end', () => {
    for (const words of ['>=2026-04-18', '<=2026-04-18', '>2026-03', '<=2026-04', 'date:>2025', '<2026-05', '>=2026-04-01 <2026-04-19']) assert.ok(passes(words), words)
    for (const words of ['>2026-04-18', '<2026-04-18', '>2026-04', '>2026', '<2026-04']) assert.ok(!passes(words), words)
    assert.ok(!passes('>2000', { date: '' }))
  })
  it('never throws, whatever is typed, and takes an unknown name for words', () => {
    for (const words of ['"', 'verdict:', ':', '>=', 'constructor:x', '__proto__:x', '"wet', '((', '\\']) passes(words)
    assert.ok(passes('time:out', { reason: 'time:out' }))
  })
})
