import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { standardGravity } from '../loads/gravity'

const rao = 'S. S. Rao, Mechanical Vibrations'

/** Damped frequency in Hz from counting: cycles / seconds. @example dampedFrequency({ cycles: 1, seconds: 0.5 }) // 2 Hz */
export function dampedFrequency({ cycles, seconds }: { cycles: Amount | undefined; seconds: Amount | undefined }): Outcome {
  return derive({
    formula: 'fd = cycles / seconds', unit: 'Hz',
    from: { cycles: given(say('cycles counted'), '', cycles), seconds: given(say('time they took'), 's', seconds) },
    by: (v) => v.cycles / v.seconds,
    unless: (v) => (v.cycles > 0 && v.seconds > 0 ? undefined : say('cycles and a time above zero')),
    source: say('definition of frequency'),
  })
}

/** Natural frequency in Hz from the damped one: fd / √(1 − ratio²). */
export function naturalFrequency({ dampedHz, ratio }: { dampedHz: Amount | undefined; ratio: Amount | undefined }): Outcome {
  return derive({
    formula: 'fn = fd / √(1 − ratio²)', unit: 'Hz',
    from: { fd: given(say('damped frequency'), 'Hz', dampedHz), ratio: given(say('damping ratio'), '', ratio) },
    by: ({ fd, ratio: z }) => fd / Math.sqrt(1 - z * z),
    unless: ({ ratio: z }) => (z >= 0 && z < 1 ? undefined : say('a damping ratio below 1')),
    source: rao,
  })
}

/**
 * Natural frequency in Hz of an end from its wheel rate and what hangs on it: √(1000 · k · g / W) / 2π.
 *
 * `k` N/mm, vertical at the wheel; `W` N, the sprung load. Assumes a tyre much stiffer than the spring and the ends apart.
 */
export function frequencyFromRate({ wheelRateNPerMm, sprungLoadN }: { wheelRateNPerMm: Amount | undefined; sprungLoadN: Amount | undefined }): Outcome {
  return derive({
    formula: 'fn = √(1000 · k · g / W) / (2 · π)', unit: 'Hz',
    from: {
      k: given(say('wheel rate'), 'N/mm', wheelRateNPerMm),
      g: given(say('standard gravity'), 'm/s²', standardGravity),
      W: given(say('sprung load on this end'), 'N', sprungLoadN),
    },
    by: ({ k, g, W }) => Math.sqrt((1000 * k * g) / W) / (2 * Math.PI),
    unless: ({ k, W }) => (k > 0 && W > 0 ? undefined : say('a wheel rate and a load above zero')),
    assumptions: [say('tyre left out'), say('front and rear move apart from each other')],
    source: rao,
  })
}

/**
 * Natural frequency in Hz from how far the load presses the spring together, mm at the wheel: √(1000 · g / deflection) / 2π.
 * That is sag plus what the preload holds, both at the wheel; from the sag alone it comes out too high.
 * @example frequencyFromDeflection(35) // 2.664 Hz
 */
export function frequencyFromDeflection(deflectionMm: Amount | undefined): Outcome {
  return derive({
    formula: 'fn = √(1000 · g / x) / (2 · π)', unit: 'Hz',
    from: { g: given(say('standard gravity'), 'm/s²', standardGravity), x: given(say('deflection: sag and preload at the wheel'), 'mm', deflectionMm) },
    by: ({ g, x }) => Math.sqrt((1000 * g) / x) / (2 * Math.PI),
    unless: ({ x }) => (x > 0 ? undefined : say('a deflection above zero')),
    assumptions: [say('linear spring')],
    source: rao,
  })
}
