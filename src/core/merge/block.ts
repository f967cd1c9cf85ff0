import type { TreeNode } from '../notebook/tree'

/**
 * A stretch of whole lines of a notebook that stands for one thing: a key with its value, an entry, one adjuster of an
 * entry. `lead` and `text` of all blocks with `head` and `tail` around them are the text they were cut from, to the byte.
 */
export interface Block {
  /** The same thing has the same key on either side; unique among its neighbours. */
  key: string
  /** In a sentence: 'fork_rebound of ‘run-1’', 'entry ‘run-1’'. */
  name: string
  /** An item of a list, behind a dash. */
  isItem: boolean
  /** The blank lines and comments above it. */
  lead: string
  text: string
  /** Its value, whose places count in `source`. */
  node: TreeNode
  source: string
  /** Where `text` begins in `source`. */
  start: number
  /** The day of an entry, as written. */
  date?: string
  /** Where it can be merged part by part. */
  inside?: Inside
}

/** What a map or list holds, between the lines that open it and the comments that end it. */
export interface Inside {
  kind: 'pairs' | 'items'
  head: string
  blocks: Block[]
  tail: string
}
