import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { askHardest, both, forkPreload, rearSteps, tyres } from './parts'

export const twinShocks: Architecture = {
  key: 'twin-shocks',
  label: phrase('Fork preload and two shocks in steps'),
  about: phrase('Preload on both fork caps, and a stepped ring on each of two rear shocks.'),
  asks: [askHardest],
  adjusters: (answer) => [forkPreload(), rearSteps(answer('most_preload'), both), ...tyres],
  machine: ['rear: {springs: 2}'],
}
