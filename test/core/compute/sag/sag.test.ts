import assert from 'node:assert/strict'
import fc from 'fast-check'
import { sag, type Readings } from '../../../../src/core/compute/sag/sag'
import { readLength } from '../../../../src/core/compute/working/resolution'
import { get, missingOf, near, valueOf } from '../near'

const riderSag = (extendedMm: number | undefined, ...readings: number[]) =>
  sag({ load: 'rider', extendedMm, readingsMm: readings.length === 0 ? undefined : (readings as unknown as Readings) })

const length = fc.double({ min: 10, max: 900, noNaN: true })

describe('sag', () => {
  it('Ask the Geek, Sport Rider: L1 − (L2 + L3) / 2', () => {
    assert.equal(valueOf(riderSag(152, 118, 110)), 38)
  })

  it('CR125R 2007 handbook, p. 94: unloaded 600 mm, with rider 500 mm, race sag 100 mm (3.9 in)', () => {
    assert.equal(valueOf(riderSag(600, 500)), 100)
    near(100 / 25.4, 3.9, 0.05)
  })

  it('Bare Bones, Motocross Action: 630 − 600, machine alone, is 30 mm', () => {
    assert.equal(valueOf(sag({ load: 'bike', extendedMm: 630, readingsMm: [600] })), 30)
  })

  it('trap, xs650 note: L1 − L2 + L3/2 without its brackets must not pass', () => {
    assert.notEqual(valueOf(riderSag(152, 118, 110)), 152 - 118 + 110 / 2)
  })

  it('trap, soundrider suspension basics: a reading of the machine alone in the place of a second one with the rider is another number', () => {
    const [extended, lifted, pushed, machineAlone] = [152, 118, 110, 125]
    assert.notEqual(valueOf(riderSag(extended, lifted, pushed)), valueOf(riderSag(extended, machineAlone, pushed)))
  })

  it('does not depend on the order of the two readings', () => {
    fc.assert(fc.property(length, length, (a, b) => valueOf(riderSag(1000, a, b)) === valueOf(riderSag(1000, b, a))))
  })

  it('lies between the sags of its two readings', () => {
    fc.assert(fc.property(length, length, (a, b) => {
      const both = valueOf(riderSag(1000, a, b))
      return both >= 1000 - Math.max(a, b) - 1e-9 && both <= 1000 - Math.min(a, b) + 1e-9
    }))
  })

  it('carries the readings’ resolution: three lengths to ±1 mm give u = √(1/3 + 1/12 + 1/12) mm', () => {
    const result = get(sag({ load: 'rider', extendedMm: readLength(152), readingsMm: [readLength(118), readLength(110)] }))
    near(result.u, Math.sqrt(1 / 3 + 1 / 12 + 1 / 12), 1e-12)
  })

  it('takes one reading instead of a pair and says that friction is in it', () => {
    const result = get(riderSag(152, 114))
    assert.equal(result.value, 38)
    assert.match(result.working.assumptions.join(), /friction/)
  })

  it('names what is missing, with its load case', () => {
    assert.deepEqual(missingOf(riderSag(undefined, 118, 110)), ['length with the wheel off the ground'])
    assert.deepEqual(missingOf(riderSag(152)), ['length, rider aboard'])
    assert.deepEqual(missingOf(sag({ load: 'bike', extendedMm: 152, readingsMm: [NaN, 122] })), ['length after lifting, bike alone'])
  })

  it('has no sag for an end that gets longer under its load', () => {
    assert.equal(missingOf(riderSag(152, 160)).length, 1)
    assert.equal(missingOf(riderSag(152, 160, 155)).length, 1)
    assert.equal(valueOf(riderSag(152, 152)), 0)
  })
})
