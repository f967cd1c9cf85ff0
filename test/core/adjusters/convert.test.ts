import assert from 'node:assert/strict'
import fc from 'fast-check'
import { isOwnCount, type Adjuster } from '../../../src/core/adjusters/adjuster'
import { convertAmount, inNotation, ownCount, ownPosition, ratioBetween, unitNamed } from '../../../src/core/adjusters/convert'
import { printPosition, readPosition, type End } from '../../../src/core/notation/position'
import { units } from '../../../src/core/notation/units'
import { anAdjuster } from './anAdjuster'

const movements = ['clicks', 'turns', 'flats', 'rings', 'lines', 'mm', 'steps'].map(unitNamed)

function own(text: string, adjuster: Adjuster): number | string {
  const reading = readPosition(text)
  assert.ok(reading.value, text)
  const conversion = ownCount(reading.value, adjuster)
  return conversion.count === undefined ? conversion.missing : Number(conversion.count.toFixed(9))
}

function shown(count: number, adjuster: Adjuster, symbol: string, end?: End): number | string {
  const conversion = inNotation(count, adjuster, unitNamed(symbol), end)
  return conversion.count === undefined ? conversion.missing : Number(conversion.count.toFixed(9))
}

function moved(amount: number, from: string, to: string, adjuster: Adjuster): number | string {
  const conversion = convertAmount(amount, unitNamed(from), unitNamed(to), adjuster)
  return conversion.count === undefined ? conversion.missing : conversion.count
}

describe('counting from the other end', () => {
  // Navigator workshop manual p. E.21: standard 20 clicks from closed, 34 positions; softer by at most 14, harder by at most 20.
  const rebound = anAdjuster('rebound', 'clicks', { range: 34 })

  it('agrees with a published adjuster of 34 positions that stands at 20 from closed', () => {
    assert.equal(own('20', rebound), 20)
    assert.equal(own('20 clicks out', rebound), 20)
    assert.equal(shown(20, rebound, 'clicks', 'open'), 14)
    assert.equal(own('14 in', rebound), 20)
    assert.equal(own('closed', rebound), 0)
    assert.equal(own('open', rebound), 34)
  })

  it('keeps to a notebook that counts against the custom, in every unit', () => {
    const preload = anAdjuster('preload', 'turns', { end: 'closed', range: 10, clicksPerTurn: 4 })
    assert.equal(own('3', preload), 3)
    assert.equal(own('6 flats', preload), 1)
    assert.equal(own('8 clicks', preload), 2)
    assert.equal(own('8 clicks in', preload), 8)
  })

  it('needs the range, and says so', () => {
    const unranged = anAdjuster('rebound', 'clicks')
    assert.equal(own('3 in', unranged), 'range')
    assert.equal(own('fully open', unranged), 'range')
    assert.equal(own('closed', unranged), 0)
    assert.equal(shown(3, unranged, 'clicks', 'open'), 'range')
    assert.equal(own('3 out', unranged), 3)
  })

  // Damping out from closed, preload in from fully backed off: J. Siddall, "The Basics" (ktm950.info).
  it('starts at the closed end for damping and at the backed-off end for preload', () => {
    assert.equal(own('3', anAdjuster('rebound', 'clicks', { range: 10 })), 3)
    assert.equal(own('3 in', anAdjuster('rebound', 'clicks', { range: 10 })), 7)
    assert.equal(own('3', anAdjuster('preload', 'turns', { range: 10 })), 3)
    assert.equal(own('3 out', anAdjuster('preload', 'turns', { range: 10 })), 7)
  })

  // Fork owner's manual 07295-27: nought fully closed, 20 clicks, a higher number is less damping.
  it('runs evenly from nought closed to the range fully open', () => {
    const fork = anAdjuster('compression', 'clicks', { range: 20 })
    let last = -1
    for (let count = 0; count <= 20; count++) {
      const fromOpen = shown(count, fork, 'clicks', 'open')
      assert.equal(fromOpen, 20 - count)
      assert.ok(count > last)
      last = count
      assert.equal(own(`${count} out`, fork), own(`${20 - count} in`, fork))
    }
  })

  it('is a round trip for any count, unit and end that the ratios allow', () => {
    const facts = { range: 24, mmPerTurn: 1.25, clicksPerTurn: 4, mmPerRing: 2.5 }
    const kinds = fc.constantFrom(anAdjuster('rebound', 'clicks', facts), anAdjuster('preload', 'turns', facts), anAdjuster('preload', 'rings', facts))
    const unit = fc.constantFrom(...['clicks', 'turns', 'flats', 'rings', 'mm', 'inch'].map(unitNamed))
    fc.assert(fc.property(kinds, unit, fc.constantFrom<End>('closed', 'open'), fc.double({ min: 0, max: 24, noNaN: true }), (adjuster, notation, end, count) => {
      const there = inNotation(count, adjuster, notation, end)
      assert.ok(there.count !== undefined)
      const back = ownCount({ amount: there.count, unit: notation, end }, adjuster)
      assert.ok(back.count !== undefined && Math.abs(back.count - count) < 1e-9)
    }))
  })
})

