import { phrase } from '../../words/say'
import type { Architecture, Question } from './architecture'
import { askLeg, forkCompression, forkHeight, forkReboundAtFoot, inLeg, legAndOther, shockCollar, shockDualSpeed, shockRebound, tyres } from './parts'

const askGauge: Question = {
  key: 'gauge',
  label: phrase('What does your fork pump read in?'),
  choices: [{ value: 'psi', label: 'psi' }, { value: 'bar', label: 'bar' }, { value: 'kPa', label: 'kPa' }],
  usual: 'psi',
}

export const airFork: Architecture = {
  key: 'air-fork',
  label: phrase('Air fork with split functions, dual-speed shock'),
  about: phrase('Off-road: air with a balance chamber in one fork leg, all the damping in the other, and a shock with high- and low-speed compression.'),
  asks: [askLeg('air_leg', phrase('Which fork leg has the air?'), 'left'), askGauge],
  adjusters: (answer) => {
    const [air, damping] = legAndOther(answer('air_leg'))
    const counts = answer('gauge')
    return [
      ['fork_air', { on: 'fork', legs: air, controls: 'air_pressure', counts, ...inLeg('cap', air), tool: phrase('fork pump') }],
      ['fork_balance', { on: 'fork', legs: air, controls: 'balance_pressure', counts, ...inLeg('foot', air), tool: phrase('fork pump') }],
      forkCompression(damping), forkReboundAtFoot(damping), forkHeight, shockCollar, shockRebound, ...shockDualSpeed, ...tyres,
    ]
  },
}
