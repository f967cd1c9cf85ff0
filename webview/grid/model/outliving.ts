import { typedIn } from './savedState'

/** What of the browser's storage is used. */
export interface Store {
  readonly length: number
  key(index: number): string | null
  getItem(key: string): string | null
  setItem(key: string, value: string): void
  removeItem(key: string): void
}

/** One page among those that ever showed a notebook; pages of one window have the same `session`. */
export interface PageName {
  notebook: string
  session: string
  page: string
}

interface Kept {
  key: string
  at: number
  session: string
  state: unknown
  /** Another page has taken over what was typed here. */
  taken: boolean
}

/** What is older was let go of by whoever typed it. */
const longestMs = 24 * 60 * 60 * 1000
const prefix = 'detent.page:'

/** The name by which a page is known to be alive, and under which its state is kept. */
export const nameOfPage = ({ notebook, page }: PageName): string => `${prefix}${notebook}#${page}`

/**
 * Keeps the state of a page where another page on the same notebook finds it. The editor keeps a page's own state only as
 * long as its tab, and writes that down at times only: what was typed since is nowhere else when a window ends.
 */
export class Outliving {
  readonly #mine: string

  constructor(readonly store: Store, readonly name: PageName) {
    this.#mine = nameOfPage(name)
  }

  keep(state: unknown, now: number): void {
    attempt(() => {
      // What another page has taken over is not put out a second time, unless more was typed since.
      const before = this.#read(this.#mine)
      if (before?.taken && typedIn(before.state) === typedIn(state)) return
      this.store.setItem(this.#mine, JSON.stringify({ at: now, session: this.name.session, state }))
    })
  }

  /** What this very page kept last, where that is newer than what the editor kept of it. */
  own(than: number): unknown {
    const kept = attempt(() => this.#read(this.#mine))
    return kept && kept.at > than ? kept.state : undefined
  }

  /**
   * What a page on this notebook left behind that is there no more; where text was typed, once. `living` are the names of
   * those that are there. `anew`: this page takes the place of one that has lost its host, though it is there yet.
   */
  take({ now, anew, living }: { now: number; anew: boolean; living: readonly string[] | undefined }): unknown {
    return attempt(() => {
      const all = this.#all().filter(({ key }) => key !== this.#mine)
      for (const { key, at } of all) if (now - at > longestMs) this.store.removeItem(key)
      const gone = all.filter(({ key, at, taken }) => key.startsWith(nameOfPage({ ...this.name, page: '' })) && !taken && now - at <= longestMs && (anew || (living !== undefined && !living.includes(key) && typedIn(this.#read(key)?.state) !== '')))
      const rank = ({ session, state }: Kept) => (session === this.name.session ? 2 : 0) + (typedIn(state) === '' ? 0 : 1)
      const [best] = gone.sort((a, b) => (anew ? rank(b) - rank(a) : 0) || b.at - a.at)
      if (!best) return undefined
      this.store.setItem(best.key, JSON.stringify({ at: best.at, session: best.session, state: best.state, taken: true }))
      return best.state
    })
  }

  #all(): Kept[] {
    const keys = Array.from({ length: this.store.length }, (_, index) => this.store.key(index))
    return keys.flatMap((key) => (key?.startsWith(prefix) ? [this.#read(key) ?? { key, at: 0, session: '', state: undefined, taken: true }] : []))
  }

  #read(key: string): Kept | undefined {
    try {
      const { at, session, state, taken } = JSON.parse(this.store.getItem(key) ?? '') as Record<string, unknown>
      return { key, at: typeof at === 'number' ? at : 0, session: String(session), state, taken: taken === true }
    } catch {
      return undefined
    }
  }
}

/** A full store, or one that is not to be had, costs this convenience and nothing else. */
function attempt<T>(action: () => T): T | undefined {
  try {
    return action()
  } catch {
    return undefined
  }
}
