import { readQuantity, type Quantity } from '../notation/quantity'
import type { Reading } from '../notation/reading'
import type { Dimension } from '../notation/units'
import type { ScalarNode } from './tree'

const readings = new WeakMap<ScalarNode, Map<string, Reading<Quantity>>>()

/** A value read as a quantity, once however many ask. */
export function readOnce(node: ScalarNode, allowed: readonly [Dimension, ...Dimension[]]): Reading<Quantity> {
  const known = readings.get(node) ?? new Map<string, Reading<Quantity>>()
  readings.set(node, known)
  const key = allowed.join(' ')
  const reading = known.get(key) ?? readQuantity(node.text, ...allowed)
  known.set(key, reading)
  return reading
}
