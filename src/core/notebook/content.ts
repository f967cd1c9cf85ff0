import type { Entry, Standing } from './notebook'

/**
 * What was worked out of an entry, kept over versions of a text. Whoever works something out is watched: it is told which
 * positions it looked at, and whether it followed the line of entries. When an entry further up is changed, only what looked
 * at the positions that differ here, or at the line, is worked out anew; where nothing differs that is handed down, nothing.
 */

/** What differs in what an entry inherits. */
export interface Difference {
  slots: ReadonlySet<string>
  /** What is handed down besides positions: days, tyres, what the weather was, a baseline. */
  line: boolean
}

interface Reads {
  slots: Set<string> | undefined
  all: boolean
  line: boolean
}

interface Kept extends Reads {
  value: unknown
  guard: unknown
}

interface Watch extends Reads {
  entry: Entry
}

let watch: Watch | undefined
let watching = true

/**
 * Does some work without watching what is looked at, which is quicker where nobody is going to ask again. Whatever is kept
 * of it counts as having looked at everything.
 */
export function unwatched<T>(work: () => T): T {
  const before = watching
  watching = false
  try {
    return work()
  } finally {
    watching = before
  }
}

export function isWatching(): boolean {
  return watching
}

/** What one entry, or one version of a notebook, is remembered by. */
export class Memory {
  readonly kept = new Map<unknown, Kept>()
}

export class Content extends Memory {
  /** The entry in the newest version; an older one may not write here any more, nor be answered from here. */
  owner: Entry | undefined

  /** Lets go of what looked at anything that differs. */
  forget({ slots, line }: Difference): void {
    for (const [key, kept] of this.kept) {
      if ((line && kept.line) || (slots.size > 0 && (kept.all || (kept.slots !== undefined && someOf(kept.slots, slots))))) this.kept.delete(key)
    }
  }
}

function someOf(some: ReadonlySet<string>, of: ReadonlySet<string>): boolean {
  const [few, many] = some.size < of.size ? [some, of] : [of, some]
  for (const each of few) if (many.has(each)) return true
  return false
}

/** Works something out of an entry once; it is known by its key and holds as long as the guard is the same. */
export function recall<T>(entry: Entry, key: unknown, guard: unknown, work: () => T): T {
  return entry.content.owner === entry ? recallIn(entry.content, entry, key, guard, work) : work()
}

/** The same with a memory of one's own. */
export function recallIn<T>(memory: Memory, entry: Entry, key: unknown, guard: unknown, work: () => T): T {
  const known = memory.kept.get(key)
  if (known && known.guard === guard) {
    tellOuter(entry, known)
    return known.value as T
  }
  if (!watching) {
    const value = work()
    memory.kept.set(key, { value, guard, slots: undefined, all: true, line: true })
    return value
  }
  const outer = watch
  const mine: Watch = watch = { entry, slots: undefined, all: false, line: false }
  try {
    const value = work()
    memory.kept.set(key, { value, guard, slots: mine.slots, all: mine.all, line: mine.line })
    return value
  } finally {
    watch = outer
    tellOuter(entry, mine)
  }
}

/** What is kept under a key without a guard, looked at as if it were worked out now; undefined where nothing is. */
export function knownOf<T>(entry: Entry, key: unknown): { value: T } | undefined {
  const known = entry.content.owner === entry ? entry.content.kept.get(key) : undefined
  if (known) tellOuter(entry, known)
  return known as { value: T } | undefined
}

/** Replaces what is kept under a key by the same in other words, such as at another place; what it looked at stays. */
export function keepInstead(entry: Entry, key: unknown, value: unknown): void {
  const known = entry.content.owner === entry ? entry.content.kept.get(key) : undefined
  if (known) known.value = value
}

/** Drops what is kept under a key: it held for once only. */
export function keepNot(entry: Entry, key: unknown): void {
  if (entry.content.owner === entry) entry.content.kept.delete(key)
}

/** What is worked out on the way was looked at by whoever asked for it. Of another entry it may have been anything. */
function tellOuter(entry: Entry, { slots, all, line }: Reads): void {
  if (!watch) return
  if (line) watch.line = true
  if (entry === watch.entry) {
    if (all) watch.all = true
    if (slots) for (const slot of slots) (watch.slots ??= new Set()).add(slot)
  } else if (all || slots) watch.all = true
}

function lookAt(entry: Entry, slot: string | undefined): void {
  if (!watch) return
  if (slot === undefined || entry !== watch.entry) watch.all = true
  else (watch.slots ??= new Set()).add(slot)
}

/** Somebody follows the line of entries. */
export function lookAlongTheLine(): void {
  if (watch) watch.line = true
}

/** The positions that an entry stands in, or inherits, as somebody looks at them. */
export class State implements ReadonlyMap<string, Standing> {
  readonly #entry: Entry
  readonly #standings: ReadonlyMap<string, Standing>

  constructor(entry: Entry, standings: ReadonlyMap<string, Standing>) {
    this.#entry = entry
    this.#standings = standings
  }

  get size(): number {
    return this.#whole().size
  }

  get(slot: string): Standing | undefined {
    lookAt(this.#entry, slot)
    return this.#standings.get(slot)
  }

  has(slot: string): boolean {
    lookAt(this.#entry, slot)
    return this.#standings.has(slot)
  }

  entries() {
    return this.#whole().entries()
  }

  keys() {
    return this.#whole().keys()
  }

  values() {
    return this.#whole().values()
  }

  forEach(action: (standing: Standing, slot: string, map: ReadonlyMap<string, Standing>) => void): void {
    this.#whole().forEach((standing, slot) => action(standing, slot, this))
  }

  [Symbol.iterator]() {
    return this.entries()
  }

  #whole(): ReadonlyMap<string, Standing> {
    lookAt(this.#entry, undefined)
    return this.#standings
  }
}
