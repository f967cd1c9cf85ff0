import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Damping coefficient in N·s/m: c = 2 · ratio · m · ωn = 4π · ratio · m · fn. At the wheel, for a sprung mass in kg.
 * Source: S. S. Rao, Mechanical Vibrations.
 * @example dampingCoefficient({ massKg: 200, naturalHz: 0.54652, ratio: 0.40371 }) // 554.5 N·s/m
 */
export function dampingCoefficient({ massKg, naturalHz, ratio }: {
  massKg: Amount | undefined
  naturalHz: Amount | undefined
  ratio: Amount | undefined
}): Outcome {
  return derive({
    formula: 'c = 4 · π · ratio · m · fn', unit: 'N·s/m',
    from: { m: given(say('sprung mass'), 'kg', massKg), fn: given(say('natural frequency'), 'Hz', naturalHz), ratio: given(say('damping ratio'), '', ratio) },
    by: ({ m, fn, ratio: z }) => 4 * Math.PI * z * m * fn,
    unless: ({ m, fn }) => (m > 0 && fn > 0 ? undefined : say('a mass and a frequency above zero')),
    assumptions: [say('damping in proportion to speed, alike both ways')],
    source: 'S. S. Rao, Mechanical Vibrations',
  })
}
