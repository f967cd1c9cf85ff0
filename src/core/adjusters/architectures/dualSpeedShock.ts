import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { forkCompressionAtFoot, forkHeight, forkPreload, forkRebound, shockCollar, shockDualSpeed, shockRebound, tyres } from './parts'

export const dualSpeedShock: Architecture = {
  key: 'dual-speed-shock',
  label: phrase('Shock with high- and low-speed compression'),
  about: phrase('Both circuits in both fork legs, and a shock whose compression is a low-speed screw inside a high-speed hex.'),
  asks: [],
  adjusters: () => [forkPreload(), forkRebound(), forkCompressionAtFoot, forkHeight, shockCollar, shockRebound, ...shockDualSpeed, ...tyres],
}
