/** A polynomial fitted by least squares to neighbouring samples: how many, and of which degree. */
export interface Fit {
  /** Odd, and more than `order`. */
  points: number
  order: number
}

/**
 * Savitzky-Golay weights for samples one apart: the value (`derivative` 0) or slope (1) of the fitted polynomial at the
 * sample `at`, counted from the first; the middle one unless said otherwise.
 *
 * From polynomials made orthogonal over the samples, which stays exact where the normal equations do not.
 * Source: A. Savitzky and M. J. E. Golay, Analytical Chemistry 36 (1964) 1627; for the ends P. A. Gorry, ibid. 62 (1990) 570.
 * @example savitzkyGolay({ points: 5, order: 2 }, 1) // [-0.2, -0.1, 0, 0.1, 0.2]
 */
export function savitzkyGolay({ points, order }: Fit, derivative: 0 | 1, at = (points - 1) / 2): Float64Array {
  const half = (points - 1) / 2
  const places = Float64Array.from({ length: points }, (_, sample) => (sample - half) / half)
  const weights = new Float64Array(points)
  for (const polynomial of orthogonal(places, order)) {
    const there = derivative === 0 ? valueAt(polynomial, places[at]!) : slopeAt(polynomial, places[at]!) / half
    places.forEach((place, sample) => {
      weights[sample]! += there * valueAt(polynomial, place)
    })
  }
  return weights
}

/** Coefficients, lowest first, of polynomials of rising degree that are orthonormal over these places. */
function orthogonal(places: Float64Array, order: number): number[][] {
  const found: number[][] = []
  for (let degree = 0; degree <= order; degree++) {
    let next: number[] = degree === 0 ? [1] : [0, ...found[degree - 1]!]
    for (const earlier of [...found, ...found]) next = minus(next, earlier, inner(places, next, earlier))
    const length = Math.sqrt(inner(places, next, next))
    found.push(next.map((coefficient) => coefficient / length))
  }
  return found
}

function inner(places: Float64Array, a: readonly number[], b: readonly number[]): number {
  return places.reduce((sum, place) => sum + valueAt(a, place) * valueAt(b, place), 0)
}

function minus(a: readonly number[], b: readonly number[], times: number): number[] {
  return a.map((coefficient, power) => coefficient - times * (b[power] ?? 0))
}

function valueAt(polynomial: readonly number[], x: number): number {
  return polynomial.reduceRight((value, coefficient) => value * x + coefficient, 0)
}

function slopeAt(polynomial: readonly number[], x: number): number {
  return valueAt(polynomial.slice(1).map((coefficient, power) => coefficient * (power + 1)), x)
}
