import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { standardGravity } from './gravity'

/**
 * Load that goes from one axle to the other for each g of braking or drive, N: m · g · h / L.
 * Proportional to height over wheelbase; `loadTransfer` gives the axle loads that come of it.
 * Source: moments about a contact point.
 */
export function transferPerG({ massKg, wheelbaseMm, heightMm }: { massKg: Amount | undefined; wheelbaseMm: Amount | undefined; heightMm: Amount | undefined }): Outcome {
  return derive({
    formula: 'transfer = m · g · h / L', unit: 'N',
    from: {
      m: given(say('mass on both axles'), 'kg', massKg), g: given(say('standard gravity'), 'm/s²', standardGravity),
      h: given(say('height of the centre of mass'), 'mm', heightMm), L: given(say('wheelbase'), 'mm', wheelbaseMm),
    },
    by: ({ m, g, h, L }) => (m * g * h) / L,
    unless: ({ m, h, L }) => (Math.min(m, h, L) > 0 ? undefined : say('a mass, a height and a wheelbase above zero')),
    assumptions: [say('steady, level ground, no lift or drag of the air'), say('the centre of mass stays where it is')],
    source: say('moments about a contact point'),
  })
}
