import assert from 'node:assert/strict'
import type { Card } from '../../../src/core/card/card'
import { cardFor } from '../../../src/core/card/cardFor'
import { computedRows } from '../../../src/core/grid/computed'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { ternSketch } from '../derived/ternSketch'

const notebook = readNotebook(ternSketch)
const card = (row: string, entry?: string): Card => {
  const found = cardFor(notebook, `computed/${row}`, entry)
  if (!found) assert.fail(`no card for ${row}`)
  return found
}
const section = ({ sections }: Card, heading: string) => sections.find((each) => each.heading === heading)?.lines

describe('the card of a computed row', () => {
  it('shows the formula, the formula with this entry’s numbers, every input with unit and uncertainty, assumptions and source', () => {
    const sag = card('front.rider_sag_mm', 'as-found')
    assert.equal(sag.title, 'Rider sag, rider aboard')
    assert.deepEqual(section(sag, 'How it comes about'), ['sag = L1 − (L2 + L3) / 2', 'sag = 152 − (118 + 110) / 2', '= 38 ± 0.71 mm'])
    assert.deepEqual(section(sag, 'From'), [
      'L1 = 152 ± 0.58 mm: length with the wheel off the ground, which brings ± 0.58 of the result',
      'L2 = 118 ± 0.58 mm: length after lifting, rider aboard, which brings ± 0.29 of the result',
      'L3 = 110 ± 0.58 mm: length after pushing, rider aboard, which brings ± 0.29 of the result',
    ])
    assert.deepEqual(section(sag, 'Assumes'), ['friction acts alike in both directions'])
    assert.match(section(sag, 'Source')!.join(), /Sport Rider/)
  })

  it('opens the load a wheel rate stands on as well, with the share that was assumed', () => {
    const rate = card('front.wheel_rate_n_per_mm', 'as-found')
    assert.deepEqual(section(rate, 'How it comes about')!.slice(0, 2), ['rate = load / difference', 'rate = 329.503 / 11'])
    assert.deepEqual(section(rate, 'The rider’s load')!.slice(0, 2), ['load = g · mass · share', 'load = 9.80665 · 84 · 0.4'])
    assert.ok(section(rate, 'Assumes')!.some((line) => line.startsWith('40 ± 10 % of the rider on the front')))
    assert.deepEqual(section(rate, 'Here'), ['44 % above the springs fitted, within twice the uncertainty'])
  })

  it('shows the geometry’s formula with its numbers and the datum of the figures', () => {
    const trail = card('geometry.trail_mm', 'run-1')
    assert.ok(section(trail, 'Assumes')!.includes('the geometry figures hold for Fork height at 5 mm, as first recorded in as-found'))
    assert.ok(section(trail, 'From')!.includes('ε = 24°: rake of the figures'))
  })

  it('says of an absent number what it needs', () => {
    assert.deepEqual(section(card('front.rider_sag_mm', 'run-1'), 'What it needs'), ['needs length with the wheel off the ground', 'needs length, rider aboard'])
  })

  it('gives the words of a row of words, and the sum behind them', () => {
    const preload = card('front.preload', 'as-found')
    assert.deepEqual(section(preload, 'Here'), ['8 turns in, to 8 turns in', 'sag then: 19 mm bike alone, 30 mm rider aboard'])
    assert.deepEqual(section(preload, 'At the spring')!.slice(0, 2), ['change = (sag − target) · m', 'change = (38 − 30) · 1'])
  })

  it('of the row alone, without an entry, only tells what it is', () => {
    for (const { key, about } of computedRows) assert.deepEqual(card(key).sections, [{ heading: '', lines: [about] }])
  })

  it('has a source and something to check for every number of every row, or what it needs', () => {
    for (const { key } of computedRows) {
      for (const entry of ['as-found', 'run-1']) {
        const headings = card(key, entry).sections.map(({ heading }) => heading)
        assert.ok(headings.includes('Source') || headings.includes('What it needs'), `${key} of ${entry}: ${headings.join()}`)
      }
    }
  })
})
