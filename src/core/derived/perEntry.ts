import type { Entry, Notebook } from '../notebook/notebook'

/**
 * Works something out once for each entry and arguments, also over versions of a text in which the entry and all it
 * comes from say the same. For results without a place in the text, of what looks at no other entries.
 */
export function perEntry<Arguments extends string[], Value>(compute: PerEntry<Arguments, Value>): PerEntry<Arguments, Value> {
  return remembered(compute, (_, { content }) => ({ for: content, key: '' }))
}

/**
 * The same for one version of a text alone: for what looks at other entries too, as all does that stands on the geometry,
 * whose figures hold where an adjuster was first recorded, on whichever line that was.
 */
export function perVersion<Arguments extends string[], Value>(compute: PerEntry<Arguments, Value>): PerEntry<Arguments, Value> {
  return remembered(compute, (notebook, { index }) => ({ for: notebook, key: `${index} ` }))
}

type PerEntry<Arguments extends string[], Value> = (notebook: Notebook, entry: Entry, ...which: Arguments) => Value

function remembered<Arguments extends string[], Value>(compute: PerEntry<Arguments, Value>, by: (notebook: Notebook, entry: Entry) => { for: object; key: string }): PerEntry<Arguments, Value> {
  const known = new WeakMap<object, Map<string, Value>>()
  return (notebook, entry, ...which) => {
    const place = by(notebook, entry)
    const values = known.get(place.for) ?? new Map<string, Value>()
    known.set(place.for, values)
    const key = place.key + which.join(' ')
    if (!values.has(key)) values.set(key, compute(notebook, entry, ...which))
    return values.get(key)!
  }
}
