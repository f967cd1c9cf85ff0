import { lineEndOf, type TextChange } from '../../text'
import type { MapNode, Pair } from '../tree'
import { behindBlock, indentUnder, pairEnd } from './layout'

/**
 * Puts a new pair into a map: behind `after` or, without it, behind the last pair. In block style it gets a line of its
 * own under its neighbours; in flow style it follows with a comma. `value` is the text behind `key:`, with its blank.
 */
export function insertPair(text: string, map: MapNode, key: string, value: string, after?: Pair): TextChange {
  const neighbour = after ?? map.pairs.at(-1)
  if (map.flow) return insertIntoFlow(text, map, `${key}:${value}`, neighbour)
  const indent = indentUnder(text, map)
  const at = neighbour ? behindBlock(text, neighbour.value, indent.length, pairEnd(text, neighbour)) : map.range.end
  return { start: at, end: at, text: `${lineEndOf(text)}${indent}${key}:${value}` }
}

function insertIntoFlow(text: string, map: MapNode, pair: string, neighbour: Pair | undefined): TextChange {
  if (!neighbour) return { start: map.range.start + 1, end: map.range.start + 1, text: pair }
  const at = pairEnd(text, neighbour)
  return { start: at, end: at, text: `, ${pair}` }
}
