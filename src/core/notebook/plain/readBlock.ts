import type { Range } from '../../text'
import { emptyAt, type ListNode, type MapNode, type Pair, type ScalarNode, type TreeNode } from '../tree'
import { code, isLineEnd, type Cursor } from './cursor'
import { mostDepth } from './mostDepth'
import { readInLine } from './readFlow'
import { readWord } from './readWord'

/** Reads what begins at the cursor and goes on at its column, and goes to the first word behind it. */
export function readBlock(cursor: Cursor): TreeNode | undefined {
  if (++cursor.depth > mostDepth) return undefined
  const made = cursor.isMark(code.dash) ? readList(cursor) : readMapOrValue(cursor)
  cursor.depth--
  return made
}

function readList(cursor: Cursor): ListNode | undefined {
  const { at: start, column } = cursor
  const items: TreeNode[] = []
  do {
    const item = readBehindMark(cursor, column, false)
    if (!item || cursor.column > column) return undefined
    items.push(item)
  } while (cursor.column === column && cursor.isMark(code.dash))
  return { kind: 'list', flow: false, items, range: reaching(start + cursor.base, items.at(-1)!) }
}

function readMapOrValue(cursor: Cursor): TreeNode | undefined {
  const { column } = cursor
  const first = readInLine(cursor, false)
  if (!first) return undefined
  if (first.kind === 'scalar' && cursor.isMark(code.colon)) return readMap(cursor, first, column)
  return cursor.nextLine() ? first : undefined
}

function readMap(cursor: Cursor, first: ScalarNode, column: number): MapNode | undefined {
  const pairs: Pair[] = []
  const keys = new Set<string>()
  let key = first
  for (;;) {
    const { start, end } = key.range
    if (keys.has(key.text) || end - start > longestKey) return undefined
    keys.add(key.text)
    const value = readBehindMark(cursor, column, true)
    if (!value || cursor.column > column) return undefined
    pairs.push({ key, value })
    if (cursor.column < column) break
    const next = readWord(cursor, false)
    if (!next || !cursor.isMark(code.colon)) return undefined
    key = next
  }
  return { kind: 'map', flow: false, pairs, range: reaching(first.range.start, pairs.at(-1)!.value) }
}

/** YAML lets a key be longer by a little. */
const longestKey = 1000

/** Reads what stands behind a dash or the colon of a key: on the same line, or from the next on further in. */
function readBehindMark(cursor: Cursor, column: number, isPair: boolean): TreeNode | undefined {
  const mark = cursor.at++
  cursor.skipSpaces()
  const { at } = cursor
  if (isLineEnd(cursor.code) || cursor.code === code.hash) {
    cursor.at = mark + 1
    cursor.nextLine()
    // A list may stand as far left as its key.
    const isBelow = cursor.column > column || (isPair && cursor.column === column && cursor.isMark(code.dash))
    return isBelow ? readBlock(cursor) : emptyAt(at + cursor.base)
  }
  if (!isPair) {
    cursor.column = column + at - mark
    return readBlock(cursor)
  }
  const value = readInLine(cursor, false)
  return value && cursor.nextLine() ? value : undefined
}

function reaching(start: number, last: TreeNode): Range {
  return { start, end: Math.max(last.range.end, start + 1) }
}
