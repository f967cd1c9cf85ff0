import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { forkDualSpeedAtFoot, forkHeight, forkPreload, forkRebound, shockCollar, shockDualSpeed, shockRebound, steeringDamper, tyres } from './parts'

export const dualSpeedBothEnds: Architecture = {
  key: 'dual-speed-both-ends',
  label: phrase('High- and low-speed compression at both ends, steering damper'),
  about: phrase('A racing machine: compression split by speed at both fork feet and on the shock, rebound, preload, fork height and a steering damper.'),
  asks: [],
  adjusters: () => [forkPreload(), forkRebound(), ...forkDualSpeedAtFoot, forkHeight, shockCollar, shockRebound, ...shockDualSpeed, steeringDamper, ...tyres],
}
