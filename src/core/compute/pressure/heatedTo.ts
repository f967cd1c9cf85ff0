import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { seaLevelBar } from './standardAtmosphere'

/**
 * How warm the air in a sealed chamber got, °C, from its gauge pressure before and after: `sealedPressure` solved for
 * the temperature.
 *
 * T2 = (p2 + a) / (p1 + a) · (T1 + 273.15) − 273.15. Assumes a constant volume, nothing let in or out.
 * Source: gas law at constant volume.
 * @example heatedTo({ coldBar: 2, coldC: 20, hotBar: 2.411 }) // 60 °C
 */
export function heatedTo({ coldBar, coldC, hotBar, atmosphereBar = seaLevelBar }: {
  coldBar: Amount | undefined
  coldC: Amount | undefined
  hotBar: Amount | undefined
  atmosphereBar?: Amount
}): Outcome {
  return derive({
    formula: 'T2 = (p2 + a) / (p1 + a) · (T1 + 273.15) − 273.15', unit: '°C',
    from: {
      p1: given(say('gauge pressure, cold'), 'bar', coldBar), p2: given(say('gauge pressure, hot'), 'bar', hotBar),
      a: given(say('pressure of the air around'), 'bar', atmosphereBar), T1: given(say('temperature when cold'), '°C', coldC),
    },
    by: ({ p1, p2, a, T1 }) => ((p2 + a) / (p1 + a)) * (T1 + 273.15) - 273.15,
    unless: ({ p1, a, T1 }) => (p1 + a <= 0 ? say('an absolute pressure above zero') : T1 <= -273.15 ? say('a temperature above absolute zero') : undefined),
    assumptions: [say('constant volume, nothing let in or out'), say('the tyre was as cold as the air when it was set')],
    source: say('gas law at constant volume, absolute pressure and temperature'),
  })
}

/** How far a gauge pressure rose, percent of the cold one. Source: relative difference. */
export function pressureRise({ coldBar, hotBar }: { coldBar: Amount | undefined; hotBar: Amount | undefined }): Outcome {
  return derive({
    formula: 'rise = 100 · (hot − cold) / cold', unit: '%',
    from: { hot: given(say('gauge pressure, hot'), 'bar', hotBar), cold: given(say('gauge pressure, cold'), 'bar', coldBar) },
    by: ({ hot, cold }) => (100 * (hot - cold)) / cold,
    unless: ({ cold }) => (cold > 0 ? undefined : say('a cold pressure above zero')),
    source: say('relative difference of gauge pressures'),
  })
}
