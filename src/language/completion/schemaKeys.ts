import { schemasAt, schemasBelow, type SchemaNode } from '../../core/notebook/schemaKeys'
import { lineEndOf } from '../../core/text'
import { say } from '../../core/words/say'
import type { Asked, Completion } from './completion'

/** The keys that the format knows here and that do not stand here yet, each with a sensible beginning of its value. */
export function schemaKeyCompletions(asked: Asked): Completion[] {
  const nodes = schemasAt(asked.path)
  const names = new Set(nodes.flatMap((node) => Object.keys(node.properties ?? {})))
  return [...names].filter((name) => !asked.cursor.beside.has(name)).map((name) => {
    const below = schemasBelow(nodes, name)
    const about = below.find((node) => node.description !== undefined)?.description
    return { label: name, kind: 'key', fromSchema: true, ...(about ? { about: say(about) } : {}), ...insertion(name, below, asked) }
  })
}

type Insertion = Pick<Completion, 'insert' | 'snippet' | 'again'>

function insertion(name: string, below: readonly SchemaNode[], { cursor, notebook }: Asked): Insertion {
  if (cursor.hasColon) return { insert: name }
  const next = `${lineEndOf(notebook.text)}${cursor.indent}  `
  switch (shapeOf(below)) {
    case 'group': return { insert: cursor.flow ? `${name}: {$1}` : `${name}:${next}`, snippet: cursor.flow, again: true }
    case 'groups': return { insert: cursor.flow ? `${name}: [{$1}]` : `${name}:${next}- `, snippet: cursor.flow, again: true }
    case 'list': return { insert: `${name}: [$1]`, snippet: true, again: true }
    case 'two': return { insert: `${name}: [$1, $2]`, snippet: true }
    case 'yes': return { insert: `${name}: true` }
    case 'choice': return { insert: `${name}: `, again: true }
    case 'value': return { insert: `${name}: ` }
  }
}

/** What a value looks like at its simplest; two lengths where two average the friction or make a window. */
function shapeOf(nodes: readonly SchemaNode[]): 'group' | 'groups' | 'list' | 'two' | 'yes' | 'choice' | 'value' {
  const types = nodes.flatMap((node) => node.type ?? [])
  if (nodes.some(({ named }) => named === 'reading' || named === 'window')) return 'two'
  if (types.includes('boolean')) return 'yes'
  if (nodes.some((node) => node.enum)) return 'choice'
  if (types.length === 0 || types.some((type) => !['object', 'array'].includes(type))) return 'value'
  if (types.includes('object')) return 'group'
  return schemasBelow(nodes, '*').some(({ type }) => type === 'object') ? 'groups' : 'list'
}
