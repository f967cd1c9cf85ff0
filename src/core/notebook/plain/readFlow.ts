import type { ListNode, MapNode, Pair, TreeNode } from '../tree'
import { code, type Cursor } from './cursor'
import { mostDepth } from './mostDepth'
import { readWord } from './readWord'

/** Reads a value that stands on one line: a word, or what is in brackets. */
export function readInLine(cursor: Cursor, inFlow: boolean): TreeNode | undefined {
  const first = cursor.code
  if (first !== code.openList && first !== code.openMap) return readWord(cursor, inFlow)
  if (++cursor.depth > mostDepth) return undefined
  const made = first === code.openList ? readList(cursor) : readMap(cursor)
  cursor.depth--
  return made
}

function readList(cursor: Cursor): ListNode | undefined {
  const start = cursor.at
  const items: TreeNode[] = []
  const isRead = readItems(cursor, code.closeList, () => {
    const item = readInLine(cursor, true)
    if (item) items.push(item)
    return item !== undefined
  })
  return isRead ? { kind: 'list', flow: true, items, range: cursor.placed(start, cursor.at) } : undefined
}

function readMap(cursor: Cursor): MapNode | undefined {
  const start = cursor.at
  const pairs: Pair[] = []
  const keys = new Set<string>()
  const isRead = readItems(cursor, code.closeMap, () => {
    const key = readWord(cursor, true)
    if (!key || keys.has(key.text) || cursor.code !== code.colon) return false
    keys.add(key.text)
    cursor.at++
    cursor.skipSpaces()
    const value = readInLine(cursor, true)
    if (value) pairs.push({ key, value })
    return value !== undefined
  })
  return isRead ? { kind: 'map', flow: true, pairs, range: cursor.placed(start, cursor.at) } : undefined
}

/** From an opening bracket to behind the closing one, with a comma between what is read; none behind the last. */
function readItems(cursor: Cursor, close: number, read: () => boolean): boolean {
  cursor.at++
  cursor.skipSpaces()
  let isOver = cursor.code === close
  if (isOver) cursor.at++
  while (!isOver) {
    if (!read()) return false
    cursor.skipSpaces()
    isOver = cursor.code === close
    if (!isOver && cursor.code !== code.comma) return false
    cursor.at++
    if (!isOver) cursor.skipSpaces()
  }
  return true
}
