import type { Finding } from '../finding'
import type { Range } from '../text'
import { cutAgain, cutAtEntries } from './cutAtEntries'
import { longestText, parseAt, parseTree, shiftParsed, type Parsed } from './parseTree'
import type { ListNode, MapNode, Pair, TreeNode } from './tree'

/** A text parsed piece by piece, so that the next version of it need only parse the pieces that differ. */
export interface ParsedByEntry extends Parsed {
  text: string
  pieces?: Pieces
}

interface Pieces {
  head: Piece
  entries: Piece[]
  tail?: Piece
}

/** A stretch of the text and what it parsed to, placed where it stands. */
interface Piece extends Range {
  parsed: Parsed
  /** The entry, where it is one and nothing else. */
  item: TreeNode | undefined
}

/**
 * Parses a notebook entry by entry, and takes from the `earlier` version whatever has the same text; never throws. The
 * tree is the one that `parseTree` makes of the whole. An error of syntax stays within its entry, and so does the
 * search for it. A text that cannot be cut is parsed as a whole.
 */
export function parseByEntry(text: string, earlier?: ParsedByEntry): ParsedByEntry {
  const pieces = text.length > longestText ? undefined : (parseAgain(text, earlier) ?? parseAnew(text, earlier))
  const joined = pieces && join(pieces)
  return joined ? { text, pieces, ...joined } : { text, ...parseTree(text) }
}

/** Where the text differs within the entries alone, nothing else is even looked at but to see that it is the same. */
function parseAgain(text: string, earlier: ParsedByEntry | undefined): Pieces | undefined {
  const old = earlier?.pieces
  if (!old) return undefined
  const by = text.length - earlier.text.length
  const { head, entries, tail } = old
  if (!isAlike(text, head, earlier.text, 0) || (tail && !isAlike(text, tail, earlier.text, by))) return undefined
  const front = countAlike(entries.length, (from, to) => isAlike(text, { start: entries[from]!.start, end: entries[to]!.end }, earlier.text, 0))
  const back = countAlike(entries.length - front, (from, to) => isAlike(text, { start: entries.at(-1 - to)!.start, end: entries.at(-1 - from)!.end }, earlier.text, by))
  const cut = cutAgain(text, { text: earlier.text, cut: old }, front, back)
  return cut && {
    head,
    entries: cut.entries.map((range, at) => {
      const behind = at - (cut.entries.length - back)
      return at < front ? entries[at]! : behind >= 0 ? moved(entries[entries.length - back + behind]!, range) : parsePiece(text, range)
    }),
    ...(tail && cut.tail ? { tail: moved(tail, cut.tail) } : {}),
  }
}

function parseAnew(text: string, earlier: ParsedByEntry | undefined): Pieces | undefined {
  const cut = cutAtEntries(text)
  if (!cut) return undefined
  const old = earlier?.pieces
  const take = (range: Range, same: Piece | undefined): Piece => {
    const by = same ? range.start - same.start : 0
    return same && same.end + by === range.end && isAlike(text, same, earlier!.text, by) ? moved(same, range) : parsePiece(text, range)
  }
  const pairs = old ? matching(text, cut.entries, earlier!.text, old.entries) : new Map<number, Piece>()
  const head = take(cut.head, old?.head)
  if (!blockOf(head) || head.parsed.inseparable) return undefined
  const entries: Piece[] = []
  for (const [at, range] of cut.entries.entries()) {
    const piece = take(range, pairs.get(at))
    // What is parsed as a whole after all should not have been parsed in pieces first.
    if (piece.parsed.inseparable) return undefined
    entries.push(piece)
  }
  return {
    head,
    entries,
    ...(cut.tail ? { tail: take(cut.tail, old?.tail) } : {}),
  }
}

function parsePiece(text: string, range: Range): Piece {
  return pieceOf(range, parseAt(ownCopy(text.slice(range.start, range.end)), range.start))
}

function pieceOf({ start, end }: Range, parsed: Parsed): Piece {
  const { root } = parsed
  return { start, end, parsed, item: root?.kind === 'list' && !root.flow && root.items.length === 1 ? root.items[0] : undefined }
}

/** Whether a stretch of the text before stands in the text now, so much further on. */
function isAlike(text: string, { start, end }: Range, before: string, by: number): boolean {
  return start + by >= 0 && text.slice(start + by, end + by) === before.slice(start, end)
}

/** How many of so many are alike from the first on. Whole stretches are compared at once, halved where they differ. */
function countAlike(many: number, areAlike: (from: number, to: number) => boolean): number {
  let [alike, unlike] = [0, many]
  while (alike < unlike) {
    const middle = (alike + unlike) >> 1
    if (areAlike(alike, middle)) alike = middle + 1
    else unlike = middle
  }
  return alike
}

/** Which earlier entry each one may still be: counted from the front as long as they are alike, then from the back. */
function matching(text: string, now: readonly Range[], before: string, old: readonly Piece[]): Map<number, Piece> {
  const isSame = (range: Range, piece: Piece) => range.end - range.start === piece.end - piece.start && text.slice(range.start, range.end) === before.slice(piece.start, piece.end)
  const found = new Map<number, Piece>()
  let front = 0
  for (; front < now.length && front < old.length && isSame(now[front]!, old[front]!); front++) found.set(front, old[front]!)
  for (let back = 1; now.length - back >= front && old.length - back >= front && isSame(now.at(-back)!, old.at(-back)!); back++) found.set(now.length - back, old.at(-back)!)
  return found
}

function moved(piece: Piece, range: Range): Piece {
  return piece.start === range.start ? piece : pieceOf(range, shiftParsed(piece.parsed, range.start - piece.start))
}

/** A piece by itself: cut out of a text, the words in it would keep that whole version of the text in memory. */
function ownCopy(piece: string): string {
  return ` ${piece}`.slice(1)
}

/** The tree of the whole, or `undefined` where the pieces cannot stand for it. */
function join({ head, entries, tail }: Pieces): Parsed | undefined {
  const top = blockOf(head)
  const after = tail ? blockOf(tail) : []
  if (!top || !after || head.parsed.inseparable || tail?.parsed.inseparable) return undefined
  const last = top.at(-1)
  if (last?.key.text !== 'entries' || last.value.kind !== 'scalar' || last.value.style !== 'empty') return undefined
  if (hasTwice([...top, ...after])) return undefined
  const items: TreeNode[] = []
  const findings: Finding[] = []
  for (const { parsed, item } of entries) {
    if (!item || parsed.inseparable) return undefined
    items.push(item)
    if (parsed.findings.length > 0) findings.push(...parsed.findings)
  }
  const listOf = (piece: Piece | undefined) => piece!.parsed.root!.range
  const list: ListNode = { kind: 'list', flow: false, items, range: { start: listOf(entries[0]).start, end: listOf(entries.at(-1)).end } }
  const end = tail ? tail.parsed.root!.range.end : list.range.end
  const root: MapNode = {
    kind: 'map', flow: false, range: { start: head.parsed.root!.range.start, end },
    pairs: [...top.slice(0, -1), { key: last.key, value: list }, ...after],
  }
  return { root, findings }
}

/** The lines of a piece that is in order and a group of keys. */
function blockOf({ parsed: { root, findings } }: Piece): readonly Pair[] | undefined {
  return findings.length === 0 && root?.kind === 'map' && !root.flow ? root.pairs : undefined
}

function hasTwice(pairs: readonly Pair[]): boolean {
  return new Set(pairs.map(({ key }) => key.text)).size < pairs.length
}
