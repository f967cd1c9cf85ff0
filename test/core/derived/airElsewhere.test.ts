import assert from 'node:assert/strict'
import { airElsewhere } from '../../../src/core/derived/airElsewhere'
import { get, missingOf, near, valueOf } from '../compute/near'
import { readEntry } from './ternSketch'

const text = (set: string, found: string) => `format: 1
adjusters:
  fork_air: {on: fork, legs: [left], controls: air_pressure, counts: psi}
entries:
  - {id: first, date: 2026-08-08 08:30, settings: {fork_air: 138}, conditions: {${set}}}
  - {id: set, date: 2026-08-08 13:10, settings: {fork_air: 20}}
  - {id: found, date: 2026-08-22, as_found: true, settings: {fork_air: 18}, conditions: {${found}}}
`
const psi = 0.0689475729317
const elsewhere = (set: string, found: string) => {
  const { notebook, entry } = readEntry(text(set, found))
  return airElsewhere(notebook, entry)
}

describe('airElsewhere', () => {
  it('ftp.team.net, tyre pressure with temperature: 20 psi at 70 °F is 18.69 psi at 50 °F; the day’s temperature is its first entry’s', () => {
    near(valueOf(elsewhere('air: 70 °F', 'air: 50 °F')) / psi, 18.6899, 1e-3)
  })

  it('against a published error: the law is of absolute pressure, so not 20 · 510/530 of the gauge', () => {
    assert.ok(Math.abs(valueOf(elsewhere('air: 70 °F', 'air: 50 °F')) / psi - (20 * 509.67) / 529.67) > 0.3)
  })

  it('US Standard Atmosphere 1976: from the sea to 2000 m the gauge gains 21.83 kPa', () => {
    near(valueOf(elsewhere('air: 20, altitude: 0 m', 'air: 20, altitude: 2000 m')), 20 * psi + 0.2183, 1e-4)
  })

  it('one altitude alone makes no difference up, and says so', () => {
    const outcome = get(elsewhere('air: 20', 'air: 20, altitude: 2000 m'))
    near(outcome.value, 20 * psi, 1e-9)
    assert.ok(outcome.working.assumptions.includes('no difference of altitude, since it is not noted on both days'))
    assert.ok(outcome.working.assumptions.includes('set in set'))
  })

  it('is absent with its reasons', () => {
    assert.deepEqual(missingOf(elsewhere('altitude: 20 m', 'air: 20')), ['temperature where it was read'])
    const { notebook } = readEntry(text('air: 20', 'air: 20'))
    assert.deepEqual(missingOf(airElsewhere(notebook, notebook.entries[0]!)), ['a pressure set in an entry before'])
    const without = readEntry('format: 1\nentries:\n  - id: a\n')
    assert.deepEqual(missingOf(airElsewhere(without.notebook, without.entry)), ['a fork whose air is set by pressure'])
  })
})
