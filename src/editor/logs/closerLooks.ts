import type { CloserLook } from '../../core/logs/atHand'
import type { LogStatistics } from '../../core/logs/statistics/logStatistics'

/** A part of a log, s since its first row. */
export type Stretch = readonly [fromS: number, toS: number]

/** So many are kept, for who goes back and forth. */
const mostKept = 8

/**
 * Stretches of logs that are looked at more closely, read one at a time: of those asked for meanwhile only the newest is
 * read, since whoever zooms on has left the others behind.
 */
export class CloserLooks {
  readonly #known = new Map<string, CloserLook>()
  #reading: string | undefined
  #next: { key: string; read: () => Promise<LogStatistics | undefined>; done: () => void } | undefined

  /** What is known under a key, which names the log as it is and the stretch; `done` is called once it is known. */
  of(key: string, read: () => Promise<LogStatistics | undefined>, done: () => void): CloserLook | 'reading' {
    const known = this.#known.get(key)
    if (known) return known
    if (this.#reading !== key) {
      this.#next = { key, read, done }
      if (this.#reading === undefined) void this.#readOn()
    }
    return 'reading'
  }

  async #readOn(): Promise<void> {
    for (let job = this.#next; job; job = this.#next) {
      this.#next = undefined
      this.#reading = job.key
      // One that cannot be read now is known to have nothing closer: asked again and again it would be read for ever.
      const found = await job.read().catch(() => undefined)
      this.#known.set(job.key, tracesOf(found))
      for (const old of this.#known.keys()) if (this.#known.size > mostKept) this.#known.delete(old)
      this.#reading = undefined
      job.done()
    }
  }
}

function tracesOf(statistics: LogStatistics | undefined): CloserLook {
  const [front, rear] = [statistics?.front?.trace, statistics?.rear?.trace]
  return { ...(front ? { front } : {}), ...(rear ? { rear } : {}) }
}
