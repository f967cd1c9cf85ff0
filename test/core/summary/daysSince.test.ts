import assert from 'node:assert/strict'
import fc from 'fast-check'
import { daysSince, daysWords } from '../../../src/core/summary/daysSince'

describe('days since', () => {
  it('are those of the calendar, over month’s ends, leap days and changes of the clocks', () => {
    assert.deepEqual(
      [['2026-04-18', '2026-04-18'], ['2026-04-18', '2026-04-19'], ['2026-02-28', '2026-03-01'], ['2024-02-28', '2024-03-01'], ['2025-12-31', '2026-01-01'], ['2026-03-28', '2026-03-30'], ['2026-04-20', '2026-04-18']]
        .map(([date, today]) => daysSince(date!, today!)),
      [0, 1, 1, 2, 1, 2, -2])
  })

  it('take no notice of the time of day', () => {
    assert.equal(daysSince('2026-04-18 23:59', '2026-04-19'), 1)
    assert.equal(daysSince('2026-04-18T00:01:00Z', '2026-04-18'), 0)
  })

  it('are not known of what is no day', () => {
    for (const odd of ['', 'last spring', '2026-02-30', '18.4.2026', '2026-4-18']) assert.equal(daysSince(odd, '2026-04-18'), undefined, odd)
    assert.equal(daysSince('2026-04-18', ''), undefined)
  })

  it('add up', () => {
    const day = fc.integer({ min: 0, max: 40_000 }).map((n) => ({ n, text: new Date(n * 86_400_000).toISOString().slice(0, 10) }))
    fc.assert(fc.property(day, day, (a, b) => assert.equal(daysSince(a.text, b.text), b.n - a.n)))
  })

  it('are said as one says them', () => {
    assert.deepEqual([0, 1, 2, 40, -1].map(daysWords), ['today', 'yesterday', '2 days ago', '40 days ago', 'dated ahead'])
  })
})
