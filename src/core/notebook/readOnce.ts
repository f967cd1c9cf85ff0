import { readQuantity, type Quantity } from '../notation/quantity'
import type { Reading } from '../notation/reading'
import type { Dimension } from '../notation/units'
import type { ScalarNode } from './tree'

interface Read {
  allowed: string
  reading: Reading<Quantity>
}

/** Nearly always one a node. */
const readings = new WeakMap<ScalarNode, Read[]>()

/** A value read as a quantity, once however many ask. */
export function readOnce(node: ScalarNode, allowed: readonly [Dimension, ...Dimension[]]): Reading<Quantity> {
  const key = allowed.length === 1 ? allowed[0] : allowed.join(' ')
  const known = readings.get(node)
  if (known) for (const read of known) if (read.allowed === key) return read.reading
  const reading = readQuantity(node.text, ...allowed)
  if (known) known.push({ allowed: key, reading })
  else readings.set(node, [{ allowed: key, reading }])
  return reading
}
