import { phrase } from '../../words/say'
import type { Architecture } from './architecture'
import { tyres } from './parts'

export const nothingAdjustable: Architecture = {
  key: 'nothing-adjustable',
  label: phrase('Nothing adjustable'),
  about: phrase('Springs and damping are as the maker built them: only sag can be read and the tyres be set.'),
  asks: [],
  adjusters: () => tyres,
}
