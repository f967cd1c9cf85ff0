import { stringify } from 'yaml'
import schema from '../../schemas/setup.schema.json'
import type { Choices } from '../core/grid/choices'

interface Schema {
  $ref?: string
  type?: string | string[]
  enum?: unknown[]
  allOf?: Schema[]
  anyOf?: Schema[]
  properties?: Record<string, Schema>
  additionalProperties?: Schema
  items?: Schema
  minItems?: number
  maxItems?: number
  examples?: unknown[]
  description?: string
}

const definitions = schema.definitions as Record<string, Schema>
const names = ['fork_rebound', 'fork_preload', 'shock_rebound', 'shock_length', 'cam', 'left_air', 'tyre']
const positions = ['3 out', '1 3/4 turns in', '12 mm', 'closed', 'open', 7, 0, '2.1 bar', '30 psi', '5/6 turns', '4 flats in', '-1', '999 out', '3 rings', '3 in', '½', '3 ± 1']
const words = ['run', 'a: b', 'it’s softer', '2', 'two\nlines', '# no comment', '', ' spaced ', '日本', 'x'.repeat(200)]
const figures = [120, '4.5 in', 0, 1, 30, 0.95, '0.95 kgf/mm', '28 %', '33 psi', '185 lb', 1e6, '68 °F', '1.5 ± 0.1', -3, 'about ten']
/** What a value may be replaced with in a notebook that is nearly right. */
const strange = [null, true, [], {}, [[]], { a: { b: [1] } }, '', 'x', -1, 1e308, 1e-320, '1e999', Infinity, NaN, '9'.repeat(400), '2026-99-99', ['a', null], { left: 1, right: null, middle: 2 }, '__proto__', '\u0000', '\ud800', '\u202eabc', '*a', '&a', '<<']

/** A notebook with what the format knows, as text. With `wrongOnce` one value in so many is of another shape. */
export function fromSchema(choices: Choices, wrongOnce?: number): string {
  const make = (each: Schema, key: string, depth: number): unknown => {
    if (wrongOnce !== undefined && choices.once(wrongOnce)) return choices.of(strange)
    const found = each.$ref ? definitions[each.$ref.split('/').pop()!]! : each
    const whole = found.allOf ? { ...found, properties: { ...resolved(found.allOf[0]!).properties, ...found.properties } } : found
    if (whole.enum) return choices.of(whole.enum)
    if (whole.anyOf) return make(choices.of(whole.anyOf), key, depth)
    if (whole.type === 'object') return makeMap(whole, key, depth)
    if (whole.type === 'array') return Array.from({ length: (whole.minItems ?? 0) + choices.below(Math.min(5, whole.maxItems ?? 5)) }, () => make(whole.items ?? {}, key, depth + 1))
    return makeScalar(whole, each.$ref?.split('/').pop() ?? key)
  }
  const makeMap = ({ properties = {}, additionalProperties }: Schema, key: string, depth: number) => {
    const known = Object.entries(properties).filter(() => choices.below(depth < 2 ? 4 : 3) > 0)
    const others = additionalProperties ? names.filter(() => choices.once(2)).map((name) => [key === 'settings' || key === 'adjusters' ? name : 'left', additionalProperties] as const) : []
    return Object.fromEntries([...known, ...others].map(([name, each]) => [name, make(each, name, depth + 1)]))
  }
  const makeScalar = ({ type, examples }: Schema, kind: string): unknown => {
    if (kind === 'position') return choices.of(positions)
    if (kind === 'date') return choices.of(['2026-04-18', '2026-04-18 14:30', '2026-02-30', '18.4.2026'])
    if (kind === 'id' || kind === 'from' || kind === 'entry') return choices.of(['found', 'run-1', 'run-2', 3, 'run-3'])
    if (kind === 'finding') return choices.of(['legs-differ', 'no-reason', 'sag-window', 'none'])
    if (type === 'boolean') return choices.once(2)
    if (type === 'integer' || type === 'number') return choices.of([1, 2, 10, 0.5, 25])
    if (type === 'string' && !examples) return choices.of(words)
    return choices.of([...figures, ...(examples ?? [])])
  }
  const value = { format: 1, ...make(schema as Schema, '', 0) as object }
  return stringify(value, { indent: choices.of([2, 4, 3]), indentSeq: choices.once(2), collectionStyle: choices.of(['any', 'block', 'block']), lineWidth: choices.of([0, 80]), defaultStringType: choices.of(['PLAIN', 'PLAIN', 'QUOTE_DOUBLE', 'QUOTE_SINGLE']), aliasDuplicateObjects: choices.once(2) })
}

function resolved(each: Schema): Schema {
  return each.$ref ? definitions[each.$ref.split('/').pop()!]! : each
}
