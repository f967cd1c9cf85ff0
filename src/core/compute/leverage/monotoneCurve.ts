import { curveMonotoneX } from 'd3-shape'

/** A smooth curve through measured points, as far as the points reach. */
export interface Curve {
  from: number
  to: number
  /** Value, slope and curvature at `x`; `undefined` outside `from`…`to`. */
  at(x: number): CurvePoint | undefined
}

export interface CurvePoint {
  value: number
  slope: number
  curvature: number
}

export type Point = readonly [x: number, y: number]

/** A cubic piece in Bernstein form: its ends and the heights of its two inner control points, evenly spaced in x. */
interface Piece {
  from: number
  to: number
  heights: readonly [number, number, number, number]
}

/**
 * The monotone cubic curve through points with rising x: it rises where the points rise and never swings past them.
 * `undefined` with fewer than two points or when x does not rise.
 *
 * The pieces come from d3-shape's `curveMonotoneX`. That one bends the ends straight, which would put the curvature at
 * both ends of the travel at zero; so one more point is added beyond either end, on the parabola through the last three,
 * and its piece dropped. A parabola is then met exactly, ends included.
 * The slope is continuous, the curvature jumps at the points.
 * Source: M. Steffen, Astronomy and Astrophysics 239 (1990) 443, which d3-shape implements.
 */
export function monotoneCurve(points: readonly Point[]): Curve | undefined {
  const rising = points.every(([x], place) => Number.isFinite(x) && (place === 0 || x > points[place - 1]![0]))
  if (points.length < 2 || !rising || !points.every(([, y]) => Number.isFinite(y))) return undefined
  const extended = [pointBefore(points), ...points, pointBefore([...points].reverse())]
  const pieces = cubicPieces(extended).slice(1, -1)
  const from = points[0]![0]
  const to = points.at(-1)![0]
  return { from, to, at: (x) => (x >= from && x <= to ? evaluate(pieces.find((piece) => x <= piece.to)!, x) : undefined) }
}

/** The point one step before the first, on the parabola through the first three, or on the line through two. */
function pointBefore([first, second, third]: readonly Point[]): Point {
  const [[x0, y0], [x1, y1]] = [first!, second!]
  const x = 2 * x0 - x1
  const slope = (y1 - y0) / (x1 - x0)
  const bend = third ? ((third[1] - y1) / (third[0] - x1) - slope) / (third[0] - x0) : 0
  return [x, y0 + slope * (x - x0) + bend * (x - x0) * (x - x1)]
}

function cubicPieces(points: readonly Point[]): Piece[] {
  const pieces: Piece[] = []
  let [x, y] = points[0]!
  const pen = {
    moveTo() {}, closePath() {},
    lineTo() {},
    bezierCurveTo(...[, y1, , y2, toX, toY]: [number, number, number, number, number, number]) {
      pieces.push({ from: x, to: toX, heights: [y, y1, y2, toY] })
      x = toX
      y = toY
    },
  }
  const curve = curveMonotoneX(pen as unknown as Parameters<typeof curveMonotoneX>[0])
  curve.lineStart()
  for (const [px, py] of points) curve.point(px, py)
  curve.lineEnd()
  return pieces
}

function evaluate({ from, to, heights: [a, b, c, d] }: Piece, x: number): CurvePoint {
  const width = to - from
  const t = (x - from) / width
  const s = 1 - t
  return {
    value: s ** 3 * a + 3 * s * s * t * b + 3 * s * t * t * c + t ** 3 * d,
    slope: (3 * (s * s * (b - a) + 2 * s * t * (c - b) + t * t * (d - c))) / width,
    curvature: (6 * (s * (a - 2 * b + c) + t * (b - 2 * c + d))) / (width * width),
  }
}
