import assert from 'node:assert/strict'
import { Packing, type PackingStatistics } from '../../../../src/core/logs/statistics/packing'
import { TurningPoints } from '../../../../src/core/logs/statistics/turningPoints'

const travel = 120
const hz = 100

/**
 * A wheel that follows the road under a body on a spring and a damper whose rebound is so many times its compression:
 * M·y'' = k·x + c(x')·x' − M·g, x the compression, by the classical Runge-Kutta method. Whether it packs down is physics
 * here and no choice of ours.
 */
function ride(reboundTimes: number, { bumps, height = 40, perS = 4 }: { bumps: number; height?: number; perS?: number }): Float64Array {
  const [mass, spring, damping, gravity, rest] = [90, 9000, 400, 9.81, 2]
  const road = (t: number) => (t < rest || t > rest + bumps / perS ? 0 : (height / 2000) * (1 - Math.cos(2 * Math.PI * perS * (t - rest))))
  const slope = (t: number) => (t < rest || t > rest + bumps / perS ? 0 : (height / 2000) * 2 * Math.PI * perS * Math.sin(2 * Math.PI * perS * (t - rest)))
  const force = (t: number, y: number, v: number) => {
    const [x, speed] = [road(t) - y, slope(t) - v]
    return (spring * x + damping * (speed > 0 ? 1 : reboundTimes) * speed) / mass - gravity
  }
  const step = 1 / 2000
  let [y, v] = [-(mass * gravity) / spring, 0]
  const samples: number[] = []
  for (let at = 0; at < (rest * 2 + bumps / perS) / step; at++) {
    const t = at * step
    if (at % (2000 / hz) === 0) samples.push(1000 * (road(t) - y))
    const [k1v, k1y] = [force(t, y, v), v]
    const [k2v, k2y] = [force(t + step / 2, y + (k1y * step) / 2, v + (k1v * step) / 2), v + (k1v * step) / 2]
    const [k3v, k3y] = [force(t + step / 2, y + (k2y * step) / 2, v + (k2v * step) / 2), v + (k2v * step) / 2]
    const [k4v, k4y] = [force(t + step, y + k3y * step, v + k3v * step), v + k3v * step]
    y += (step / 6) * (k1y + 2 * k2y + 2 * k3y + k4y)
    v += (step / 6) * (k1v + 2 * k2v + 2 * k3v + k4v)
  }
  return Float64Array.from(samples)
}

function packingOf(samples: Float64Array, brakings: { atS: number; forS: number }[] = []): PackingStatistics | undefined {
  const packing = new Packing(travel)
  const turns = new TurningPoints(2, (time, mm) => packing.turn(time, mm))
  turns.add(Float64Array.from(samples, (_, at) => at / hz), samples, 0, samples.length)
  packing.finish()
  return packing.summary(brakings)
}

/** Places it comes out to, hit by hit: turned once and back each time, as `turn` is told them. */
function trainOf(out: readonly number[], { everyS = 0.25, hit = 30 } = {}): PackingStatistics | undefined {
  const packing = new Packing(travel)
  out.forEach((mm, at) => {
    packing.turn(at * everyS, mm)
    packing.turn((at + 0.4) * everyS, mm + hit)
  })
  packing.finish()
  return packing.summary()
}

describe('Packing', () => {
  it('finds a body pulled down by rebound damping that is far above compression damping', () => {
    const found = packingOf(ride(12, { bumps: 8 }))!
    assert.equal(found.trains, 1)
    assert.equal(found.packed, 1)
    assert.ok(found.worstMm > 6, `${found.worstMm}`)
    assert.ok(found.places[0]!.atS > 1.5 && found.places[0]!.atS < 2.3)
  })

  it('finds none where rebound damping is as compression damping, nor where the hits come one by one', () => {
    assert.equal(packingOf(ride(1, { bumps: 8 }))?.packed ?? 0, 0)
    assert.equal(packingOf(ride(12, { bumps: 6, perS: 1 }))?.packed ?? 0, 0)
    assert.equal(packingOf(ride(12, { bumps: 2 }))?.packed ?? 0, 0)
  })

  it('counts no train in a braking, where the load drives the fork in', () => {
    const samples = ride(12, { bumps: 8 })
    assert.equal(packingOf(samples, [{ atS: 3, forS: 0.5 }]), undefined)
    assert.equal(packingOf(samples, [{ atS: 0, forS: 1 }, { atS: 7.5, forS: 1 }])?.packed, 1)
  })

  it('takes five hits, all of the later half 5 % of the travel deeper, and no less', () => {
    assert.equal(trainOf([40, 42, 46, 48, 48])!.packed, 1)
    assert.equal(trainOf([40, 46, 47, 47.2, 46.1])!.packed, 1)
    assert.equal(trainOf([40, 46, 48, 50]), undefined)
    assert.equal(trainOf([40, 41, 45.9, 48, 50])!.packed, 0)
    assert.equal(trainOf([40, 50, 50, 50, 44])!.packed, 0)
    assert.equal(trainOf([40, 42, 46, 48, 48], { everyS: 0.51 }), undefined)
    assert.equal(trainOf([40, 42, 46, 48, 48], { hit: 5 }), undefined)
  })

  it('begins with a hit after a long rest, and leaves the way back to rest out', () => {
    const packing = new Packing(travel)
    packing.turn(0, 20)
    const train = [40, 43, 46, 49, 52]
    train.forEach((mm, at) => {
      packing.turn(10 + at * 0.25 + 0.1, mm + 30)
      packing.turn(10 + at * 0.25 + 0.25, train[at + 1] ?? 15)
    })
    packing.finish()
    assert.deepEqual(packing.summary()!.places, [{ atS: 10.1, forS: 1, hits: 5, driftMm: 26, packed: true }])
  })

  it('tells the drift, where and for how long', () => {
    assert.deepEqual(trainOf([40, 43, 46, 49, 52])!.places, [{ atS: 0.1, forS: 1, hits: 5, driftMm: 6, packed: true }])
  })
})
