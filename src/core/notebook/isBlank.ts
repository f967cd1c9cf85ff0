import type { TreeNode } from './tree'

/** Whether nothing is written here, or only YAML's own word for nothing. */
export function isBlank(node: TreeNode): boolean {
  return node.kind === 'scalar' && node.value === null
}
