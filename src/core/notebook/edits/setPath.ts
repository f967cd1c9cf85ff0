import type { TextChange } from '../../text'
import { pairOf, type MapNode, type Pair, type TreeNode } from '../tree'
import { insertPair } from './insertPair'
import { behindColon, behindLine, contextOf } from './layout'
import { removePair } from './removePair'
import { figureText, proseText, type Context } from './writeScalar'

/** How a value is written: a figure as typed, or words that must read back as this very text. */
export type Writer = (typed: string, context: Context, like?: Parameters<typeof figureText>[2]) => string
export const asFigure: Writer = figureText
export const asProse: Writer = proseText

/** The order in which the keys of an entry are put when they are new. */
const order = ['id', 'date', 'session', 'from', 'as_found', 'baseline', 'settings', 'sag', 'axle_loads', 'bounce', 'conditions', 'reason', 'ride', 'verdict', 'remarks', 'notes']

/** What keeps an edit from being made, in words for the person. */
export class Refusal extends Error {}

/**
 * Sets the value under a path of keys below a map, making what is missing on the way. What stands there is replaced
 * and nothing beside it is touched.
 *
 * @throws Refusal where the value belongs to an anchor elsewhere, or something of another shape is in the way
 */
export function setPath(text: string, root: MapNode, path: readonly string[], typed: string, write: Writer): TextChange[] {
  let map = root
  for (const [depth, key] of path.entries()) {
    if (map.alias) throw new Refusal('this value is shared with another place; change it in the text')
    const pair = pairOf(map, key)
    const rest = path.slice(depth + 1)
    if (!pair) return [insertNew(text, map, key, rest, typed, write, map === root)]
    if (rest.length === 0) return replaceValue(text, map, pair, typed, write)
    if (isEmpty(pair.value)) return [fillEmpty(text, map, pair, rest, typed, write)]
    if (pair.value.kind !== 'map') throw new Refusal(`\`${key}\` holds something else here; change it in the text`)
    map = pair.value
  }
  return []
}

/** Replaces a pair's value; a group in its place is refused rather than lost. */
export function replaceValue(text: string, map: MapNode, pair: Pair, typed: string, write: Writer): TextChange[] {
  const value = pair.value
  if (value.kind !== 'scalar') throw new Refusal(`\`${pair.key.text}\` holds a group of values here; change it in the text`)
  const context = contextOf(text, map)
  const replacement = write(typed, context, value.style)
  if (value.style === 'empty') return [putBehindColon(text, pair, replacement)]
  return text.slice(value.range.start, value.range.end) === replacement ? [] : [{ ...value.range, text: replacement }]
}

function isEmpty(value: TreeNode): boolean {
  return (value.kind === 'scalar' && value.style === 'empty') || (value.kind === 'map' && value.pairs.length === 0 && !value.flow)
}

function putBehindColon(text: string, pair: Pair, value: string): TextChange {
  const at = behindColon(text, pair.key.range.end)
  if (at === undefined) return { start: pair.key.range.end, end: pair.key.range.end, text: `: ${value}` }
  return { start: at, end: at, text: ` ${value}` }
}

function insertNew(text: string, map: MapNode, key: string, rest: readonly string[], typed: string, write: Writer, ordered: boolean): TextChange {
  const context = contextOf(text, map)
  const value = nested(rest, typed, write, context)
  return insertPair(text, map, keyText(key, context), value, ordered ? before(map, key) : undefined)
}

function keyText(key: string, context: Context): string {
  return /^[A-Za-z_][\w./-]*$/.test(key) ? key : proseText(key, { ...context, flow: true })
}

/** The last pair that usually stands before `key`; the first one where none does, so that `- id:` stays ahead. */
function before(map: MapNode, key: string): Pair | undefined {
  const rank = order.indexOf(key)
  if (rank < 0) return undefined
  const earlier = map.pairs.filter((pair) => order.indexOf(pair.key.text) >= 0 && order.indexOf(pair.key.text) < rank)
  return earlier.at(-1) ?? map.pairs[0]
}

/** What stands behind a new key: one more key gets a line of its own in block style; deeper ones go into braces. */
function nested(rest: readonly string[], typed: string, write: Writer, context: Context): string {
  const [next, ...deeper] = rest
  if (next === undefined) return ` ${write(typed, context)}`
  if (context.flow) return ` {${keyText(next, context)}:${nested(deeper, typed, write, context)}}`
  const inside: Context = { ...context, indent: `${context.indent}  ` }
  const below = nested(deeper, typed, write, deeper.length === 0 ? inside : { ...inside, flow: true })
  return `${context.lineEnd}${inside.indent}${keyText(next, context)}:${below}`
}

/** A key with nothing behind it gets its first line below, or its braces in flow style. */
function fillEmpty(text: string, map: MapNode, pair: Pair, rest: readonly string[], typed: string, write: Writer): TextChange {
  const context = contextOf(text, map)
  const value = nested(rest, typed, write, context)
  if (context.flow) return putBehindColon(text, pair, value.trimStart())
  const at = behindLine(text, pair.key.range.end)
  return { start: at, end: at, text: value }
}

/**
 * Takes out the value under a path, and the groups that become empty by it, but never `root` itself. Comments stay.
 * Nothing to take out is no error.
 */
export function removePath(text: string, root: MapNode, path: readonly string[]): TextChange[] {
  const chain: { map: MapNode; pair: Pair }[] = []
  let map: TreeNode | undefined = root
  for (const key of path) {
    const pair = pairOf(map, key)
    if (!pair || map?.kind !== 'map') return []
    if (map.alias) throw new Refusal('this value is shared with another place; change it in the text')
    chain.push({ map, pair })
    map = pair.value
  }
  return removeFrom(text, chain)
}

function removeFrom(text: string, chain: { map: MapNode; pair: Pair }[]): TextChange[] {
  const last = chain.at(-1)
  if (!last) return []
  const holder = chain.at(-2)
  if (!holder || last.map.pairs.length > 1) return removePair(text, last.map, last.pair)
  // The group around it becomes empty and goes too, unless a comment stands inside, which must not be lost.
  const inside = text.slice(holder.pair.key.range.end, last.pair.key.range.start)
  const behind = last.map.flow ? text.slice(last.pair.key.range.end, last.map.range.end) : ''
  if (inside.includes('#') || behind.includes('#')) return removePair(text, last.map, last.pair)
  return removeFrom(text, chain.slice(0, -1))
}
