import assert from 'node:assert/strict'
import fc from 'fast-check'
import { airSpring, forceChangeOfLevel, type AirSpring } from '../../../../src/core/compute/springs/airSpring'
import { get, missingOf, near, nearRelative } from '../near'

const leg: AirSpring = { sealDiameterMm: 43, boreMm: 39, oilLevelMm: 115, travelMm: 120 }
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('airSpring', () => {
  it('pushes with nothing at full extension where it was opened to the air', () => {
    const { forceN, gaugeBar } = get(airSpring(leg)).at(0)
    near(forceN, 0, 1e-9)
    near(gaugeBar, 0, 1e-12)
  })

  it('gas law by hand: at n = 1 absolute pressure times volume stays, and the force is the gauge pressure on the tube', () => {
    const air = get(airSpring({ ...leg, gaugeBar: 0.5, exponent: 1 }))
    const [top, deep] = [air.at(0), air.at(100)]
    nearRelative((deep.gaugeBar + 1.01325) * deep.volumeMl, (0.5 + 1.01325) * top.volumeMl, 1e-12)
    nearRelative(deep.forceN, deep.gaugeBar * 0.1 * Math.PI * 43 ** 2 / 4, 1e-12)
    near(top.volumeMl - deep.volumeMl, (Math.PI / 4) * 43 ** 2 * 0.1, 1e-9)
  })

  it('novasolver air spring: k = n·p·A²/V is the slope of its force', () => {
    const air = get(airSpring({ ...leg, gaugeBar: 0.3, exponent: 1.3 }))
    for (const mm of [10, 60, 110]) nearRelative((air.at(mm + 1e-3).forceN - air.at(mm - 1e-3).forceN) / 2e-3, air.at(mm).rateNPerMm, 1e-6)
  })

  it('trap, alltoolsforyou: a larger air gap does not make the fork stiffer; more gap is less oil and softer at the end (ta-deti, sonicsprings)', () => {
    fc.assert(fc.property(number(60, 180), number(5, 60), number(20, 120), number(1, 1.4), (oilLevelMm, more, mm, exponent) => {
      const force = (level: number) => get(airSpring({ ...leg, oilLevelMm: level, exponent })).at(mm).forceN
      return force(oilLevelMm + more) < force(oilLevelMm)
    }))
  })

  it('changes more at the end of the stroke than near the top when the level changes', () => {
    const change = (mm: number) => get(forceChangeOfLevel(leg, -10, mm)).forceN
    assert.ok(change(120) > 10 * change(30) && change(30) > 0)
  })

  it('rises with travel, with pressure and with the exponent', () => {
    fc.assert(fc.property(number(1, 110), number(0, 2), number(1, 1.25), (mm, gaugeBar, exponent) => {
      const force = (at: number, p: number, n: number) => get(airSpring({ ...leg, gaugeBar: p, exponent: n })).at(at).forceN
      const base = force(mm, gaugeBar, exponent)
      return force(mm + 5, gaugeBar, exponent) > base && force(mm, gaugeBar + 0.1, exponent) > base && force(mm, gaugeBar, exponent + 0.1) > base
    }))
  })

  it('has less room with the spring in, so pushes harder', () => {
    assert.ok(get(airSpring({ ...leg, springVolumeMl: 40 })).at(110).forceN > get(airSpring(leg)).at(110).forceN)
  })

  it('works in absolute pressure: the same gauge in thinner air presses less at depth', () => {
    const deep = (atmosphereBar: number) => get(airSpring({ ...leg, gaugeBar: 0.5, atmosphereBar })).at(100).forceN
    assert.ok(deep(0.8) < deep(1.01325))
  })

  it('novasolver air spring: the exponent lies between 1 (slow) and 1.4 (fast)', () => {
    for (const exponent of [0.9, 1.5, NaN]) assert.match(missingOf(airSpring({ ...leg, exponent }))[0]!, /exponent/)
    for (const exponent of [1, 1.4]) get(airSpring({ ...leg, exponent }))
  })

  it('says when oil and spring fill the tube before the travel ends', () => {
    assert.match(missingOf(airSpring({ ...leg, oilLevelMm: 20, springVolumeMl: 60 }))[0]!, /room for the air/)
  })

  it('says when there is no tube or no pressure', () => {
    assert.equal(missingOf(airSpring({ ...leg, boreMm: 0 })).length, 1)
    assert.equal(missingOf(airSpring({ ...leg, gaugeBar: -1.2 })).length, 1)
    assert.equal(missingOf(forceChangeOfLevel(leg, -200, 50)).length, 1)
  })
})
