import schema from '../../../schemas/setup.schema.json'

/** As much of JSON Schema as the format uses. */
export interface SchemaNode {
  $ref?: string
  /** The definition it was taken from, such as `length`. */
  named?: string
  type?: string | string[]
  description?: string
  enum?: (string | number)[]
  examples?: unknown[]
  properties?: Record<string, SchemaNode>
  additionalProperties?: SchemaNode
  items?: SchemaNode
  allOf?: SchemaNode[]
  anyOf?: SchemaNode[]
}

const root = schema as unknown as SchemaNode & { definitions: Record<string, SchemaNode> }

/** Follows `$ref`; what stands beside it, such as a description, wins. */
function resolved(node: SchemaNode): SchemaNode {
  if (node.$ref === undefined) return node
  const { $ref, ...beside } = node
  const named = $ref.slice('#/definitions/'.length)
  return { ...resolved(root.definitions[named] ?? {}), named, ...beside }
}

/** A schema node and all it is made of, choices included. */
function parts(node: SchemaNode): SchemaNode[] {
  const self = resolved(node)
  return [self, ...[...(self.allOf ?? []), ...(self.anyOf ?? [])].flatMap(parts)]
}

/** The schema of a whole notebook, with all its choices; where a walk down the tree begins. */
export const rootSchemas: readonly SchemaNode[] = parts(root)

/** The steps that were taken before: every value of a notebook takes a few, and always the same. */
const steps = new WeakMap<readonly SchemaNode[], Map<string, readonly SchemaNode[]>>()
const mostSteps = 1000

/** The schemas one step further down: a key, or `*` for an item of a list. */
export function schemasBelow(nodes: readonly SchemaNode[], step: string): readonly SchemaNode[] {
  const taken = steps.get(nodes) ?? new Map<string, readonly SchemaNode[]>()
  const known = taken.get(step)
  if (known) return known
  const found = nodes.flatMap((node) => below(node, step))
  if (taken.size < mostSteps) steps.set(nodes, taken.set(step, found))
  return found
}

/** The schema of what stands under a path of keys, `*` for an item of a list; empty where the format says nothing. */
export function schemasAt(path: readonly string[]): readonly SchemaNode[] {
  return path.reduce(schemasBelow, rootSchemas)
}

function below(node: SchemaNode, step: string): SchemaNode[] {
  if (step === '*') return node.items ? parts(node.items) : []
  const property = node.properties && Object.hasOwn(node.properties, step) ? node.properties[step] : node.additionalProperties
  return property ? parts(property) : []
}

/** The keys the format knows under a path; `undefined` where any key may stand, or none is described. */
export function keysAt(path: readonly string[]): ReadonlySet<string> | undefined {
  return keysOf(schemasAt(path))
}

/** The keys these schemas know; `undefined` where any key may stand, or none is described. */
export function keysOf(nodes: readonly SchemaNode[]): ReadonlySet<string> | undefined {
  if (nodes.some((node) => node.additionalProperties !== undefined)) return undefined
  const known = keySets.get(nodes) ?? new Set(nodes.flatMap((node) => Object.keys(node.properties ?? {})))
  keySets.set(nodes, known)
  return known.size === 0 ? undefined : known
}

const keySets = new WeakMap<readonly SchemaNode[], ReadonlySet<string>>()

/** What the schema says about the value under a path, for a hover. */
export function descriptionAt(path: readonly string[]): string | undefined {
  return schemasAt(path).find((node) => node.description !== undefined)?.description
}