describe('turning one count into another', () => {
  // A hex has six sides, 60° each; pitch per flat recomputed from it.
  it('makes a sixth of the pitch of each flat', () => {
    for (const [pitch, perFlat] of [[1, 1 / 6], [1.25, 0.208333333333333], [1.5, 0.25]] as const) {
      const preload = anAdjuster('preload', 'mm', { mmPerTurn: pitch })
      assert.ok(Math.abs(Number(moved(1, 'flats', 'mm', preload)) - perFlat) < 1e-12)
      assert.ok(Math.abs(Number(moved(perFlat, 'mm', 'flats', preload)) - 1) < 1e-12)
    }
  })

  it('needs no fact for flats and turns', () => {
    const bare = anAdjuster('preload', 'turns')
    assert.equal(moved(6, 'flats', 'turns', bare), 1)
    assert.equal(Number(moved(1.75, 'turns', 'flats', bare)).toFixed(9), '10.500000000')
    assert.equal(own('4 flats in', bare), 0.666666667)
    assert.equal(own('4 flats', bare), 0.666666667)
  })

  it('goes over the ratios that the adjuster has', () => {
    const adjuster = anAdjuster('preload', 'turns', { mmPerTurn: 1.5, clicksPerTurn: 4, mmPerRing: 3, mmPerStep: 6 })
    const expected: Record<string, number> = { clicks: 8, flats: 12, mm: 3, rings: 1, lines: 1, steps: 0.5, inch: 3 / 25.4, cm: 0.3 }
    for (const [unit, count] of Object.entries(expected)) assert.ok(Math.abs(Number(moved(2, 'turns', unit, adjuster)) - count) < 1e-12, unit)
  })

  it('takes mm per click where that is what is known', () => {
    const knob = anAdjuster('preload', 'clicks', { mmPerClick: 0.25 })
    assert.equal(moved(20, 'clicks', 'mm', knob), 5)
    assert.equal(own('5 mm in', knob), 20)
    assert.equal(moved(20, 'clicks', 'turns', knob), 'clicks_per_turn')
  })

  it('names the fact that is missing', () => {
    const bare = anAdjuster('preload', 'turns')
    assert.equal(moved(1, 'turns', 'mm', bare), 'mm_per_turn')
    assert.equal(moved(1, 'flats', 'clicks', bare), 'clicks_per_turn')
    assert.equal(moved(1, 'rings', 'mm', bare), 'mm_per_ring')
    assert.equal(moved(1, 'rings', 'turns', bare), 'mm_per_ring and mm_per_turn')
    assert.equal(moved(1, 'rings', 'turns', anAdjuster('preload', 'turns', { mmPerTurn: 1 })), 'mm_per_ring')
    assert.equal(moved(1, 'steps', 'mm', bare), 'mm_per_step')
    assert.match(String(moved(1, 'bar', 'turns', bare)), /cannot be turned/)
    assert.match(String(moved(1, 'dial', 'turns', bare)), /cannot be turned/)
  })

  it('has every pair of counts once all ratios are known, there and back', () => {
    const adjuster = anAdjuster('preload', 'turns', { mmPerTurn: 1.25, clicksPerTurn: 4, mmPerRing: 2, mmPerStep: 3.5, mmPerClick: 0.3125 })
    for (const from of movements) {
      for (const to of movements) {
        const there = convertAmount(5, from, to, adjuster)
        assert.ok(there.count !== undefined, `${from.symbol} to ${to.symbol}`)
        const back = convertAmount(there.count, to, from, adjuster)
        assert.ok(back.count !== undefined && Math.abs(back.count - 5) < 1e-9)
      }
    }
  })

  it('names facts that are enough: with them the conversion is there', () => {
    const keys = { mm_per_turn: 'mmPerTurn', clicks_per_turn: 'clicksPerTurn', mm_per_ring: 'mmPerRing', mm_per_click: 'mmPerClick', mm_per_step: 'mmPerStep' } as const
    const facts = fc.record({ mmPerTurn: fc.constant(1.5), clicksPerTurn: fc.constant(4), mmPerRing: fc.constant(2), mmPerStep: fc.constant(3) }, { requiredKeys: [] })
    fc.assert(fc.property(facts, fc.constantFrom(...movements), fc.constantFrom(...movements), (known, from, to) => {
      const before = ratioBetween(from.dimension, to.dimension, anAdjuster('preload', 'turns', known))
      if (!('missing' in before)) return
      const named = before.missing.split(' and ').map((fact) => keys[fact as keyof typeof keys])
      assert.ok(named.every((key) => key !== undefined && !(key in known)), before.missing)
      const added = Object.fromEntries(named.map((key) => [key, 2]))
      assert.ok('ratio' in ratioBetween(from.dimension, to.dimension, anAdjuster('preload', 'turns', { ...known, ...added })))
    }))
  })

  it('never throws and never makes a number of nothing', () => {
    fc.assert(fc.property(fc.constantFrom(...units), fc.constantFrom(...units), fc.double(), (from, to, amount) => {
      const conversion = convertAmount(amount, from, to, anAdjuster('preload', 'turns', { mmPerTurn: 0 }))
      assert.ok(conversion.count !== undefined || conversion.missing.length > 0)
    }))
  })
})

