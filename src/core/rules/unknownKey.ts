import type { Fix } from '../finding'
import { keysOf, rootSchemas, schemasBelow, type SchemaNode } from '../notebook/schemaKeys'
import type { MapNode, Pair, TreeNode } from '../notebook/tree'
import { say } from '../words/say'
import { meantName } from './meantName'
import type { EntryRule, Report } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'

export const unknownKey: EntryRule = {
  code: 'unknown-key',
  severity: 'info',
  says: 'A key is not part of the format. It is kept, and nothing is done with it.',
  why: 'Most often it is a slip of the pen, and what stands behind it is missed.',
  checkEntry: ({ node }, { text }) => walk(node, entrySchemas, text),
  checkNotebook: ({ root, text }) => (root ? walk(root, rootSchemas, text) : []),
}

const entrySchemas = schemasBelow(schemasBelow(rootSchemas, 'entries'), '*')

function walk(node: TreeNode, schemas: readonly SchemaNode[], text: string): Report[] {
  if (node.kind === 'scalar') return []
  if (node.kind === 'list') {
    const item = schemasBelow(schemas, '*')
    return node.items.flatMap((each) => walk(each, item, text))
  }
  const known = keysOf(schemas)
  const isKnown = ({ key }: Pair) => known === undefined || known.has(key.text)
  const free = node.pairs.every(isKnown) ? [] : freeKeys(node, known ?? new Set())
  return node.pairs.flatMap((pair) => {
    const { key, value } = pair
    if (!isKnown(pair)) return [isRestOfSentence(node, pair) ? cutSentence(node, pair, text) : unknown(pair, free, text)]
    // Entries are looked at one by one.
    return schemas === rootSchemas && key.text === 'entries' ? [] : walk(value, schemasBelow(schemas, key.text), text)
  })
}

/** What may be meant: a key that stands here already would stand here twice. */
function freeKeys({ pairs }: MapNode, known: ReadonlySet<string>): string[] {
  const written = new Set(pairs.map(({ key }) => key.text))
  return [...known].filter((name) => !written.has(name))
}

function unknown({ key }: Pair, free: readonly string[], text: string): Report {
  const meant = meantName(key.text, free)
  const hint = meant ? say`; did you mean ${meant}?` : say(', so nothing is done with it')
  return { message: say`‘${key.text}’ is no key of the format here${hint}`, range: key.range, fixes: meant ? writeInstead(text, key, meant) : [] }
}

/** In `{felt: better, but lazy}` the comma makes a key of the rest of the sentence. */
function isRestOfSentence(map: MapNode, { key, value }: Pair): boolean {
  return map.flow && key.style === 'plain' && value.kind === 'scalar' && value.style === 'empty' && map.pairs[0]!.key !== key
}

function cutSentence(map: MapNode, pair: Pair, text: string): Report {
  const message = say`the comma before ‘${pair.key.text}’ cuts the sentence in two: put the whole of it in quotes`
  return { message, range: pair.key.range, fixes: quoteFix(map, pair, text) }
}

/** Quotes the sentence from its beginning, in the value of an earlier key, to the last piece that a comma cut off. */
function quoteFix({ pairs, ...map }: MapNode, pair: Pair, text: string): Fix[] {
  const isRest = (at: number) => pairs[at] !== undefined && isRestOfSentence({ ...map, pairs }, pairs[at]!)
  let first = pairs.indexOf(pair)
  let last = first
  while (isRest(first)) first--
  while (isRest(last + 1)) last++
  const begun = pairs[first]!.value
  if (begun.kind !== 'scalar' || begun.style !== 'plain' || begun.alias || begun.shared) return []
  const range = { start: begun.range.start, end: pairs[last]!.key.range.end }
  const sentence = text.slice(range.start, range.end)
  // A comment in between would become part of the sentence.
  return /[#\n]/.test(sentence) ? [] : [{ title: say('Put the sentence in quotes'), changes: [{ ...range, text: JSON.stringify(sentence) }] }]
}
