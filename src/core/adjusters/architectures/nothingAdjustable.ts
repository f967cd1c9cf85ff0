import type { Architecture } from './architecture'
import { tyres } from './parts'

export const nothingAdjustable: Architecture = {
  key: 'nothing-adjustable',
  label: 'Nothing adjustable',
  about: 'Springs and damping are as the maker built them: only sag can be read and the tyres be set.',
  asks: [],
  adjusters: () => tyres,
}