describe('rings showing', () => {
  // Wound fully in 0 rings show; 12 mm of travel and 3 mm between rings show 4 when it is backed off.
  const rings = anAdjuster('preload', 'rings', { range: 4, mmPerRing: 3, mmPerTurn: 1.5 })

  it('count out from fully in: the further in, the fewer show', () => {
    assert.equal(rings.end, 'closed')
    assert.equal(own('4 rings', rings), 4)
    assert.equal(own('fully in', rings), 0)
    assert.equal(own('backed off', rings), 4)
  })

  it('become turns in, and turns in become rings showing', () => {
    assert.equal(own('2 turns in', rings), 3)
    assert.equal(own('2 turns', rings), 3)
    assert.equal(own('8 turns in', rings), 0)
    assert.equal(shown(3, rings, 'turns', 'open'), 2)
    assert.equal(shown(1, rings, 'mm', 'open'), 9)
    assert.equal(own('12 flats in', rings), 3)
  })

  it('become rings showing on an adjuster that counts in turns', () => {
    const turns = anAdjuster('preload', 'turns', { range: 8, mmPerRing: 3, mmPerTurn: 1.5 })
    assert.equal(own('3 rings', turns), 2)
    assert.equal(own('0 rings', turns), 8)
    assert.equal(shown(2, turns, 'rings', 'closed'), 3)
  })

  it('need the range to become turns in', () => {
    assert.equal(own('2 turns in', anAdjuster('preload', 'rings', { mmPerRing: 3, mmPerTurn: 1.5 })), 'range')
  })
})

