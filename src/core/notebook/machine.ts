import type { Quantity } from '../notation/quantity'
import type { Dimension } from '../notation/units'
import type { Range } from '../text'
import type { Notebook } from './notebook'
import { oncePer } from './oncePer'
import { readOnce } from './readOnce'
import { nodeAt, pairOf, scalarAt, type MapNode, type TreeNode } from './tree'

/** A fact about the machine or rider, in the base unit of its dimension, and where it stands. */
export interface Fact {
  base: number
  quantity: Quantity
  range: Range
}

/** A fact under a path such as `['machine', 'front', 'travel']`; absent where it is missing or cannot be read. */
export function factAt(notebook: Notebook, path: readonly (string | number)[], ...allowed: [Dimension, ...Dimension[]]): Fact | undefined {
  return factIn(notebook.root, path, ...allowed)
}

/** The same under any node, such as an entry's. */
export function factIn(within: TreeNode | undefined, path: readonly (string | number)[], ...allowed: [Dimension, ...Dimension[]]): Fact | undefined {
  const node = scalarAt(within, path)
  const reading = node && readOnce(node, allowed)
  return reading?.value && { base: reading.value.base, quantity: reading.value, range: node!.range }
}

/** Whether an entry has scales of its own to tell of; hardly any has. */
export const isWeighed = oncePer((entry: MapNode) => pairOf(entry, 'axle_loads') !== undefined)

/** Words under a path, such as the machine's name. */
export function wordsAt(notebook: Notebook, path: readonly string[]): string | undefined {
  return scalarAt(notebook.root, path)?.text
}

/** A sag window a notebook sets for its machine: from and to, in mm or in % of travel as written. */
export function windowAt(notebook: Notebook, end: 'front' | 'rear', sag: 'static_sag' | 'rider_sag'): { from: Fact; to: Fact } | undefined {
  const path = ['machine', end, 'targets', sag]
  if (nodeAt(notebook.root, path)?.kind !== 'list') return undefined
  const from = factAt(notebook, [...path, 0], 'length', 'share')
  const to = factAt(notebook, [...path, 1], 'length', 'share')
  return from && to && from.quantity.unit.dimension === to.quantity.unit.dimension ? { from, to } : undefined
}
