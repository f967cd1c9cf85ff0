import type { Range } from '../text'

/**
 * The text of a notebook as a tree in which every value knows its place. It is our own, so that what stands on it
 * does not depend on the parser behind `parseTree`.
 */
export type TreeNode = ScalarNode | MapNode | ListNode

interface Placed {
  range: Range
  /** It stands for a value anchored elsewhere. */
  alias?: boolean
  /** It is, or is part of, a value that an alias elsewhere stands for: changing it would change both places. */
  shared?: boolean
  /** An anchor or a tag stands before it, outside `range`. */
  marked?: boolean
}

export interface ScalarNode extends Placed {
  kind: 'scalar'
  /** What YAML makes of it. */
  value: string | number | boolean | null
  /** As written, without quotes: `1.0` stays `1.0`. */
  text: string
  style: 'plain' | 'single' | 'double' | 'block' | 'empty'
}

export interface Pair {
  key: ScalarNode
  value: TreeNode
}

export interface MapNode extends Placed {
  kind: 'map'
  flow: boolean
  pairs: Pair[]
}

export interface ListNode extends Placed {
  kind: 'list'
  flow: boolean
  items: TreeNode[]
}

/** A value that is not there, where it would stand. */
export function emptyAt(offset: number): ScalarNode {
  return { kind: 'scalar', value: null, text: '', style: 'empty', range: { start: offset, end: offset } }
}

/** Notes that an alias stands for a node, and so for all that it holds. */
export function markShared(node: TreeNode): void {
  if (node.shared) return
  node.shared = true
  if (node.kind === 'list') node.items.forEach(markShared)
  if (node.kind === 'map') for (const { key, value } of node.pairs) [key, value].forEach(markShared)
}

/** A mark for each item of a list that was moved, the same before and after. */
const origins = new WeakMap<TreeNode, object>()

/** Of two items of lists with one origin each is the other moved: they differ in their places alone. */
export function originOf(node: TreeNode): object {
  const known = origins.get(node) ?? {}
  origins.set(node, known)
  return known
}

/** The same tree at another place of a text. */
export function shiftTree<Node extends TreeNode>(node: Node, by: number): Node {
  if (by === 0) return node
  const moved = shifted(node, by)
  if (node.kind === 'list' && moved.kind === 'list') node.items.forEach((item, at) => sameOrigin(item, moved.items[at]!))
  return moved
}

function sameOrigin(item: TreeNode, moved: TreeNode): void {
  origins.set(moved, originOf(item))
}

function shifted<Node extends TreeNode>(node: Node, by: number): Node {
  const moved = movedSelf(node, { start: node.range.start + by, end: node.range.end + by }, by)
  if (node.alias !== undefined) moved.alias = node.alias
  if (node.shared !== undefined) moved.shared = node.shared
  if (node.marked !== undefined) moved.marked = node.marked
  return moved as Node
}

/** Property by property: a season has a hundred thousand of them, and a spread takes three times as long. */
function movedSelf(node: TreeNode, range: Range, by: number): TreeNode {
  if (node.kind === 'scalar') return { kind: 'scalar', value: node.value, text: node.text, style: node.style, range }
  if (node.kind === 'list') return { kind: 'list', flow: node.flow, items: node.items.map((item) => shifted(item, by)), range }
  return { kind: 'map', flow: node.flow, pairs: node.pairs.map(({ key, value }) => ({ key: shifted(key, by), value: shifted(value, by) })), range }
}

/** Whether an alias elsewhere would lose what it stands for, were this taken out. */
export function holdsShared(node: TreeNode): boolean {
  if (node.alias) return false
  if (node.shared) return true
  if (node.kind === 'map') return node.pairs.some(({ key, value }) => holdsShared(key) || holdsShared(value))
  return node.kind === 'list' && node.items.some(holdsShared)
}

export function pairOf(node: TreeNode | undefined, key: string): Pair | undefined {
  if (node?.kind !== 'map') return undefined
  // Asked for every value that anyone looks at: a loop costs a third of `find`.
  for (const pair of node.pairs) if (pair.key.text === key) return pair
  return undefined
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
