import { Memory, recall, recallIn } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'
import { oncePer } from '../notebook/oncePer'

/**
 * Works something out once for each entry and arguments, also over versions of a text in which the entry and what of it was
 * looked at say the same. For results without a place in the text.
 */
export function perEntry<Arguments extends string[], Value>(compute: PerEntry<Arguments, Value>): PerEntry<Arguments, Value> {
  const keys = new Keys(compute)
  return (notebook, entry, ...which) => recall(entry, keys.of(which.join(' ')), undefined, () => compute(notebook, entry, ...which))
}

/**
 * The same for one version of a text alone: for what looks at other entries too, as all does that stands on the geometry,
 * whose figures hold where an adjuster was first recorded, on whichever line that was.
 */
export function perVersion<Arguments extends string[], Value>(compute: PerEntry<Arguments, Value>): PerEntry<Arguments, Value> {
  const memories = new WeakMap<Notebook, Memory>()
  return (notebook, entry, ...which) => {
    const memory = memories.get(notebook) ?? new Memory()
    memories.set(notebook, memory)
    return recallIn(memory, entry, `${entry.index} ${which.join(' ')}`, undefined, () => compute(notebook, entry, ...which))
  }
}

/** Works something out of machine and rider once for each version of a text and arguments. */
export function perNotebook<Arguments extends string[], Value>(compute: (notebook: Notebook, ...which: Arguments) => Value): (notebook: Notebook, ...which: Arguments) => Value {
  const knownOf = oncePer((_: Notebook) => new Map<string, { value: Value }>())
  return (notebook, ...which) => {
    const known = knownOf(notebook)
    const key = which.join(' ')
    let kept = known.get(key)
    if (!kept) known.set(key, kept = { value: compute(notebook, ...which) })
    return kept.value
  }
}

type PerEntry<Arguments extends string[], Value> = (notebook: Notebook, entry: Entry, ...which: Arguments) => Value

/** One key for each computation and arguments: computations share the memory of an entry. */
class Keys {
  readonly #keys = new Map<string, object>()

  constructor(readonly compute: unknown) {}

  of(which: string): object {
    const key = this.#keys.get(which) ?? { which }
    this.#keys.set(which, key)
    return key
  }
}
