import { nearest } from '../nearest'
import { keysAt } from '../notebook/schemaKeys'
import type { TreeNode } from '../notebook/tree'
import type { NotebookRule, Report } from './rule'

export const unknownKey: NotebookRule = {
  code: 'unknown-key',
  severity: 'info',
  says: 'A key is not part of the format. It is kept, and nothing is done with it.',
  why: 'Most often it is a slip of the pen, and what stands behind it is missed.',
  checkNotebook: ({ root }) => (root ? walk(root, []) : []),
}

function walk(node: TreeNode, path: readonly string[]): Report[] {
  if (node.kind === 'scalar') return []
  if (node.kind === 'list') return node.items.flatMap((item) => walk(item, [...path, '*']))
  const known = keysAt(path)
  return node.pairs.flatMap(({ key, value }) => {
    if (known === undefined || known.has(key.text)) return walk(value, [...path, key.text])
    const meant = nearest(key.text, known)
    const fixes = meant ? [{ title: `Write ‘${meant}’`, changes: [{ ...key.range, text: meant }] }] : []
    return [{ message: `‘${key.text}’ is not a key of the format here${meant ? `; did you mean ${meant}?` : ''}`, range: key.range, fixes }]
  })
}
