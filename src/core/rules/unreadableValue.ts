import { dimensionsOf } from '../notebook/dimensionsOf'
import { fieldNodes, fields } from '../notebook/fields'
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
    return pair ? unreadable(pair.value, schemasBelow(rootSchemas, key), { key }).map((found) => reportOn(text, found, keyWords(found))) : []
  })
}

function measurements(text: string, entry: Entry): Report[] {
  return unreadable(entry.node, entrySchemas).map((found) => {
    const field = fields.filter((each) => fieldNodes(entry, each).includes(found.node)).at(-1)
    return { ...reportOn(text, found, field ? say(field.label) : keyWords(found)), ...(field ? { row: field.key } : {}) }
  })
}

const entrySchemas = schemasBelow(schemasBelow(rootSchemas, 'entries'), '*')

/** The keys above a value, the nearest first: spelt out only where something is to be said. */
interface Below {
  key: string
  above?: Below | undefined
}

interface Found {
  node: ScalarNode
  below: Below | undefined
  /** What it is first of all. */
  dimension: Dimension
  problem: string
  suggestion: string | undefined
}

/** Every value below a node that the schema calls a quantity, and that cannot be read as one. */
function unreadable(node: TreeNode, schemas: readonly SchemaNode[], below?: Below, found: Found[] = []): Found[] {
  if (schemas.length === 0) return found
  if (node.kind === 'list') {
    const item = schemasBelow(schemas, '*')
    for (const each of node.items) unreadable(each, item, below, found)
  } else if (node.kind === 'map') {
    for (const { key, value } of node.pairs) unreadable(value, schemasBelow(schemas, key.text), { key: key.text, above: below }, found)
  } else {
    const dimensions = dimensionsOf(schemas)
    const isWritten = typeof node.value === 'number' || typeof node.value === 'string'
    if (!dimensions || !isWritten) return found
    const reading = readOnce(node, dimensions)
    if (reading.problem !== undefined) found.push({ node, below, dimension: dimensions[0], problem: reading.problem, suggestion: reading.suggestion })
  }
  return found
}

function keyWords({ below }: Found): string {
  const path: string[] = []
  for (let at = below; at; at = at.above) path.unshift(at.key)
  return `\`${path.join('.')}\``
}

const examples: Partial<Record<Dimension, string>> = {
  length: phrase('128 or 5 in'), mass: phrase('84 or 185 lb'), stiffness: phrase('9.5 or 0.95 kgf/mm'), temperature: phrase('21 or 70 °F'), pressure: phrase('2.3 or 33 psi'), angle: '24.5',
}

function reportOn(text: string, { node, below, dimension, problem, suggestion }: Found, label: string): Report {
  const example = below?.key === 'altitude' ? '650 m' : say(examples[dimension] ?? '')
  const fixes = suggestion === undefined ? [] : writeInstead(text, node, suggestion)
  return { message: example ? say`${label}: ‘${node.text}’ cannot be read: ${problem}; write it like ${example}` : say`${label}: ‘${node.text}’ cannot be read: ${problem}`, range: node.range, fixes }
}
