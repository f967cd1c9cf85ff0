import assert from 'node:assert/strict'
import { liftingAcceleration, liftingDeceleration, loadTransfer } from '../../../../src/core/compute/loads/loadTransfer'
import { preloadAtSpring } from '../../../../src/core/compute/preload/preloadChange'
import { turnAdjuster } from '../../../../src/core/compute/preload/turnAdjuster'
import { heatedTo, pressureRise } from '../../../../src/core/compute/pressure/heatedTo'
import { friction, frictionZone } from '../../../../src/core/compute/sag/friction'
import { airSpring, forceChangeOfLevel } from '../../../../src/core/compute/springs/airSpring'
import { rateLessAir } from '../../../../src/core/compute/springs/rateLessAir'
import { isMissing } from '../../../../src/core/compute/working/result'
import { get, missingOf, near, valueOf } from '../near'

// Where a changed sign, bound or default once went unnoticed by every other test. Sums by hand, no source.
describe('a calculation at its edges', () => {
  it('by hand: of 20 N/mm along the tubes, air that grows by 40 N over 20 mm leaves 18, and less the steeper they stand', () => {
    const air = { rateNPerMm: 20, airForce1N: 100, airForce2N: 140, fromMm: 10, toMm: 30 }
    near(valueOf(rateLessAir({ ...air, rakeDeg: 0 })), 18, 1e-12)
    near(valueOf(rateLessAir({ ...air, rakeDeg: 60 })), 16, 1e-9)
    assert.deepEqual(missingOf(rateLessAir({ ...air, rakeDeg: 0, toMm: 10 })), ['a rider sag above the bike’s'])
    assert.deepEqual(get(rateLessAir({ ...air, rakeDeg: 0 })).working.assumptions, ['the air read slowly, at its mean between both sags'])
    assert.deepEqual(missingOf(rateLessAir({ ...air, rakeDeg: undefined })), ['rake'])
  })

  it('by hand: 10 mm at the wheel are 5 at a spring that moves half as far', () => {
    near(valueOf(preloadAtSpring({ wheelPreloadMm: 10, motionRatio: 0.5 })), 5, 1e-12)
    assert.deepEqual(missingOf(preloadAtSpring({ wheelPreloadMm: 10, motionRatio: 0 })), ['a motion ratio above zero'])
    assert.equal(get(preloadAtSpring({ wheelPreloadMm: 10, motionRatio: 1 })).working.assumptions.length, 1)
  })

  it('has no load on a machine without mass, wheelbase or height', () => {
    const machine = { massKg: 260, wheelbaseMm: 1400, aheadOfRearMm: 700, heightMm: 600, decelerationG: 0.5 }
    assert.ok(!isMissing(loadTransfer(machine)))
    assert.deepEqual(missingOf(loadTransfer({ ...machine, massKg: 0 })), ['a mass and a wheelbase above zero'])
    assert.deepEqual(missingOf(loadTransfer({ ...machine, wheelbaseMm: 0 })), ['a mass and a wheelbase above zero'])
    assert.deepEqual(missingOf(liftingDeceleration({ behindFrontMm: 700, heightMm: 0 })), ['a height above zero'])
    assert.deepEqual(missingOf(liftingAcceleration({ aheadOfRearMm: 700, heightMm: 0 })), ['a height above zero'])
    assert.equal(get(liftingDeceleration({ behindFrontMm: 700, heightMm: 600 })).working.assumptions.length, 2)
    assert.equal(get(liftingAcceleration({ aheadOfRearMm: 700, heightMm: 600 })).working.assumptions.length, 2)
    // By hand: all of the weight stands in front, and the rear is just not lifted.
    const edge = get(loadTransfer({ ...machine, aheadOfRearMm: 1400, decelerationG: 0 }))
    assert.equal(edge.rearN.value, 0)
    assert.equal(edge.lifted, undefined)
    assert.equal(edge.frontN.working.assumptions.length, 2)
  })

  it('wants absolute pressures and temperatures above zero', () => {
    const tyre = { coldBar: 2.1, coldC: 20, hotBar: 2.4 }
    assert.equal(get(heatedTo(tyre)).working.assumptions.length, 2)
    assert.deepEqual(missingOf(heatedTo({ ...tyre, coldBar: -1, atmosphereBar: 1 })), ['an absolute pressure above zero'])
    assert.deepEqual(missingOf(heatedTo({ ...tyre, coldC: -273.15 })), ['a temperature above absolute zero'])
    assert.deepEqual(missingOf(pressureRise({ coldBar: 0, hotBar: 2 })), ['a cold pressure above zero'])
    near(valueOf(pressureRise({ coldBar: 2, hotBar: 2.2 })), 10, 1e-9)
  })

  it('has a zone of friction for every use at the front, and none at the rear', () => {
    const zones = { road: [5, 15], touring: [5, 15], track: [5, 15], motocross: [10, 25], enduro: [10, 25], adventure: [10, 25] } as const
    for (const [use, [low, high]] of Object.entries(zones)) {
      const zone = frictionZone('front', use as keyof typeof zones)
      assert.deepEqual([zone?.lowMm, zone?.highMm], [low, high], use)
      assert.match(zone!.source, /street|road race|full-size dirt/)
    }
    assert.equal(frictionZone('rear', 'road'), undefined)
    assert.deepEqual(get(friction([110, 110])).working.assumptions, [], 'alike is not swapped')
  })

  it('takes the air of a fork within what a fork can be, bounds and all', () => {
    const leg = { sealDiameterMm: 43, boreMm: 39, travelMm: 120, oilLevelMm: 130 }
    assert.ok(!isMissing(airSpring(leg)))
    for (const [name, value] of Object.entries({ sealDiameterMm: 1e-9, boreMm: 1e9, travelMm: 1e9, oilLevelMm: 1e9 })) {
      assert.deepEqual(missingOf(airSpring({ ...leg, [name]: value })), ['tube diameters, oil level and travel of a fork, in mm'], name)
    }
    assert.ok(isMissing(forceChangeOfLevel({ ...leg, travelMm: 1e9 }, 5, 60)))
    assert.ok(isMissing(forceChangeOfLevel(leg, -129.999, 60)))
  })

  it('moves no adjuster by what is no number, or whose step is none', () => {
    const adjuster = { at: 4, mmPerCount: 1, lowest: 0, highest: 12, step: 0.5 }
    assert.deepEqual(turnAdjuster(adjuster, 8), { to: 12, byCounts: 8, givesMm: 8, shortMm: 0 })
    assert.deepEqual(turnAdjuster(adjuster, -4), { to: 0, byCounts: -4, givesMm: -4, shortMm: 0 })
    for (const wrong of [{ mmPerCount: 0 }, { mmPerCount: NaN }, { step: 0 }, { step: -1 }, { step: Infinity }, { lowest: 5, highest: 4 }]) assert.equal(turnAdjuster({ ...adjuster, ...wrong }, 2), undefined, JSON.stringify(wrong))
    assert.deepEqual(turnAdjuster({ ...adjuster, lowest: 4, highest: 4 }, 2), { to: 4, byCounts: 0, givesMm: 0, shortMm: 2 })
    assert.equal(turnAdjuster(adjuster, NaN), undefined)
  })

  it('tell what is missing from nothing at all', () => {
    assert.deepEqual([isMissing({ missing: [] }), isMissing(null), isMissing(undefined), isMissing({})], [true, false, false, false])
  })
})
