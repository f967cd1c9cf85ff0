import { contentEnd, deeperEnd, keepsBlankLines, pairEnd } from '../notebook/edits/layout'
import { scalarAt, type ListNode, type Pair, type TreeNode } from '../notebook/tree'
import { lineStart } from '../text'
import type { Block, Inside } from './block'

/** Where a block stands, with the line end of its last line. */
interface Place {
  start: number
  end: number
}

/** A notebook cut into blocks; `undefined` where its text is not written one thing a line. */
export function cutNotebook(text: string, root: TreeNode | undefined): Inside | undefined {
  if (!root) return /^(?:[ \t]*(?:#.*)?\n)*$/.test(text) ? { kind: 'pairs', head: '', blocks: [], tail: text } : undefined
  return cutMap(text, root, [], { start: 0, end: text.length }, 0)
}

/** A map in block style as blocks, one a pair. `from` is where its first line may begin. */
function cutMap(source: string, map: TreeNode, path: readonly string[], within: Place, from: number): Inside | undefined {
  if (map.kind !== 'map' || map.flow || map.alias || map.marked || map.pairs.length === 0) return undefined
  const places = map.pairs.map((pair, at) => placeOfPair(source, pair, at === 0))
  return assemble('pairs', source, within, from, map.pairs.map((pair, at) => {
    const place = places[at]
    if (!place) return undefined
    const itsPath = [...path, pair.key.text]
    const inside = cutValue(source, pair, itsPath, place)
    return { key: pair.key.text, name: nameOf(itsPath), isItem: false, node: pair.value, ...blockAt(source, place), ...(inside ? { inside } : {}) }
  }))
}

/** The inside of a pair whose value begins on a line below its key. */
function cutValue(source: string, { key, value }: Pair, path: readonly string[], place: Place): Inside | undefined {
  const from = nextLine(source, key.range.end)
  if (value.range.start < from) return undefined
  if (value.kind === 'list') return cutList(source, value, path, place, from)
  return cutMap(source, value, path, place, from)
}

/** Lists whose items mean the same thing wherever they stand, and how one is known. */
const keyed: Record<string, (item: TreeNode) => string | undefined> = {
  entries: (item) => scalarAt(item, ['id'])?.text,
  accepted: (item) => ['finding', 'entry', 'about'].map((key) => scalarAt(item, [key])?.text ?? '').join('|'),
}

function cutList(source: string, list: ListNode, path: readonly string[], within: Place, from: number): Inside | undefined {
  const keyOf = path.length === 1 && Object.hasOwn(keyed, path[0]!) ? keyed[path[0]!] : undefined
  if (!keyOf || list.flow || list.alias || list.marked || list.items.length === 0) return undefined
  let at = from
  return assemble('items', source, within, from, list.items.map((item) => {
    const place = placeOfItem(source, item, at)
    if (!place) return undefined
    at = place.end
    const id = keyOf(item)
    // One without a name is known by its words: changed, it is another one.
    const key = id === undefined ? `=${source.slice(place.start, place.end)}` : `:${id}`
    const itsPath = [...path, id ?? 'without an id']
    const inside = cutMap(source, item, itsPath, place, place.start)
    const date = scalarAt(item, ['date'])?.text
    return { key, name: nameOf(itsPath), isItem: true, node: item, ...blockAt(source, place), ...(inside ? { inside } : {}), ...(date === undefined ? {} : { date }) }
  }))
}

function blockAt(source: string, { start, end }: Place): Pick<Block, 'lead' | 'text' | 'source' | 'start'> {
  return { lead: '', text: source.slice(start, end), source, start }
}

/** Puts blocks and what stands between them together; `undefined` where they share a line or a key. */
function assemble(kind: Inside['kind'], source: string, within: Place, from: number, blocks: readonly (Block | undefined)[]): Inside | undefined {
  const placed: Block[] = []
  let at = from
  for (const block of blocks) {
    if (!block || block.start < at || block.start + block.text.length > within.end) return undefined
    placed.push({ ...block, lead: source.slice(at, block.start) })
    at = block.start + block.text.length
  }
  if (new Set(placed.map(({ key }) => key)).size !== placed.length) return undefined
  return { kind, head: source.slice(within.start, from), blocks: placed, tail: source.slice(at, within.end) }
}

function placeOfPair(source: string, pair: Pair, isFirst: boolean): Place | undefined {
  const start = lineStart(source, pair.key.range.start)
  const before = source.slice(start, pair.key.range.start)
  if (!(isFirst ? /^ *(?:- +)?$/ : /^ *$/).test(before)) return undefined
  return { start, end: lastLine(source, pairEnd(source, pair), pair.key.range.end, pair.value, before.length) }
}

function placeOfItem(source: string, item: TreeNode, from: number): Place | undefined {
  for (let start = lineStart(source, item.range.start); start >= from; start = lineStart(source, start - 1)) {
    const dash = /^( *)-(?=\s)/.exec(source.slice(start, start + 200))
    if (dash) return { start, end: lastLine(source, contentEnd(item), start + dash[0].length, item, dash[1]!.length) }
    if (start === 0) break
  }
  return undefined
}

/** Where the lines of a value end, with the comments further in than `column`. Blank lines are its own only where it says so. */
function lastLine(source: string, end: number, least: number, value: TreeNode, column: number): number {
  let content = end
  if (!keepsBlankLines(source, value)) while (content > least && ' \t\r\n'.includes(source[content - 1]!)) content--
  return nextLine(source, deeperEnd(source, content, column))
}

function nextLine(source: string, offset: number): number {
  const at = source.indexOf('\n', offset)
  return at < 0 ? source.length : at + 1
}

/** @example nameOf(['entries', 'run-1', 'settings', 'fork_rebound']) // 'fork_rebound of ‘run-1’' */
function nameOf([list, id, ...keys]: readonly string[]): string {
  if (id === undefined) return list ?? ''
  if (list === 'accepted') return `the acceptance of ${id.split('|')[0] || 'a finding'}`
  if (list !== 'entries') return [list, id, ...keys].join('.')
  if (keys.length === 0) return `entry ‘${id}’`
  return `${(keys[0] === 'settings' && keys.length > 1 ? keys.slice(1) : keys).join('.')} of ‘${id}’`
}
