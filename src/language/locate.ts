import type { MapNode, ScalarNode, TreeNode } from '../core/notebook/tree'

/** A key or a value of the tree and how one gets there. */
export interface Located {
  on: 'key' | 'value'
  node: ScalarNode
  /** Keys, and `*` for a place in a list, as the schema wants it; the key itself is the last. */
  path: string[]
}

/** The key or the value that an offset stands in or right behind; what lies behind an alias is left to its anchor. */
export function locate(root: MapNode | undefined, offset: number): Located | undefined {
  return root && inside(root, offset, [])
}

function inside(node: TreeNode, offset: number, path: string[]): Located | undefined {
  if (node.kind === 'scalar') return holds(node, offset) && node.style !== 'empty' ? { on: 'value', node, path } : undefined
  if (node.alias) return undefined
  if (node.kind === 'list') return inList(node.flow ? node.items : lastBegun(node.items, offset), offset, path)
  for (const { key, value } of node.pairs) {
    const below = [...path, key.text]
    if (holds(key, offset)) return { on: 'key', node: key, path: below }
    const there = mayHold(value, offset) ? inside(value, offset, below) : undefined
    if (there) return there
  }
  return undefined
}

function inList(items: readonly TreeNode[], offset: number, path: string[]): Located | undefined {
  for (const item of items) {
    const found = mayHold(item, offset) ? inside(item, offset, [...path, '*']) : undefined
    if (found) return found
  }
  return undefined
}

/** Of items on lines of their own the one that an offset can stand in: the last that begins before it. */
function lastBegun(items: readonly TreeNode[], offset: number): readonly TreeNode[] {
  let [low, high] = [0, items.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (items[middle]!.range.start <= offset) low = middle + 1
    else high = middle
  }
  return items.slice(Math.max(0, low - 1), low)
}

function holds({ range }: TreeNode, offset: number): boolean {
  return range.start <= offset && offset <= range.end
}

/** A group in a half-typed text may reach further than its own range says. */
function mayHold(node: TreeNode, offset: number): boolean {
  return node.range.start <= offset && (node.kind !== 'scalar' || offset <= node.range.end)
}
