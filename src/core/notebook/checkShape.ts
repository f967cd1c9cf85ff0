import type { Finding } from '../finding'
import { say } from '../words/say'
import check from './generated/shape.cjs'
import { isBlank } from './isBlank'
import { placeOfPath, type Places } from './placeOfPath'
import { rootWords, shapeWords } from './shapeWords'
import { originOf, pairOf, type MapNode, type TreeNode } from './tree'

/**
 * What the schema says against a notebook's shape, each at the value it is about. A key with nothing behind it counts
 * as not written: someone is about to write it.
 */
export function checkShape(places: Places, text: string): Finding[] {
  const { root } = places
  const byPlace = new Map<string, ShapeError[]>()
  for (const error of shapeErrors(root)) byPlace.set(error.instancePath, [...(byPlace.get(error.instancePath) ?? []), error])
  // Of a choice that went wrong further down, only what is further down is worth a word.
  const above = new Set([...byPlace.keys()].flatMap(prefixes))
  const findings = [...byPlace].slice(0, mostFindings).flatMap(([place, errors]): Finding[] => {
    const deeper = errors.some(({ keyword }) => keyword === 'anyOf') && above.has(place)
    const { node, range } = find(root, place)
    const words = deeper ? undefined : place === '' ? rootWords(errors, root, text) : shapeWords(errors, { subject: subjectOf(place), node, text })
    const cell = words && placeOfPath(stepsOf(place), places)
    return words ? [{ code: 'wrong-shape', severity: 'error', ...words, range, ...(cell ? { place: cell } : {}) }] : []
  })
  return findings.sort((a, b) => a.range.start - b.range.start)
}

/** After so many one more is no help. */
const mostFindings = 200

/** The pointers to what holds a place. @example prefixes('/entries/0/id') // ['/entries/0', '/entries', ''] */
function prefixes(pointer: string): string[] {
  const steps = pointer.split('/')
  return steps.slice(1).map((_, at) => steps.slice(0, steps.length - 1 - at).join('/'))
}

/** The last key of a JSON pointer, to speak of in a sentence; an item of a list has none. */
function subjectOf(pointer: string): string {
  const step = unescaped(pointer.split('/').at(-1)!)
  return /^\d*$/.test(step) ? say('this') : `\`${step}\``
}

function stepsOf(pointer: string): string[] {
  return pointer.split('/').slice(1).map(unescaped)
}

function unescaped(step: string): string {
  return step.replace(/~1/g, '/').replace(/~0/g, '~')
}

/** What the compiled check says of one place. */
export interface ShapeError {
  keyword: string
  instancePath: string
  params: Record<string, unknown>
}

/** Of a longer list or group, which no season fills, the rest is not looked at: the check slows down with every error. */
const mostLookedAt = 5000

/** Entries without an error of shape, by where they were first parsed: whether one has any does not depend on the rest. */
const inShape = new WeakSet<object>()

function shapeErrors(root: TreeNode): readonly ShapeError[] {
  const list = pairOf(root, 'entries')?.value
  const items = list?.kind === 'list' ? list.items : []
  const open: number[] = []
  for (let at = 0; at < items.length; at++) if (!inShape.has(originOf(items[at]!))) open.push(at)
  const isGood = check(writtenPlain(items.length === open.length ? root : withEntries(root, open.map((at) => items[at]!))))
  const errors = isGood ? [] : (check.errors ?? []).map((error) => ({ ...error, instancePath: error.instancePath.replace(/^\/entries\/(\d+)/, (_, at: string) => `/entries/${open[Number(at)]}`) }))
  const bad = new Set(errors.map(({ instancePath }) => /^\/entries\/(\d+)/.exec(instancePath)?.[1]))
  for (const at of open.slice(0, mostLookedAt)) if (!bad.has(String(at))) inShape.add(originOf(items[at]!))
  return errors
}

/** The notebook with these entries alone. */
function withEntries(root: TreeNode, items: TreeNode[]): TreeNode {
  if (root.kind !== 'map') return root
  const pairs = root.pairs.map((pair) => (pair.key.text === 'entries' && pair.value.kind === 'list' ? { ...pair, value: { ...pair.value, items } } : pair))
  return { ...root, pairs }
}

/** Plain values as a YAML library gives them, without the keys that have nothing behind them. */
function writtenPlain(node: TreeNode): unknown {
  if (node.kind === 'scalar') return node.value
  if (node.kind === 'list') return node.items.slice(0, mostLookedAt).map(writtenPlain)
  const result: Record<string, unknown> = {}
  for (const { key, value } of node.pairs.slice(0, mostLookedAt)) {
    if (isBlank(value)) continue
    // This one key must be made an ordinary property; all others are by being set, which is far quicker.
    if (key.text === '__proto__') Object.defineProperty(result, key.text, { value: writtenPlain(value), enumerable: true, configurable: true, writable: true })
    else result[key.text] = writtenPlain(value)
  }
  return result
}

/** The node a JSON pointer names, and a range worth underlining: a scalar itself, a group's key. */
function find(root: TreeNode, pointer: string): { node?: TreeNode; range: Finding['range'] } {
  let node: TreeNode | undefined = root
  let range = firstKey(root)
  for (const step of stepsOf(pointer)) {
    const pair: MapNode['pairs'][number] | undefined = node?.kind === 'map' ? node.pairs.find((each) => each.key.text === step) : undefined
    node = pair?.value ?? (node?.kind === 'list' ? node.items[Number(step)] : undefined)
    if (pair) range = pair.value.kind === 'scalar' && !isBlank(pair.value) ? pair.value.range : pair.key.range
    else if (node) range = node.kind === 'map' ? firstKey(node) : node.range
  }
  return node ? { node, range } : { range }
}

function firstKey(node: TreeNode): Finding['range'] {
  return node.kind === 'map' && node.pairs[0] ? node.pairs[0].key.range : { start: node.range.start, end: Math.min(node.range.end, node.range.start + 1) }
}
