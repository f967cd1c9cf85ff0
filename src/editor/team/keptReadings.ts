/** Where readings come from. Whatever fails is left out. */
export interface Source<Reading> {
  /** Is another one when what would be read is, as far as can be told without reading. */
  stamp: (key: string) => Promise<string>
  /** Reads one; `earlier` is what it was before. */
  read: (key: string, earlier: Reading | undefined) => Promise<Reading>
  /** Lets everything else go first; asked after each reading. */
  giveWay: () => Promise<void>
}

/** How many were looked at, and how many there were to look at. */
export type Progress = (done: number, of: number) => void

/**
 * Readings of many files, one after another and each only where its file changed since. There is one line of what is to be
 * looked at: a newer request takes the place of what is left of an older one. It knows no editor and no disk.
 */
export class KeptReadings<Reading> {
  readonly #kept = new Map<string, { stamp: string; reading: Reading }>()
  /** Read again whatever their stamps say: a file may change twice within what its time can tell. */
  readonly #touched = new Set<string>()
  #wanted = new Set<string>()
  #due: string[] = []
  #left = 0
  #done = 0
  #progress: Progress | undefined
  #working: Promise<void> | undefined

  constructor(readonly source: Source<Reading>) {}

  /** What was read so far. */
  get all(): Reading[] {
    return [...this.#kept.values()].map(({ reading }) => reading)
  }

  /** So many were not looked at when it was stopped. */
  get left(): number {
    return this.#left
  }

  /** Whether it is among those to be kept, read or not. */
  has(key: string): boolean {
    return this.#wanted.has(key)
  }

  get(key: string): Reading | undefined {
    return this.#kept.get(key)?.reading
  }

  /** Keeps readings of these and of no others. Ends when all are as they stand, or when it was stopped. */
  keep(keys: readonly string[], progress?: Progress): Promise<void> {
    this.#wanted = new Set(keys)
    for (const key of this.#kept.keys()) if (!this.#wanted.has(key)) this.#kept.delete(key)
    const first = [...this.#touched].filter((key) => this.#wanted.has(key))
    this.#due = [...new Set([...first, ...keys])]
    this.#left = 0
    this.#done = 0
    this.#progress = progress
    return this.#work()
  }

  /** Reads these again, before whatever else is due. */
  touch(keys: readonly string[]): Promise<void> {
    const wanted = keys.filter((key) => this.#wanted.has(key))
    for (const key of wanted) this.#touched.add(key)
    this.#due = [...new Set([...wanted, ...this.#due])]
    return this.#work()
  }

  /** Lets go of some; tells whether any was known. */
  forget(isGone: (key: string) => boolean): boolean {
    const gone = [...this.#wanted].filter(isGone)
    for (const key of gone) {
      this.#wanted.delete(key)
      this.#kept.delete(key)
    }
    return gone.length > 0
  }

  /** Reads no more than what is being read just now. What was read is kept, and not read again when it is asked for. */
  stop(): void {
    this.#left = this.#due.length
    this.#due = []
  }

  #work(): Promise<void> {
    if (this.#working) return this.#working
    if (this.#due.length === 0) return Promise.resolve()
    return this.#working = this.#goOn()
  }

  async #goOn(): Promise<void> {
    for (let key = this.#due.shift(); key !== undefined; key = this.#due.shift()) {
      if (await this.#look(key)) await this.source.giveWay()
      this.#progress?.(++this.#done, this.#done + this.#due.length)
    }
    // In the same breath as it finds nothing due, so that whoever asks next begins anew.
    this.#working = undefined
    this.#progress = undefined
  }

  /** Tells whether it was read. */
  async #look(key: string): Promise<boolean> {
    if (!this.#wanted.has(key)) return false
    const touched = this.#touched.delete(key)
    const before = this.#kept.get(key)
    try {
      const stamp = await this.source.stamp(key)
      if (before?.stamp === stamp && !touched) return false
      const reading = await this.source.read(key, before?.reading)
      // It may have gone while it was read.
      if (this.#wanted.has(key)) this.#kept.set(key, { stamp, reading })
    } catch {
      this.#kept.delete(key)
    }
    return true
  }
}