describe('a figure on a scale of its own', () => {
  // YZF-R1 2023: set length A 77.5 mm soft, 78.5 standard, 85.5 hard; on other machines the length shrinks with preload.
  const setLength = anAdjuster('preload', 'mm', { higherIs: 'more', mmPerTurn: 1.5, range: 8 })
  delete setLength.end

  it('is read as it stands, in any unit of its kind', () => {
    assert.equal(own('77.5', setLength), 77.5)
    assert.equal(own('77.5 mm', setLength), 77.5)
    assert.equal(own('3 inch', setLength), 76.2)
    assert.equal(shown(76.2, setLength, 'inch'), 3)
  })

  it('has no end to count from', () => {
    assert.match(String(own('3 in', setLength)), /an end to count from/)
    assert.match(String(own('closed', setLength)), /an end to count from/)
    assert.match(String(shown(77.5, setLength, 'mm', 'closed')), /an end to count from/)
    assert.match(String(shown(77.5, setLength, 'turns', 'open')), /an end to count from/)
  })

  it('is no number of turns from anywhere, though a change of it is', () => {
    assert.equal(shown(77.5, setLength, 'turns'), 'where its scale begins')
    assert.equal(moved(3, 'mm', 'turns', setLength), 2)
  })

  it('of a stepped ring is a place, and only a change of it is a length', () => {
    const cam = anAdjuster('preload', 'steps', { range: 7, mmPerStep: 3 })
    assert.equal(own('step 4', cam), 4)
    assert.equal(own('4', cam), 4)
    assert.equal(own('12 mm', cam), 'where its scale begins')
    assert.equal(shown(4, cam, 'mm'), 'where its scale begins')
    assert.equal(moved(2, 'steps', 'mm', cam), 6)
  })

  it('shares its nought with mm where it is lines engraved from a datum', () => {
    const height = anAdjuster('fork_height', 'lines', { mmPerRing: 2 })
    assert.equal(own('8 mm', height), 4)
    assert.equal(own('flush', height), 0)
    assert.equal(shown(4, height, 'mm'), 8)
    assert.equal(own('8 mm', anAdjuster('fork_height', 'lines')), 'mm_per_ring')
  })

  it('of a pressure is kept through bar, psi and kPa', () => {
    const air = anAdjuster('air_pressure', 'psi')
    assert.equal(own('145', air), 145)
    assert.equal(own('10 bar', air), 145.037737730)
    assert.equal(shown(145, air, 'kPa'), 999.739807509)
    assert.match(String(own('3 clicks', air)), /cannot be turned|end/)
  })
})

describe('an adjuster’s own position', () => {
  it('is printed with its unit and end and read back as the same count', () => {
    for (const [control, counts, count, words] of [
      ['rebound', 'clicks', 3, '3 clicks out'], ['preload', 'turns', 1.75, '1 3/4 turns in'], ['preload', 'rings', 3, '3 rings out'],
      ['preload', 'steps', 4, 'step 4'], ['fork_height', 'mm', 5, '5 mm'], ['tyre_pressure', 'bar', 2.1, '2.1 bar'], ['rebound', 'dial', 3, 'dial 3'],
    ] as const) {
      const adjuster = anAdjuster(control, counts)
      const text = printPosition(ownPosition(count, adjuster))
      assert.equal(text, words)
      assert.equal(own(text, adjuster), count)
      assert.ok(isOwnCount(readPosition(text).value!, adjuster))
    }
  })

  it('is told from a foreign one', () => {
    const adjuster = anAdjuster('rebound', 'clicks')
    for (const text of ['3', '3 out', '3 clicks', '3 clicks out']) assert.ok(isOwnCount(readPosition(text).value!, adjuster), text)
    for (const text of ['3 in', '3 turns', '3 turns out', '3 clicks in']) assert.ok(!isOwnCount(readPosition(text).value!, adjuster), text)
  })
})
