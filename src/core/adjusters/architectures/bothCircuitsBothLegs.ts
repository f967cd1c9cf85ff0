import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { forkCompressionAtFoot, forkHeight, forkPreload, forkRebound, shockCollar, shockCompression, shockRebound, tyres } from './parts'

export const bothCircuitsBothLegs: Architecture = {
  key: 'both-circuits-both-legs',
  label: phrase('Both circuits in both legs'),
  about: phrase('Preload and rebound on both fork caps, compression at both fork feet, and a shock with collar, reservoir and a rebound screw at its foot.'),
  asks: [],
  adjusters: () => [forkPreload(), forkRebound(), forkCompressionAtFoot, forkHeight, shockCollar, shockRebound, shockCompression, ...tyres],
}
