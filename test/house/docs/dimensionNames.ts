import type { Dimension } from '../../../src/core/notation/units'

/** What the documents call a dimension. */
export function nameOfDimension(dimension: Dimension): string {
  return dimension === 'stiffness' ? 'spring rate' : dimension === 'share' ? 'share of travel' : dimension
}
