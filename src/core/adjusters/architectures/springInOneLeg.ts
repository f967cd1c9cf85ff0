import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { askLeg, forkCompression, forkHeight, forkPreload, forkReboundAtFoot, legAndOther, shockCollar, shockCompression, shockRebound, tyres } from './parts'

export const springInOneLeg: Architecture = {
  key: 'spring-in-one-leg',
  label: phrase('Spring in one leg, damping in the other'),
  about: phrase('One fork leg carries the spring and its preload, the other one compression on its cap and rebound at its foot; the shock has collar, reservoir and rebound.'),
  asks: [askLeg('spring_leg', phrase('Which fork leg has the spring?'), 'left')],
  adjusters: (answer) => {
    const [spring, damping] = legAndOther(answer('spring_leg'))
    return [forkPreload(spring), forkCompression(damping), forkReboundAtFoot(damping), forkHeight, shockCollar, shockRebound, shockCompression, ...tyres]
  },
}
