import type { Dimension } from '../notation/units'
import type { SchemaNode } from './schemaKeys'

/** What a quantity may be in, by the name of its definition in the schema; a bare number has the first. */
const dimensions: Record<string, readonly [Dimension, ...Dimension[]]> = {
  length: ['length'], mass: ['mass'], angle: ['angle'], pressure: ['pressure'], temperature: ['temperature'], stiffness: ['stiffness'],
  volume: ['volume'],
  // Sag windows alone are plain amounts: mm, or a share of the travel.
  amount: ['length', 'share'],
}

/** The dimensions of the quantity that these schemas describe; `undefined` for anything else. */
export function dimensionsOf(nodes: readonly SchemaNode[]): readonly [Dimension, ...Dimension[]] | undefined {
  for (const { named } of nodes) if (named !== undefined && Object.hasOwn(dimensions, named)) return dimensions[named]
  return undefined
}
