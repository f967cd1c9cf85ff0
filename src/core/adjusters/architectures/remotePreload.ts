import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { forkHeight, forkPreload, forkRebound, shockKnob, shockRebound, tyres } from './parts'

export const remotePreload: Architecture = {
  key: 'remote-preload',
  label: phrase('Tourer with a remote preload knob'),
  about: phrase('Preload and rebound on both fork caps, and a shock whose preload is a knob on a hose.'),
  asks: [],
  adjusters: () => [forkPreload(), forkRebound(), forkHeight, shockKnob, shockRebound, ...tyres],
}
