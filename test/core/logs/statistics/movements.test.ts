import assert from 'node:assert/strict'
import { fft, type Complex } from 'mathjs'
import { Braking } from '../../../../src/core/logs/statistics/braking'
import { FreeDecays } from '../../../../src/core/logs/statistics/freeDecays'
import { FrontRear } from '../../../../src/core/logs/statistics/frontRear'
import { Spectra } from '../../../../src/core/logs/statistics/spectrum'
import { Stops } from '../../../../src/core/logs/statistics/stops'
import { TurningPoints } from '../../../../src/core/logs/statistics/turningPoints'
import { Attitudes } from '../../../../src/core/logs/statistics/attitudes'
import { near } from '../../compute/near'

const times = (count: number, s: number) => Float64Array.from({ length: count }, (_, at) => at * s)

describe('Stops', () => {
  const stops = (values: number[]) => {
    const found = new Stops({ withinMm: 2, leaveMm: 5 }, 1, 120)
    found.add(times(values.length, 0.01), Float64Array.from(values), { from: 0, to: values.length, extreme: Math.max(...values) })
    found.finish()
    return found.summary()
  }

  it('counts a stay once, until it is 5 mm further out than the limit', () => {
    assert.equal(stops([100, 118, 119, 117, 114, 118.5, 100]).times, 1)
    assert.equal(stops([100, 118, 119, 112.9, 118.5, 100]).times, 2)
    assert.equal(stops([100, 117.9, 100]).times, 0)
  })

  it('tells where: from the first to the last sample on the stop, and how deep', () => {
    const { places: [place], totalS } = stops([100, 118, 121, 118, 115, 100])
    assert.deepEqual([place!.atS, place!.extremeMm], [0.01, 121])
    near(place!.forS, 0.02, 1e-12)
    near(totalS, 0.02, 1e-12)
  })

  it('looks the other way for topping out', () => {
    const found = new Stops({ withinMm: 1, leaveMm: 5 }, -1, 0)
    found.add(times(5, 0.01), Float64Array.of(10, 0.5, 0, 9, 10), { from: 0, to: 5, extreme: 0 })
    found.finish()
    assert.deepEqual([found.times, found.summary().places[0]!.extremeMm], [1, 0])
  })
})

function decaysOf(values: Float64Array, s: number) {
  const decays = new FreeDecays()
  const turns = new TurningPoints(1, (time, mm) => decays.turn(time, mm))
  turns.add(times(values.length, s), values, 0, values.length)
  decays.finish()
  return decays.summary()
}

describe('FreeDecays', () => {
  // Rao’s free response of a damped oscillator: ratio 0.3, 2 Hz, let go at 40 mm, sampled at 200 Hz.
  it('S. S. Rao: finds ratio and frequency of a synthetic bounce', () => {
    const [z, wn] = [0.3, 4 * Math.PI]
    const wd = wn * Math.sqrt(1 - z * z)
    const x = times(400, 0.005).map((t) => 60 - 40 * Math.exp(-z * wn * t) * (Math.cos(wd * t) + (z / Math.sqrt(1 - z * z)) * Math.sin(wd * t)))
    const found = decaysOf(x, 0.005)!
    assert.equal(found.count, 1)
    near(found.dampingRatio, 0.3, 0.0015)
    near(found.naturalHz, 2, 0.03)
    near(found.found[0]!.atS, 0, 0.011)
  })

  it('finds many in a row, each after its bump, and tells the middle of them', () => {
    const bumps = Float64Array.from({ length: 6 * 300 }, (_, at) => {
      const t = (at % 300) * 0.005
      return 50 + 35 * Math.exp(-0.15 * 4 * Math.PI * t) * Math.cos(4 * Math.PI * t * Math.sqrt(1 - 0.15 ** 2))
    })
    const found = decaysOf(bumps, 0.005)!
    assert.ok(found.count >= 5, `${found.count}`)
    near(found.dampingRatio, 0.15, 0.01)
    near(found.naturalHz, 2, 0.05)
  })

  it('sees none in a steady swing, in noise or at rest', () => {
    assert.equal(decaysOf(times(2000, 0.005).map((t) => 60 + 20 * Math.sin(4 * Math.PI * t)), 0.005), undefined)
    assert.equal(decaysOf(new Float64Array(500).fill(40), 0.005), undefined)
  })
})

describe('TurningPoints', () => {
  it('tells the start and each turn once, and no noise', () => {
    const found: number[] = []
    const turns = new TurningPoints(2, (_, mm) => found.push(mm))
    const values = Float64Array.of(0, 1, 0.5, 10, 9, 11, 3, 4, 2, 20, 19)
    for (let at = 0; at < values.length; at++) turns.add(times(values.length, 1), values, at, at + 1)
    assert.deepEqual(found, [0, 11, 2])
  })
})

