import { dimensionsOf } from '../../../src/core/notebook/dimensionsOf'
import { rootSchemas, schemasBelow, type SchemaNode } from '../../../src/core/notebook/schemaKeys'
import { nameOfDimension } from './dimensionNames'
import { code, table } from './markdown'

/** The schemas under a path in which `*` stands for any item of a list or for a name of one's own. */
export function schemasUnder(path: readonly string[]): readonly SchemaNode[] {
  return path.reduce<readonly SchemaNode[]>((nodes, step) => {
    const items = schemasBelow(nodes, step)
    return step === '*' && items.length === 0 ? schemasBelow(nodes, 'a name of one’s own') : items
  }, rootSchemas)
}

/** The keys that may stand under a path, in the order of the schema. */
export function keysUnder(path: readonly string[]): string[] {
  return [...new Set(schemasUnder(path).flatMap((node) => Object.keys(node.properties ?? {})))]
}

/** What the schema says about the keys under a path, as a table of key, kind and description. */
export function keysTable(path: readonly string[]): string {
  const required = new Set(schemasUnder(path).flatMap(({ required: names = [] }: SchemaNode & { required?: string[] }) => names))
  return table(['Key', 'Kind', 'What it is'], keysUnder(path).map((key) => {
    const nodes = schemasUnder([...path, key])
    const about = nodes.find(({ description }) => description !== undefined)?.description
    if (about === undefined) throw new Error(`${[...path, key].join('.')} has no description in the schema`)
    return [code(key), kindOf(nodes), required.has(key) ? `${about} Required.` : about]
  }))
}

function kindOf(nodes: readonly SchemaNode[]): string {
  const dimensions = dimensionsOf(nodes)
  const isPosition = nodes.some(({ named }) => named === 'position')
  const choices = nodes.flatMap((node) => node.enum ?? [])
  if (choices.length > 0) return choices.map((choice) => code(String(choice))).join(' ')
  const own = nodes.flatMap((node) => [node.type ?? []].flat())
  const kinds = own.flatMap((type) => (['number', 'string'].includes(type) && (dimensions ?? isPosition) ? [] : [words[type] ?? type]))
  return [...new Set([...(dimensions ? [dimensions.map(nameOfDimension).join(' or ')] : isPosition ? ['position'] : []), ...kinds])].join(', ')
}

const words: Record<string, string> = { string: 'text', number: 'number', integer: 'whole number', boolean: '`true` or `false`', object: 'group', array: 'list' }
