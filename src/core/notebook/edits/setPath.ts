import { lineEnd, type TextChange } from '../../text'
import { say } from '../../words/say'
import { nodeAt, pairOf, type MapNode, type Pair, type TreeNode } from '../tree'
import { insertPair } from './insertPair'
import { behindColon, contextOf, deeperEnd, isNothing, pairEnd } from './layout'
import { Refusal, refuseFixed, refuseMarked } from './refusal'
import { removePair } from './removePair'
import { putInLine, replaceScalar } from './replaceScalar'
import { figureText, proseText, type Context } from './writeScalar'

export { Refusal } from './refusal'

/** How a value is written: a figure as typed, or words that must read back as this very text. */
export type Writer = (typed: string, context: Context, like?: Parameters<typeof figureText>[2]) => string
export const asFigure: Writer = figureText
export const asProse: Writer = proseText

/** The order in which the keys of an entry are put when they are new. */
const order = ['id', 'date', 'session', 'from', 'as_found', 'baseline', 'settings', 'sag', 'axle_loads', 'tyres', 'bounce', 'conditions', 'reason', 'ride', 'verdict', 'remarks', 'notes']

/**
 * Sets the value under a path of keys below a map, making what is missing on the way. What stands there is replaced
 * and nothing beside it is touched.
 *
 * @throws Refusal where the value belongs to an anchor elsewhere, or something of another shape is in the way
 */
export function setPath(text: string, root: MapNode, path: readonly string[], typed: string, write: Writer): TextChange[] {
  let map = root
  for (const [depth, key] of path.entries()) {
    refuseFixed(text, map)
    const pair = pairOf(map, key)
    const rest = path.slice(depth + 1)
    if (!pair) return [insertNew(text, map, key, { rest, typed, write }, map === root)]
    if (rest.length === 0) return replaceValue(text, map, pair, typed, write)
    if (isNothing(pair.value)) return fillEmpty(text, map, pair, { rest, typed, write })
    if (pair.value.kind !== 'map') throw new Refusal(say`\`${key}\` holds something else here; change it in the text`)
    map = pair.value
  }
  return []
}

/** Replaces a pair's value; a group in its place is refused rather than lost. */
export function replaceValue(text: string, map: MapNode, pair: Pair, typed: string, write: Writer): TextChange[] {
  const value = pair.value
  if (value.kind !== 'scalar') throw new Refusal(say`\`${pair.key.text}\` holds a group of values here; change it in the text`)
  if (value.value !== null && value.text.trim() === typed.trim()) return []
  refuseMarked(value)
  const context = contextOf(text, map)
  // Comments below that stand further in would become the last lines of a block.
  const isCrowded = !map.flow && deeperEnd(text, pairEnd(text, pair), context.indent.length) > lineEnd(text, pairEnd(text, pair))
  const written = write(typed, { ...context, flow: map.flow || isCrowded }, value.alias ? undefined : value.style)
  return value.style === 'empty' ? putBehindColon(text, pair, written) : replaceScalar(text, value, written)
}

function putBehindColon(text: string, { key }: Pair, written: string): TextChange[] {
  const at = behindColon(text, key.range.end)
  if (at !== undefined) return putInLine(text, { start: at, end: at, text: ` ${written}` })
  // `{left, right: 3}`: a key alone, in flow style.
  if (!/^\s*[,}]/.test(text.slice(key.range.end, key.range.end + 200))) throw new Refusal(say`\`${key.text}\` has no colon behind it; change it in the text`)
  return [{ start: key.range.end, end: key.range.end, text: `: ${written}` }]
}

/** A value to be written, under the keys of `rest`. */
interface Wanted {
  rest: readonly string[]
  typed: string
  write: Writer
}

function insertNew(text: string, map: MapNode, key: string, wanted: Wanted, ordered: boolean): TextChange {
  const context = contextOf(text, map)
  return insertPair(text, map, keyText(key, context), nested(wanted, context), ordered ? before(map, key) : undefined)
}

/** YAML gives up on a longer key. */
const longestKey = 1000

function keyText(key: string, context: Context): string {
  if (key.length > longestKey) throw new Refusal(say('this name is too long for a key'))
  return /^(?!(?:null|true|false)$)[A-Za-z_][\w./-]*$/i.test(key) ? key : proseText(key, { ...context, flow: true })
}

/** The last pair that usually stands before `key`; the first one where none does, so that `- id:` stays ahead. */
function before(map: MapNode, key: string): Pair | undefined {
  const rank = order.indexOf(key)
  if (rank < 0) return undefined
  const earlier = map.pairs.filter((pair) => order.indexOf(pair.key.text) >= 0 && order.indexOf(pair.key.text) < rank)
  return earlier.at(-1) ?? map.pairs[0]
}

/** Two legs stand side by side, to be read in one glance. */
const sideBySide: ReadonlySet<string> = new Set(['left', 'right'])

/** What stands behind a new key: one more key gets a line of its own in block style; deeper ones and legs go into braces. */
function nested({ rest: [next, ...rest], typed, write }: Wanted, context: Context): string {
  if (next === undefined) return ` ${write(typed, context)}`
  const deeper = { rest, typed, write }
  if (context.flow || sideBySide.has(next)) return ` {${keyText(next, context)}:${nested(deeper, { ...context, flow: true })}}`
  const inside: Context = { ...context, indent: `${context.indent}  ` }
  const below = nested(deeper, rest.length === 0 ? inside : { ...inside, flow: true })
  return `${context.lineEnd}${inside.indent}${keyText(next, context)}:${below}`
}

/** A key with nothing behind it gets its first line below, or its braces in flow style and in the place of a `null`. */
function fillEmpty(text: string, map: MapNode, pair: Pair, wanted: Wanted): TextChange[] {
  refuseMarked(pair.value)
  const context = contextOf(text, map)
  const inBraces = () => nested(wanted, { ...context, flow: true }).trimStart()
  if (!isEmpty(pair.value)) return [{ ...pair.value.range, text: inBraces() }]
  const colon = behindColon(text, pair.key.range.end)
  if (context.flow || colon === undefined) return putBehindColon(text, pair, inBraces())
  const at = deeperEnd(text, colon, context.indent.length)
  return [{ start: at, end: at, text: nested(wanted, context) }]
}

function isEmpty(node: TreeNode): boolean {
  return node.kind === 'scalar' && node.style === 'empty'
}

/** Takes out the one value under a path: nothing where it reads as missing. @throws Refusal where a group stands there */
export function clearPath(text: string, root: MapNode, path: readonly string[]): TextChange[] {
  const value = nodeAt(root, path)
  if (value === undefined || (value.kind === 'scalar' && value.value === null)) return []
  if (value.kind !== 'scalar') throw new Refusal(say`\`${path.at(-1)!}\` holds a group of values here; change it in the text`)
  return removePath(text, root, path)
}

/**
 * Takes out what stands under a path, and the groups that become empty by it, but never `root` itself. Comments stay.
 * Nothing to take out is no error.
 */
export function removePath(text: string, root: MapNode, path: readonly string[]): TextChange[] {
  const chain: { map: MapNode; pair: Pair }[] = []
  let map: TreeNode | undefined = root
  for (const key of path) {
    const pair = pairOf(map, key)
    if (!pair || map?.kind !== 'map') return []
    refuseFixed(text, map)
    chain.push({ map, pair })
    map = pair.value
  }
  while (chain.length > 1 && chain.at(-1)!.map.pairs.length === 1) chain.pop()
  const last = chain.at(-1)
  return last ? removePair(text, last.map, last.pair) : []
}
