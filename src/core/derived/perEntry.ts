import type { Entry, Notebook } from '../notebook/notebook'

/**
 * Works something out once for each entry and arguments, also over versions of a text in which the entry and all it
 * comes from say the same. For results without a place in the text, of what looks at no other entries.
 */
export function perEntry<Arguments extends string[], Value>(
  compute: (notebook: Notebook, entry: Entry, ...which: Arguments) => Value,
): (notebook: Notebook, entry: Entry, ...which: Arguments) => Value {
  const known = new WeakMap<object, Map<string, Value>>()
  return (notebook, entry, ...which) => {
    const values = known.get(entry.content) ?? new Map<string, Value>()
    known.set(entry.content, values)
    const key = which.join(' ')
    if (!values.has(key)) values.set(key, compute(notebook, entry, ...which))
    return values.get(key)!
  }
}
