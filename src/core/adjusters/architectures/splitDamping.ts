import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { askLeg, forkCompression, forkHeight, forkPreload, forkRebound, legAndOther, shockCollar, shockRebound, tyres } from './parts'

export const splitDamping: Architecture = {
  key: 'split-damping',
  label: phrase('Rebound in one leg, compression in the other'),
  about: phrase('Preload on both fork caps, one damping circuit in each leg, and a shock with collar and rebound.'),
  asks: [askLeg('rebound_leg', phrase('Which fork leg has the rebound adjuster?'), 'right')],
  adjusters: (answer) => {
    const [rebound, compression] = legAndOther(answer('rebound_leg'))
    return [forkPreload(), forkRebound(rebound), forkCompression(compression), forkHeight, shockCollar, shockRebound, ...tyres]
  },
}
