/** A made-up ride: the same numbers every time, from whole numbers wherever rounding could tell machines apart. */
export interface MadeRide {
  rows: number
  rateHz: number
  /** Middle and reach of the fork's and the rear's movement, mm. */
  front: { middle: number; reach: number; most: number }
  rear: { middle: number; reach: number; most: number }
}

export interface MadeRow {
  time: number
  front: number
  rear: number
  brake: number
  lap: number
}

/** A generator of whole numbers that is the same everywhere (Numerical Recipes' quick one). */
function random(seed: number): () => number {
  let state = seed >>> 0
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32
}

/** A triangle between -1 and 1, smoothed at its corners: like a sine, but of nothing but products. */
function wave(phase: number): number {
  const turn = phase - Math.floor(phase)
  const half = turn < 0.5 ? turn * 2 : (turn - 0.5) * 2
  const arch = 4 * half * (1 - half)
  return turn < 0.5 ? arch : -arch
}

/** The rows of a ride: braking every 20 s, a lap of 20 s, bumps that swing out, and the road's noise. */
export function makeRide({ rows, rateHz, front, rear }: MadeRide): MadeRow[] {
  const next = random(7)
  const noise = { front: 0, rear: 0 }
  return Array.from({ length: rows }, (_, row) => {
    const time = row / rateHz
    const inLap = time % 20
    const braking = inLap > 6 && inLap < 8.5
    noise.front += (next() - 0.5) * 2.4 - noise.front * 0.15
    noise.rear += (next() - 0.5) * 2.2 - noise.rear * 0.15
    const dive = braking ? Math.min(1, (inLap - 6) * 4, (8.5 - inLap) * 4) : 0
    const hit = inLap > 14 && inLap < 14.3 ? wave((inLap - 14) / 0.6) : 0
    const at = (end: { middle: number; reach: number; most: number }, swing: number, push: number) => Math.max(0, Math.min(end.most, end.middle + end.reach * (0.45 * wave(time * 0.37 + swing) + 0.3 * wave(time * 1.9 + swing) + push)))
    return {
      time, brake: braking ? 2 + 6 * dive : 0.1, lap: 1 + Math.floor(time / 20),
      front: at(front, 0, dive * 0.9 + hit) + Math.max(0, noise.front), rear: at(rear, 0.2, -dive * 0.5 + hit) + Math.max(0, noise.rear),
    }
  })
}

export interface Written {
  separator?: string
  decimal?: string
  quote?: string
  lineEnd?: string
  /** Lines before the headings. */
  before?: string[]
  units?: boolean
  time?: (row: MadeRow) => string
}

/** The ride as a logger writes it. */
export function writeRide(rows: readonly MadeRow[], { separator = ',', decimal = '.', quote = '', lineEnd = '\n', before = [], units = false, time }: Written = {}): string {
  const number = (value: number, digits: number) => value.toFixed(digits).replace('.', decimal)
  const line = (fields: readonly string[]) => fields.map((field) => quote + field + quote).join(separator) + lineEnd
  return [
    ...before.map((text) => text + lineEnd), line(['Time', 'Fork', 'Shock', 'Brake F', 'Lap']), ...(units ? [line(['s', 'mm', 'mm', 'bar', ''])] : []),
    ...rows.map((row) => line([time?.(row) ?? number(row.time, 3), number(row.front, 2), number(row.rear, 2), number(row.brake, 1), String(row.lap)])),
  ].join('')
}
