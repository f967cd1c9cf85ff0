import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { forkHeight, forkPreload, forkRebound, shockCollar, shockRebound, tyres } from './parts'

export const preloadAndRebound: Architecture = {
  key: 'preload-and-rebound',
  label: phrase('Preload and rebound at both ends'),
  about: phrase('No compression adjusters: preload and rebound on both fork caps, a collar and a rebound screw on the shock.'),
  asks: [],
  adjusters: () => [forkPreload(), forkRebound(), forkHeight, shockCollar, shockRebound, ...tyres],
}
