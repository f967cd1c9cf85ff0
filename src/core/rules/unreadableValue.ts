import { dimensionsOf } from '../notebook/dimensionsOf'
import { fieldNodes, fields, type Field } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { readOnce } from '../notebook/readOnce'
import { rootSchemas, schemasBelow, type SchemaNode } from '../notebook/schemaKeys'
import { pairOf, type ScalarNode, type TreeNode } from '../notebook/tree'
import type { Dimension } from '../notation/units'
import { phrase, say } from '../words/say'
import type { EntryRule, Report } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'

export const unreadableValue: EntryRule = {
  code: 'unreadable-value',
  severity: 'error',
  says: 'A measured value cannot be read, or is in a unit of another kind.',
  why: 'What is not understood is not computed with. A bare number is mm, kg, N/mm, bar, °C or degrees; any other unit is written behind it.',
  checkEntry: (entry, { text }) => measurements(text, entry),
  checkNotebook: facts,
}

function facts({ root, text }: Notebook): Report[] {
  return ['machine', 'rider'].flatMap((key) => {
    const pair = pairOf(root, key)
    return pair ? quantities(pair.value, schemasBelow(rootSchemas, key), [key]).flatMap((found) => check(text, found, `\`${found.path.join('.')}\``)) : []
  })
}

function measurements(text: string, entry: Entry): Report[] {
  const byNode = new Map<ScalarNode, Field>(fields.flatMap((field) => fieldNodes(entry, field).map((node) => [node, field] as const)))
  return quantities(entry.node, entrySchemas, []).flatMap((found) => {
    const field = byNode.get(found.node)
    return check(text, found, field ? say(field.label) : `\`${found.path.join('.')}\``).map((report) => ({ ...report, ...(field ? { row: field.key } : {}) }))
  })
}

const entrySchemas = schemasBelow(schemasBelow(rootSchemas, 'entries'), '*')

interface Found {
  node: ScalarNode
  path: readonly string[]
  dimensions: readonly [Dimension, ...Dimension[]]
}

/** Every value below a node that the schema calls a quantity. */
function quantities(node: TreeNode, schemas: readonly SchemaNode[], path: readonly string[]): Found[] {
  if (schemas.length === 0) return []
  if (node.kind === 'list') {
    const item = schemasBelow(schemas, '*')
    return node.items.flatMap((each) => quantities(each, item, path))
  }
  if (node.kind === 'map') return node.pairs.flatMap(({ key, value }) => quantities(value, schemasBelow(schemas, key.text), [...path, key.text]))
  const dimensions = dimensionsOf(schemas)
  const isWritten = typeof node.value === 'number' || typeof node.value === 'string'
  return dimensions && isWritten ? [{ node, path, dimensions }] : []
}

const examples: Partial<Record<Dimension, string>> = {
  length: phrase('128 or 5 in'), mass: phrase('84 or 185 lb'), stiffness: phrase('9.5 or 0.95 kgf/mm'), temperature: phrase('21 or 70 °F'), pressure: phrase('2.3 or 33 psi'), angle: '24.5',
}

function exampleOf(dimension: Dimension): string | undefined {
  const example = examples[dimension]
  return example && say(example)
}

function check(text: string, { node, path, dimensions }: Found, label: string): Report[] {
  const reading = readOnce(node, dimensions)
  if (reading.value) return []
  const example = path.at(-1) === 'altitude' ? '650 m' : exampleOf(dimensions[0])
  const fixes = reading.suggestion === undefined ? [] : writeInstead(text, node, reading.suggestion)
  return [{ message: example ? say`${label}: ‘${node.text}’ cannot be read: ${reading.problem}; write it like ${example}` : say`${label}: ‘${node.text}’ cannot be read: ${reading.problem}`, range: node.range, fixes }]
}
