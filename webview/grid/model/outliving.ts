/** What of the browser's storage is used. */
export interface Store {
  readonly length: number
  key(index: number): string | null
  getItem(key: string): string | null
  setItem(key: string, value: string): void
  removeItem(key: string): void
}

/** What is older was let go of by whoever typed it. */
const longestMs = 24 * 60 * 60 * 1000
const prefix = 'detent.page:'

/**
 * Keeps the state of a page where another page on the same notebook finds it: the editor keeps a page's own state only as
 * long as its tab, and a tab whose editor has lost its host must be opened anew. `page` tells pages on one notebook apart.
 */
export function outliving(store: Store, { notebook, page }: { notebook: string; page: string }): { keep(state: unknown): void; take(now: number): unknown } {
  const mine = `${prefix}${notebook}`
  return {
    keep(state) {
      try {
        store.setItem(`${mine}#${page}`, JSON.stringify({ at: Date.now(), state }))
      } catch {
        // A full store, or none, costs this convenience and nothing else.
      }
    },
    take(now) {
      try {
        const keys = Array.from({ length: store.length }, (_, index) => store.key(index)).filter((key) => key?.startsWith(prefix) === true) as string[]
        const all = keys.map((key) => ({ key, ...readKept(store.getItem(key)) }))
        for (const { key, at } of all) if (now - at > longestMs || key.startsWith(`${mine}#`)) store.removeItem(key)
        return all.filter(({ key, at }) => key.startsWith(`${mine}#`) && now - at <= longestMs).sort((a, b) => b.at - a.at)[0]?.state
      } catch {
        return undefined
      }
    },
  }
}

function readKept(text: string | null): { at: number; state: unknown } {
  try {
    const { at, state } = JSON.parse(text ?? '') as { at?: unknown; state?: unknown }
    return { at: typeof at === 'number' ? at : 0, state }
  } catch {
    return { at: 0, state: undefined }
  }
}
