import { findForbidden } from '../findForbidden'
import type { TreeNode } from '../tree'
import { Cursor } from './cursor'
import { readBlock } from './readBlock'

/** A tab, a mark of the encoding, and what stands between documents: each means something else in another place. */
const unknown = /[\t\ufeff]|^(?:---|\.\.\.|%)/m

/**
 * Reads the part of YAML that notebooks are written in: maps and lists of lines, or in brackets on one line; words and
 * quotes on one line; comments. Makes the tree that the library makes of the same text, in a fraction of the time.
 *
 * Of a piece of a longer text `base` is where it begins. `undefined` where anything is in doubt. Nothing is found fault with here: that is left to the library as well.
 */
export function readPlain(text: string, base = 0): TreeNode | undefined {
  if (unknown.test(text) || findForbidden(text).length > 0) return undefined
  const cursor = new Cursor(text, base)
  cursor.toFirstWord()
  if (cursor.column < 0) return undefined
  const root = readBlock(cursor)
  return cursor.column < 0 ? root : undefined
}
