import assert from 'node:assert/strict'
import { codesOf, messagesOf } from './check'

/** Entries by date, with `from` where it is given as `date<from`; ids are a, b, c, … */
function dated(...dates: string[]): string {
  return `format: 1\nentries:\n${dates.map((each, at) => {
    const [date, from] = each.split('<')
    return `  - id: ${String.fromCharCode(97 + at)}\n${date ? `    date: ${date}\n` : ''}${from ? `    from: ${from}\n` : ''}`
  }).join('')}`
}
const count = (...dates: string[]) => codesOf(dated(...dates)).filter((code) => code === 'dates-backwards').length

describe('dates-backwards', () => {
  it('compares days, and times only where both have one', () => {
    assert.equal(count('2026-04-18', '2026-04-17'), 1)
    assert.equal(count('2026-04-18 10:00', '2026-04-18'), 0)
    assert.equal(count('2026-04-18', '2026-04-18 08:00'), 0)
    assert.equal(count('2026-04-18 10:00', '2026-04-18T09:59'), 1)
  })

  it('looks past entries without a date', () => {
    assert.equal(count('2026-04-18', '', '', '2026-04-17'), 1)
  })

  it('looks past dates that cannot be read', () => {
    assert.equal(count('2026-04-18', 'Sunday', '2026-04-17'), 1)
    assert.equal(count('Sunday', '2026-04-17'), 0)
  })

  it('compares a branch with where it comes from, and with what stands above it', () => {
    assert.match(messagesOf('dates-backwards', dated('2026-04-18', '2026-05-01', '2026-04-17<a'))[0]!, /the date of ‘a’, which this comes from/)
    assert.match(messagesOf('dates-backwards', dated('2026-04-18', '2026-05-01', '2026-04-20<a'))[0]!, /the date of ‘b’ above it/)
  })

  it('says one thing about one date', () => {
    assert.equal(count('2026-04-18', '2026-05-01', '2026-04-01'), 1)
  })

  it('stands a loop', () => {
    assert.equal(count('2026-04-18<b', '2026-04-17<a'), 1)
  })
})
