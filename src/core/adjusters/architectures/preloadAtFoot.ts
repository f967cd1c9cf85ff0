import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { askLeg, forkCompression, forkHeight, forkPreloadAtFoot, forkRebound, legAndOther, shockKnob, shockRebound, tyres } from './parts'

export const preloadAtFoot: Architecture = {
  key: 'preload-at-foot',
  label: phrase('Split damping with preload at the fork’s feet'),
  about: phrase('One damping circuit in each fork leg, preload at the foot of both, and a shock with a remote preload knob and rebound.'),
  asks: [askLeg('rebound_leg', phrase('Which fork leg has the rebound adjuster?'), 'right')],
  adjusters: (answer) => {
    const [rebound, compression] = legAndOther(answer('rebound_leg'))
    return [forkPreloadAtFoot, forkRebound(rebound), forkCompression(compression), forkHeight, shockKnob, shockRebound, ...tyres]
  },
}
