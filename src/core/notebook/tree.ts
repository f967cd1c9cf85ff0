import type { Range } from '../text'

/**
 * The text of a notebook as a tree in which every value knows its place. It is our own, so that what stands on it
 * does not depend on the parser behind `parseTree`.
 */
export type TreeNode = ScalarNode | MapNode | ListNode

export interface ScalarNode {
  kind: 'scalar'
  /** What YAML makes of it. */
  value: string | number | boolean | null
  /** As written, without quotes: `1.0` stays `1.0`. */
  text: string
  style: 'plain' | 'single' | 'double' | 'block' | 'empty'
  range: Range
  /** It stands for a value anchored elsewhere. */
  alias?: boolean
}

export interface Pair {
  key: ScalarNode
  value: TreeNode
}

export interface MapNode {
  kind: 'map'
  flow: boolean
  pairs: Pair[]
  range: Range
  alias?: boolean
}

export interface ListNode {
  kind: 'list'
  flow: boolean
  items: TreeNode[]
  range: Range
  alias?: boolean
}

export function pairOf(node: TreeNode | undefined, key: string): Pair | undefined {
  return node?.kind === 'map' ? node.pairs.find((pair) => pair.key.text === key) : undefined
}

/** The value under a path of keys (or list indices); `undefined` where something on the way is missing. */
export function nodeAt(node: TreeNode | undefined, path: readonly (string | number)[]): TreeNode | undefined {
  let at = node
  for (const step of path) at = typeof step === 'number' ? (at?.kind === 'list' ? at.items[step] : undefined) : pairOf(at, step)?.value
  return at
}

/** The scalar under a path, unless it is missing or left empty. */
export function scalarAt(node: TreeNode | undefined, path: readonly (string | number)[]): ScalarNode | undefined {
  const found = nodeAt(node, path)
  return found?.kind === 'scalar' && found.style !== 'empty' && found.value !== null ? found : undefined
}

/** Plain values for the schema check and for scripts: what a generic YAML library would give. */
export function toPlain(node: TreeNode | undefined): unknown {
  if (node === undefined) return undefined
  if (node.kind === 'scalar') return node.value
  if (node.kind === 'list') return node.items.map(toPlain)
  const result: Record<string, unknown> = {}
  // A key such as `__proto__` must become an ordinary property.
  for (const { key, value } of node.pairs) Object.defineProperty(result, key.text, { value: toPlain(value), enumerable: true, configurable: true, writable: true })
  return result
}
