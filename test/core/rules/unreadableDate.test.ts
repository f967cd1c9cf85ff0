import assert from 'node:assert/strict'
import { isDay, likelyDay } from '../../../src/core/rules/unreadableDate'

describe('isDay', () => {
  it('knows the days of the calendar', () => {
    for (const day of ['2026-04-30', '2024-02-29', '2000-02-29', '2026-12-31']) assert.ok(isDay(day), day)
    for (const day of ['2026-04-31', '2026-02-29', '1900-02-29', '2026-00-10', '2026-13-01', '2026-01-00', '2026-01-32']) assert.ok(!isDay(day), day)
  })

  it('takes a time of the day behind it', () => {
    for (const day of ['2026-04-18 00:00', '2026-04-18T23:59', '2026-04-18T14:30:15', '2026-04-18T14:30:00Z', '2026-04-18T14:30+02:00']) assert.ok(isDay(day), day)
    for (const day of ['on 2026-04-18', '2026-04-18 24:00', '2026-04-18 12:60', '2026-04-18 9:00', '2026-04-18 morning']) assert.ok(!isDay(day), day)
  })
})

describe('likelyDay', () => {
  it('reads the year ahead, whatever stands between', () => {
    for (const text of ['2026-4-8', '2026/04/08', '2026.4.8', '20260408', ' 2026 4 8 ']) assert.equal(likelyDay(text), '2026-04-08', text)
  })

  it('reads the year at the end where only one order is a day', () => {
    assert.equal(likelyDay('18.4.2026'), '2026-04-18')
    assert.equal(likelyDay('4/18/2026'), '2026-04-18')
    assert.equal(likelyDay('4.4.2026'), '2026-04-04')
  })

  it('never guesses between day and month', () => {
    assert.equal(likelyDay('4/5/2026'), undefined)
    assert.equal(likelyDay('2026118'), undefined)
  })

  it('keeps the time', () => {
    assert.equal(likelyDay('2026/4/8 9:05'), '2026-04-08 09:05')
    assert.equal(likelyDay('18.4.2026T14:30'), '2026-04-18 14:30')
    assert.equal(likelyDay('2026/4/8T14:05'), '2026-04-08 14:05')
    for (const text of ['18.4.2026  9:05', '2026/4/18  9:05']) assert.equal(likelyDay(text), '2026-04-18 09:05', text)
  })

  it('finds no day where there is none', () => {
    for (const text of ['', 'Sunday', '31.4.2026', '2026-02-30', '18.4.26', '2026-04-18 25:00', 'on 2026.4.18', '2026.4.18 or so', 'on 18.4.2026', '18.4.2026 or so']) assert.equal(likelyDay(text), undefined, text)
  })
})
