/** A range that a number usually lies in; outside it, it is worth a second look, no more. */
export interface PlausibleRange {
  low: number
  high: number
  unit: '°' | 'mm'
  source: string
}

const foale = 'T. Foale, Motor Cycle News, 22 February 2017'
const trevitt = 'A. Trevitt, Sportbike Suspension Tuning'

/** Rake and trail as published: sports machines, and every sort from racing (22°) over touring (30°) to custom (45°). */
export const plausibleSteering = {
  sportRake: { low: 20, high: 25, unit: '°', source: trevitt },
  sportTrail: { low: 80, high: 110, unit: 'mm', source: trevitt },
  anyRake: { low: 20, high: 45, unit: '°', source: `${foale}; lower end ${trevitt}` },
} as const satisfies Record<string, PlausibleRange>

/** Where a number lies against a range; both bounds are within. */
export function judgePlausible(value: number, { low, high }: PlausibleRange): 'below' | 'within' | 'above' {
  return value < low ? 'below' : value > high ? 'above' : 'within'
}