describe('Spectra', () => {
  const x = Array.from({ length: 64 }, (_, i) => ((i * 37) % 101) / 10 + 5 * Math.sin((2 * Math.PI * i * 3) / 32))
  const y = Array.from({ length: 64 }, (_, i) => ((i * 53) % 97) / 7)

  // scipy.signal.welch(x, fs=200, nperseg=32), scipy 1.17.1: Hann, half overlap, mean taken off, density.
  it('scipy’s welch, two signals at once', () => {
    const spectra = new Spectra(200, 1, 32)
    for (let at = 0; at < 64; at += 5) spectra.push(Float64Array.from(x.slice(at, at + 5)), Float64Array.from(y.slice(at, at + 5)), Math.min(5, 64 - at))
    const [first, second] = [spectra.summary(0)!, spectra.summary(1)!]
    assert.deepEqual([first.segments, first.stepHz], [3, 6.25])
    const expected = [0.0003850705813, 0.006622220197, 0.2666925938, 1.12432239, 0.2475770981, 0.02323269955, 0.03262940576]
    first.densityMm2PerHz.forEach((density, k) => near(density, expected[k]!, 1e-9))
    const other = [0.001973533856, 0.001590691405, 0.09439388778, 0.2872592044, 0.05221655554, 0.04209073296, 0.09867197407]
    second.densityMm2PerHz.forEach((density, k) => near(density, other[k]!, 1e-9))
    assert.equal(first.peakHz, 18.75)
  })

  it('mathjs’s fft: the periodogram of one segment', () => {
    const window = Array.from({ length: 32 }, (_, at) => 0.5 - 0.5 * Math.cos((2 * Math.PI * at) / 32))
    const some = y.slice(0, 32)
    const mean = some.reduce((sum, value) => sum + value, 0) / 32
    const transformed = fft(some.map((value, at) => (value - mean) * window[at]!)) as unknown as Complex[]
    const spectra = new Spectra(60, 1, 32)
    spectra.push(Float64Array.from(x.slice(0, 32)), Float64Array.from(some), 32)
    const scale = 2 / (60 * window.reduce((sum, weight) => sum + weight * weight, 0))
    spectra.summary(1)!.densityMm2PerHz.slice(1, 16).forEach((density, k) => near(density, scale * (transformed[k + 1]!.re ** 2 + transformed[k + 1]!.im ** 2), 1e-9))
  })

  it('has the mean square of a sine under its peak, A²/2, also where samples were averaged before', () => {
    for (const by of [1, 5]) {
      const spectra = new Spectra(200, by)
      const rate = 200 * by
      const raw = Array.from({ length: 8192 * by }, (_, at) => 10 * Math.sin((2 * Math.PI * 12 * at) / rate))
      const averaged = Float64Array.from({ length: 8192 }, (_, at) => raw.slice(at * by, at * by + by).reduce((sum, value) => sum + value, 0) / by)
      spectra.push(averaged, averaged, 8192)
      const { densityMm2PerHz, stepHz, peakHz } = spectra.summary(0)!
      near(peakHz, 12, stepHz / 2)
      near(densityMm2PerHz.reduce((sum, density) => sum + density * stepHz, 0), 50, 0.05)
    }
  })

  it('leaves out a segment with a missing sample, begins anew behind a gap, and says nothing of too short a log', () => {
    const spectra = new Spectra(200, 1, 32)
    spectra.push(Float64Array.from(x, (value, at) => (at === 40 ? NaN : value)), Float64Array.from(y), 64)
    assert.equal(spectra.segments, 1)
    const short = new Spectra(200, 1, 32)
    short.push(Float64Array.from(x), Float64Array.from(y), 31)
    short.restart()
    short.push(Float64Array.from(x), Float64Array.from(y), 31)
    assert.equal(short.summary(0), undefined)
  })
})

describe('FrontRear', () => {
  it('numpy.corrcoef of two records, and how far the front is ahead', () => {
    const [a, b] = [0, 1].map((which) => Float64Array.from({ length: 64 }, (_, i) => (which === 0 ? ((i * 37) % 101) / 10 + 5 * Math.sin((2 * Math.PI * i * 3) / 32) : ((i * 53) % 97) / 7))) as [Float64Array, Float64Array]
    const both = new FrontRear([100, 50])
    both.add(a, b, 64)
    const { correlation, frontAheadPct, sharesPct } = both.summary()!
    near(correlation, -0.19648833788, 1e-9)
    near(frontAheadPct, a.reduce((sum, value) => sum + value, 0) / 64 - (2 * b.reduce((sum, value) => sum + value, 0)) / 64, 1e-9)
    near(sharesPct.flat().reduce((sum, share) => sum + share, 0), 100, 1e-9)
  })
})

describe('Attitudes', () => {
  // Plane trigonometry: with equal radii a rear that sinks by s over a wheelbase L tips the nose up by asin(s / D).
  it('is level where both ends sink alike, and noses up where the rear sinks', () => {
    const geometry = { rakeDeg: 24, offsetMm: 30, wheelbaseMm: 1400, frontRadiusMm: 300, rearRadiusMm: 300 }
    const found = new Attitudes(geometry, 1)
    found.add(Float64Array.of(0, 0, 0), Float64Array.of(0, 30, 60), 3)
    const { pitchDeg, rakeDeg } = found.summary()!
    near(pitchDeg.p50, (Math.atan(30 / 1400) * 180) / Math.PI, 1e-3)
    near(rakeDeg.p50 - 24, pitchDeg.p50, 2e-3)
  })
})

describe('Braking', () => {
  it('needs its time, and tells what the fork did', () => {
    const braking = new Braking('brake', { on: 2, off: 1, atLeastS: 0.3 })
    for (let at = 0; at <= 10; at++) braking.add(at * 0.1, 60 + at, 40 - at)
    braking.finish()
    braking.add(5, 90, 10)
    braking.finish()
    const { count, events: [event], deepestFrontMm } = braking.summary()!
    assert.deepEqual([count, event!.atS, event!.deepestFrontMm, event!.meanFrontMm, event!.leastRearMm, deepestFrontMm], [1, 0, 70, 65, 30, 70])
    near(event!.forS, 1, 1e-9)
    assert.equal(new Braking('ends', { on: 30, off: 20, atLeastS: 0.5 }).summary(), undefined)
  })
})
