import type { Finding } from '../finding'
import { nearest } from '../nearest'
import check from './generated/shape.cjs'
import { toPlain, type MapNode, type TreeNode } from './tree'

/** What the schema says against a notebook's shape, each at the value it is about. */
export function checkShape(root: TreeNode): Finding[] {
  if (check(toPlain(root))) return []
  const byPlace = new Map<string, Finding>()
  for (const error of check.errors ?? []) {
    const found = find(root, error.instancePath)
    const words = wordsFor(error.keyword, error.params, found.node)
    // Of the branches of a choice only the choice itself is worth a word, and a place is worth one finding.
    if (words === undefined || byPlace.has(error.instancePath)) continue
    byPlace.set(error.instancePath, { code: 'wrong-shape', severity: 'error', ...words, range: found.range })
  }
  return [...byPlace.values()].sort((a, b) => a.range.start - b.range.start)
}

function wordsFor(keyword: string, params: Record<string, unknown>, node: TreeNode | undefined): Pick<Finding, 'message' | 'fixes'> | undefined {
  switch (keyword) {
    case 'enum': return choiceWords(params['allowedValues'] as unknown[], node)
    case 'type': return { message: `this must be ${kindWords([params['type']].flat() as string[])}` }
    case 'required': return { message: `\`${String(params['missingProperty'])}\` is missing here` }
    case 'minItems': return { message: `at least ${String(params['limit'])} values are needed here` }
    case 'maxItems': return { message: `at most ${String(params['limit'])} values belong here` }
    case 'minimum': case 'maximum': case 'exclusiveMinimum': return { message: `this must be ${String(params['comparison'])} ${String(params['limit'])}` }
    case 'uniqueItems': return { message: 'the same value stands here twice' }
    case 'minLength': return { message: 'this must not be empty' }
    case 'anyOf': return { message: 'this has the wrong shape for what it is about' }
    default: return undefined
  }
}

function choiceWords(allowed: unknown[], node: TreeNode | undefined): Pick<Finding, 'message' | 'fixes'> {
  const names = allowed.map(String)
  const written = node?.kind === 'scalar' ? node.text : ''
  const meant = nearest(written, names)
  const message = `‘${written}’ is not one of: ${names.join(', ')}`
  return meant && node ? { message, fixes: [{ title: `Write ‘${meant}’`, changes: [{ ...node.range, text: meant }] }] } : { message }
}

const kinds: Record<string, string> = {
  string: 'a text', number: 'a number', integer: 'a whole number', object: 'a group of `key: value` lines', array: 'a list', boolean: 'true or false',
}

function kindWords(types: string[]): string {
  return types.map((type) => kinds[type] ?? type).join(' or ')
}

/** The node a JSON pointer names, and a range worth underlining: a scalar itself, a group's key. */
function find(root: TreeNode, pointer: string): { node?: TreeNode; range: Finding['range'] } {
  let node: TreeNode | undefined = root
  let range = firstKey(root)
  for (const raw of pointer.split('/').slice(1)) {
    const step = raw.replace(/~1/g, '/').replace(/~0/g, '~')
    const pair: MapNode['pairs'][number] | undefined = node?.kind === 'map' ? node.pairs.find((each) => each.key.text === step) : undefined
    node = pair?.value ?? (node?.kind === 'list' ? node.items[Number(step)] : undefined)
    if (pair) range = pair.value.kind === 'scalar' && pair.value.style !== 'empty' ? pair.value.range : pair.key.range
    else if (node) range = node.kind === 'map' ? firstKey(node) : node.range
  }
  return node ? { node, range } : { range }
}

function firstKey(node: TreeNode): Finding['range'] {
  return node.kind === 'map' && node.pairs[0] ? node.pairs[0].key.range : { start: node.range.start, end: Math.min(node.range.end, node.range.start + 1) }
}
