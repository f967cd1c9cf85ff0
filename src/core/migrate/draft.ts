import { nodeAt, type MapNode, type TreeNode } from '../notebook/tree'
import { renameKeys } from './renameKeys'
import type { Migration } from './migration'

/**
 * Format 0, a draft that was made up to show how a format is left behind; nobody ever kept a notebook in it. It said `bike`
 * for the machine, `count` of an adjuster, and of an entry `positions` and `why`.
 */
export const draft: Migration = {
  from: 0,
  says: '`bike` is called `machine`, `count` is `counts`, and an entry’s `positions` and `why` are its `settings` and `reason`.',
  changes: (root) => [
    ...renameKeys(root, { bike: 'machine' }),
    ...valuesOf(root, 'adjusters').flatMap((adjuster) => renameKeys(adjuster, { count: 'counts' })),
    ...valuesOf(root, 'entries').flatMap((entry) => renameKeys(entry, { positions: 'settings', why: 'reason' })),
  ],
}

function valuesOf(root: MapNode, key: string): TreeNode[] {
  const node = nodeAt(root, [key])
  return node?.kind === 'map' ? node.pairs.map(({ value }) => value) : node?.kind === 'list' ? node.items : []
}
