import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, reasons, type Amount, type Outcome, type Result } from '../working/result'
import { standardGravity } from './gravity'

export interface Loads {
  frontN: Result
  rearN: Result
  /** The wheel that would leave the ground: its load is below zero, which is told and not clipped. */
  lifted?: 'front' | 'rear'
}

export interface MassPlace {
  massKg: Amount | undefined
  wheelbaseMm: Amount | undefined
  /** Centre of mass ahead of the rear contact point, mm. */
  aheadOfRearMm: Amount | undefined
  /** Centre of mass above the ground, mm. */
  heightMm: Amount | undefined
}

/**
 * Axle loads in N while braking or driving at `decelerationG` (braking above zero, driving below, in g).
 *
 * front = m·g·(b + a·h) / L; rear = m·g − front. Their sum stays m·g.
 * Assumes steady deceleration on level ground, suspension that has settled, no lift or drag of the air.
 * Source: moments about a contact point.
 */
export function loadTransfer({ massKg, wheelbaseMm, aheadOfRearMm, heightMm, decelerationG }: MassPlace & { decelerationG: Amount | undefined }): Outcome<Loads> {
  const from = {
    m: given(say('mass of machine and rider'), 'kg', massKg),
    g: given(say('standard gravity'), 'm/s²', standardGravity),
    L: given(say('wheelbase'), 'mm', wheelbaseMm),
    b: given(say('centre of mass ahead of the rear contact'), 'mm', aheadOfRearMm),
    h: given(say('height of the centre of mass'), 'mm', heightMm),
    a: given(say('deceleration'), 'g', decelerationG),
  }
  const common = {
    unit: 'N', from, source: say('moments about a contact point'),
    unless: (v: { m: number; L: number }) => (v.m > 0 && v.L > 0 ? undefined : say('a mass and a wheelbase above zero')),
    assumptions: [say('steady, level ground, no lift or drag of the air'), say('the centre of mass stays where it is')],
  }
  const frontN = derive({ formula: 'front = m · g · (b + a · h) / L', by: ({ m, g, L, b, h, a }) => (m * g * (b + a * h)) / L, ...common })
  const rearN = derive({ formula: 'rear = m · g · (1 − (b + a · h) / L)', by: ({ m, g, L, b, h, a }) => m * g * (1 - (b + a * h) / L), ...common })
  if (isMissing(frontN) || isMissing(rearN)) return { missing: reasons(frontN, rearN) }
  const lifted = rearN.value < 0 ? 'rear' : frontN.value < 0 ? 'front' : undefined
  return { frontN, rearN, ...(lifted ? { lifted } : {}) }
}

/**
 * The deceleration in g at which the rear wheel lifts: l / h + slope, l = centre of mass behind the front contact.
 *
 * `slope` is rise over run, below zero downhill. Source: J. S. Riel, Maximal Braking on a Standard Bicycle (2005), for
 * gentle slopes.
 */
export function liftingDeceleration({ behindFrontMm, heightMm, slope = 0 }: { behindFrontMm: Amount | undefined; heightMm: Amount | undefined; slope?: Amount }): Outcome {
  return derive({
    formula: 'limit = l / h + slope', unit: 'g',
    from: {
      l: given(say('centre of mass behind the front contact'), 'mm', behindFrontMm),
      h: given(say('height of the centre of mass'), 'mm', heightMm),
      slope: given(say('slope, rise over run'), '', slope),
    },
    by: (v) => v.l / v.h + v.slope,
    unless: ({ h }) => (h > 0 ? undefined : say('a height above zero')),
    assumptions: [say('the front tyre holds that much'), say('gentle slope')],
    source: 'J. S. Riel, Maximal Braking on a Standard Bicycle (2005)',
  })
}

/** The acceleration in g at which the front wheel lifts: b / h − slope, b = centre of mass ahead of the rear contact. Source: as above, mirrored. */
export function liftingAcceleration({ aheadOfRearMm, heightMm, slope = 0 }: { aheadOfRearMm: Amount | undefined; heightMm: Amount | undefined; slope?: Amount }): Outcome {
  return derive({
    formula: 'limit = b / h − slope', unit: 'g',
    from: {
      b: given(say('centre of mass ahead of the rear contact'), 'mm', aheadOfRearMm),
      h: given(say('height of the centre of mass'), 'mm', heightMm),
      slope: given(say('slope, rise over run'), '', slope),
    },
    by: (v) => v.b / v.h - v.slope,
    unless: ({ h }) => (h > 0 ? undefined : say('a height above zero')),
    assumptions: [say('the rear tyre holds that much'), say('gentle slope')],
    source: say('moments about the rear contact point'),
  })
}
