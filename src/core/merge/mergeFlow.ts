import { pairEnd } from '../notebook/edits/layout'
import type { MapNode, Pair, TreeNode } from '../notebook/tree'
import type { Block } from './block'
import { orderKeys } from './orderKeys'
import { mapThree, settle, type Three } from './threeWay'

/** A value where it stands in a text. */
interface Spot {
  source: string
  node: TreeNode
}

/**
 * Merges what is written in one line: a value and the comment behind it are two things, and so are two adjusters in
 * `{key: value, …}`.
 * Without `text` where it cannot: both sides changed the same keys, which are named, or comments stand between the braces.
 */
export function mergeFlow({ base, ours, theirs }: { base: Block | undefined; ours: Block; theirs: Block }): { text?: string; disputed: string[] } {
  const disputed: string[] = []
  if (![base ?? ours, ours, theirs].every(({ node }) => node.kind === 'scalar' || node.flow)) return { disputed }
  const value = mergeValues({ base, ours, theirs }, disputed)
  if (value === undefined) return { disputed }
  // What both added around it must be alike: there is nothing to tell who changed it.
  const around = (cut: (block: Block) => string) => (base ? settle(mapThree({ base, ours, theirs }, cut)) : cut(ours) === cut(theirs) ? { value: cut(ours) } : undefined)
  const before = around(({ source, start, node }) => source.slice(start, node.range.start))
  const behind = around(({ source, start, text, node }) => source.slice(node.range.end, start + text.length))
  return { disputed, ...(before && behind ? { text: before.value + value + behind.value } : {}) }
}

/** The words of a merged value; what both added is merged as if there had been nothing in it before. */
function mergeValues(spots: { base: Spot | undefined; ours: Spot; theirs: Spot }, disputed: string[]): string | undefined {
  const wordsOf = ({ source, node }: Spot) => source.slice(node.range.start, node.range.end)
  const [one, other] = [wordsOf(spots.ours), wordsOf(spots.theirs)]
  const settled = spots.base ? settle({ base: wordsOf(spots.base), ours: one, theirs: other }) : one === other ? { value: one } : undefined
  if (settled) return settled.value
  const [base, ours, theirs] = [spots.base ? mapAt(spots.base) : nothing, mapAt(spots.ours), mapAt(spots.theirs)]
  return base && ours && theirs ? mergeMaps({ base, ours, theirs }, disputed) : undefined
}

interface FlowMap {
  source: string
  node: MapNode
  pairs: ReadonlyMap<string, Pair>
}

const nothing: FlowMap = { source: '', node: { kind: 'map', flow: true, pairs: [], range: { start: 0, end: 0 } }, pairs: new Map() }

/** A map in braces that holds nothing but its pairs, commas and blanks. */
function mapAt({ source, node }: Spot): FlowMap | undefined {
  if (node.kind !== 'map' || !node.flow || node.alias || node.marked || source[node.range.start] !== '{') return undefined
  let at = node.range.start + 1
  for (const pair of node.pairs) {
    if (pair.key.marked || pair.value.marked || !/^[\s,]*$/.test(source.slice(at, pair.key.range.start))) return undefined
    at = pairEnd(source, pair)
  }
  if (!/^[\s,]*}$/.test(source.slice(at, node.range.end))) return undefined
  return { source, node, pairs: new Map(node.pairs.map((pair) => [pair.key.text, pair])) }
}

/** Our map with what they changed: pairs they took out are gone, and those they added stand behind what they follow there. */
function mergeMaps(maps: Three<FlowMap>, disputed: string[]): string | undefined {
  const { base, ours, theirs } = maps
  const words = new Map<string, string>()
  let isWhole = true
  for (const key of new Set([...base.pairs.keys(), ...ours.pairs.keys(), ...theirs.pairs.keys()])) {
    const merged = mergePair(maps, key, disputed)
    if (merged === undefined) isWhole = false
    else if (merged !== '') words.set(key, merged)
  }
  if (!isWhole) return undefined
  const keys = orderKeys({ base: [...base.pairs.keys()], ours: [...ours.pairs.keys()], theirs: [...theirs.pairs.keys()] }, () => undefined).filter((key) => words.has(key))
  const { start, end } = ours.node.range
  const [first, last] = [ours.node.pairs[0], ours.node.pairs.at(-1)]
  const open = ours.source.slice(start, first ? first.key.range.start : end - 1)
  const close = ours.source.slice(last ? pairEnd(ours.source, last) : end - 1, end)
  return open + keys.map((key, at) => (at === 0 ? '' : gapBefore(ours, keys[at - 1]!, key)) + words.get(key)!).join('') + close
}

/** What stands between two pairs: as we wrote it, where they are neighbours in our text too. */
function gapBefore({ source, node, pairs }: FlowMap, before: string, key: string): string {
  const [one, other] = [pairs.get(before), pairs.get(key)]
  const areNeighbours = one && other && node.pairs.indexOf(other) === node.pairs.indexOf(one) + 1
  return areNeighbours ? source.slice(pairEnd(source, one), other.key.range.start) : ', '
}

/** The words of a pair after the merge, nothing where it is taken out, `undefined` where the sides differ. */
function mergePair(maps: Three<FlowMap>, key: string, disputed: string[]): string | undefined {
  const settled = settle(mapThree(maps, (map) => wordsOf(map, key)))
  if (settled) return settled.value
  const [base, ours, theirs] = [maps.base.pairs.get(key), maps.ours.pairs.get(key), maps.theirs.pairs.get(key)]
  if (!ours || !theirs) {
    disputed.push(key)
    return undefined
  }
  const spots = { base: base && { source: maps.base.source, node: base.value }, ours: { source: maps.ours.source, node: ours.value }, theirs: { source: maps.theirs.source, node: theirs.value } }
  const before = disputed.length
  const value = mergeValues(spots, disputed)
  if (value === undefined && disputed.length === before) disputed.push(key)
  return value === undefined ? undefined : maps.ours.source.slice(ours.key.range.start, ours.value.range.start) + value
}

function wordsOf({ source, pairs }: FlowMap, key: string): string {
  const pair = pairs.get(key)
  return pair ? source.slice(pair.key.range.start, pairEnd(source, pair)) : ''
}
