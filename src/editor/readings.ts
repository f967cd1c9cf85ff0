import type { Finding } from '../core/finding'
import type { Notebook } from '../core/notebook/notebook'

/** A text as a notebook, with its findings. */
export interface Reading {
  notebook: Notebook
  findings: Finding[]
}

/** The reading of one version of a document. */
export interface Analysis extends Reading {
  version: number
}

/**
 * The readings of one document, a version after the other: what each has in common with the one before is not read again. A text may
 * be read before the document has it, as what an edit will come to. It knows no editor.
 */
export class Readings {
  #now: Analysis | undefined
  #good: Analysis | undefined
  /** The reading of a text that is to come; without the text where it has to be worked out again when that comes. */
  #ahead: { text: string | undefined; reading: Reading } | undefined

  constructor(readonly read: (text: string, earlier: Notebook | undefined) => Reading) {}

  /** The reading of the document as it stands now. */
  of(version: number, textOf: () => string): Analysis {
    if (this.#now?.version === version) return this.#now
    const text = textOf()
    const reading = this.#ahead?.text === text ? this.#ahead.reading : this.#next(text)
    this.#ahead = undefined
    this.#now = { version, ...reading }
    if (!reading.notebook.broken) this.#good = this.#now
    return this.#now
  }

  /** The reading of a text that the document is about to have, for when it has it; `forget` tells that it has not. */
  ahead(text: string): Reading {
    const reading = this.#next(text)
    this.#ahead = { text, reading }
    return reading
  }

  /** The text of this notebook was to come, and did not. */
  forget(notebook: Notebook): void {
    // Entries hand on what was worked out of them to the next version, so that the text that is there is read anew as the one after it.
    if (this.#ahead?.reading.notebook === notebook) this.#now = undefined
  }

  /** The last reading of a text without an error; absent when there was none. */
  get lastGood(): Analysis | undefined {
    return this.#good
  }

  /** Something besides the text is other than it was. */
  renew(change: (reading: Reading) => Reading): void {
    const [now, good] = [this.#now, this.#good]
    this.#now = now && { ...now, ...change(now) }
    this.#good = good === now ? this.#now : good && { ...good, ...change(good) }
    this.#doubt()
  }

  /** What is found in a text is other than it was: it is to be read again. */
  reread(): void {
    this.#now = undefined
    this.#doubt()
  }

  #doubt(): void {
    if (this.#ahead) this.#ahead.text = undefined
  }

  /** What is in common with the version read last, be it one that is to come, is not read again. */
  #next(text: string): Reading {
    const known = this.#ahead?.reading ?? this.#now
    const earlier = known?.notebook.parsed.pieces ? known : this.#good
    return this.read(text, earlier?.notebook)
  }
}
