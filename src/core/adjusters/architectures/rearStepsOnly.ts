import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { askHardest, rearSteps, tyres } from './parts'

export const rearStepsOnly: Architecture = {
  key: 'rear-steps-only',
  label: phrase('Rear preload in steps, nothing else'),
  about: phrase('One shock with a stepped ring, and a fork without adjusters.'),
  asks: [askHardest],
  adjusters: (answer) => [rearSteps(answer('most_preload')), ...tyres],
}
