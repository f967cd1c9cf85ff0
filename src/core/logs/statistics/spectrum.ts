import FFT from 'fft.js'

/** Power spectral density of a position, one-sided, from 0 Hz in equal steps. */
export interface SpectrumStatistics {
  stepHz: number
  densityMm2PerHz: number[]
  /** The highest peak above 0.5 Hz, where there is one. */
  peakHz?: number
  segments: number
  segmentS: number
}

/** Nothing of a suspension is told above this. */
const highestHz = 40
/** Below this a peak is the ride's own up and down, not the suspension's. */
const lowestPeakHz = 0.5
/** A segment lasts at least so long. */
const segmentAtLeastS = 4

/**
 * Spectra of two signals at once by Welch's method: Hann windows of equal length that overlap by half, the mean taken off
 * each, their periodograms averaged. Two real signals go through one complex transform.
 *
 * Source: P. D. Welch, IEEE Transactions on Audio and Electroacoustics 15 (1967) 70; scaled as scipy.signal.welch does.
 */
export class Spectra {
  readonly #rate: number
  readonly #length: number
  readonly #fft: FFT
  readonly #window: Float64Array
  readonly #held: [Float64Array, Float64Array]
  readonly #input: number[]
  readonly #output: number[]
  readonly #power: [Float64Array, Float64Array]
  #filled = 0
  segments = 0

  /** Samples per s of the signals, and how many were averaged into each of them, whose loss of height is made good. */
  constructor(rate: number, readonly averagedBy = 1, length = segmentLength(rate)) {
    this.#rate = rate
    this.#length = length
    this.#fft = new FFT(length)
    this.#window = Float64Array.from({ length }, (_, at) => 0.5 - 0.5 * Math.cos((2 * Math.PI * at) / length))
    this.#held = [new Float64Array(length), new Float64Array(length)]
    this.#input = this.#fft.createComplexArray() as number[]
    this.#output = this.#fft.createComplexArray() as number[]
    this.#power = [new Float64Array(length / 2 + 1), new Float64Array(length / 2 + 1)]
  }

  /** The next samples of both; a signal that is not there may be given as the other one. */
  push(first: Float64Array, second: Float64Array, count: number): void {
    for (let at = 0; at < count;) {
      const take = Math.min(count - at, this.#length - this.#filled)
      this.#held[0].set(first.subarray(at, at + take), this.#filled)
      this.#held[1].set(second.subarray(at, at + take), this.#filled)
      this.#filled += take
      at += take
      if (this.#filled === this.#length) this.#segment()
    }
  }

  /** A gap: what was held does not go on. */
  restart(): void {
    this.#filled = 0
  }

  #segment(): void {
    const [a, b] = this.#held
    const half = this.#length / 2
    const [meanA, meanB] = [mean(a), mean(b)]
    // A missing sample spoils its segment, and no other.
    if (!Number.isNaN(meanA + meanB)) this.#transform(meanA, meanB)
    a.copyWithin(0, half)
    b.copyWithin(0, half)
    this.#filled = half
  }

  #transform(meanA: number, meanB: number): void {
    const [a, b] = this.#held
    const [input, out, length, window] = [this.#input, this.#output, this.#length, this.#window]
    const [powerA, powerB] = this.#power
    for (let at = 0; at < length; at++) {
      input[2 * at] = (a[at]! - meanA) * window[at]!
      input[2 * at + 1] = (b[at]! - meanB) * window[at]!
    }
    this.#fft.transform(out, input)
    for (let k = 0; k <= length / 2; k++) {
      const mirror = (length - k) % length
      const reA = out[2 * k]! + out[2 * mirror]!
      const imA = out[2 * k + 1]! - out[2 * mirror + 1]!
      const reB = out[2 * k + 1]! + out[2 * mirror + 1]!
      const imB = out[2 * mirror]! - out[2 * k]!
      powerA[k]! += reA * reA + imA * imA
      powerB[k]! += reB * reB + imB * imB
    }
    this.segments++
  }

  /** `undefined` where the log is shorter than a segment. */
  summary(which: 0 | 1): SpectrumStatistics | undefined {
    if (this.segments === 0) return undefined
    // Each sum holds four times the power: the transforms of both signals came out doubled.
    const scale = 0.25 / (this.#rate * this.#window.reduce((sum, weight) => sum + weight * weight, 0) * this.segments)
    const stepHz = this.#rate / this.#length
    const power = [...this.#power[which]].map((sum, k) => sum * scale * (k === 0 || k === this.#length / 2 ? 1 : 2) / this.#kept(k * stepHz))
    const densityMm2PerHz = power.slice(0, Math.min(power.length, Math.floor(highestHz / stepHz) + 1))
    const peakHz = highestPeak(densityMm2PerHz, stepHz)
    return { stepHz, densityMm2PerHz, ...(peakHz === undefined ? {} : { peakHz }), segments: this.segments, segmentS: this.#length / this.#rate }
  }

  /** What averaging leaves of the power at a frequency. */
  #kept(hz: number): number {
    if (this.averagedBy === 1 || hz === 0) return 1
    const turn = (Math.PI * hz) / this.#rate
    return (Math.sin(turn) / (this.averagedBy * Math.sin(turn / this.averagedBy))) ** 2
  }
}

function segmentLength(rate: number): number {
  return 2 ** Math.ceil(Math.log2(Math.max(16, segmentAtLeastS * rate)))
}

function mean(values: Float64Array): number {
  let sum = 0
  for (let at = 0; at < values.length; at++) sum += values[at]!
  return sum / values.length
}

function highestPeak(density: readonly number[], stepHz: number): number | undefined {
  const peaks = density.flatMap((value, k) => (k > 0 && k * stepHz >= lowestPeakHz && value > density[k - 1]! && value >= (density[k + 1] ?? Infinity) ? [{ value, hz: k * stepHz }] : []))
  return peaks.sort((a, b) => b.value - a.value)[0]?.hz
}
