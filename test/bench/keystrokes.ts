import { buildGrid } from '../../src/core/grid/buildGrid'
import { diffGrid } from '../../src/core/grid/diffGrid'
import type { GridView } from '../../src/core/grid/view'
import type { Finding } from '../../src/core/finding'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import type { Notebook } from '../../src/core/notebook/notebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { median } from './measure'

/** A place to type into, and what is typed there, another text each time. */
export interface Typing {
  /** The entry, from 1. */
  entry: number
  /** What stands there, within the entry; its second group is written anew. */
  where: RegExp
  typed: (time: number) => string
}

export interface Typed {
  /** From the keystroke to the findings of the whole notebook, ms. */
  findings: number
  /** From there to what differs in the grid, ms. */
  grid: number
  /** Of what would cross to the page. */
  bytes: number
  cells: number
}

/** A notebook that is typed into over and over, as an editor keeps it. */
export class TypedInto {
  #notebook: Notebook
  #findings: Finding[]
  #view: GridView

  constructor(text: string) {
    this.#notebook = readNotebook(text)
    if (this.#notebook.broken) throw new Error(`this is no notebook to type into: ${this.#notebook.broken.message}`)
    this.#findings = checkNotebook(this.#notebook)
    this.#view = buildGrid(this.#notebook, this.#findings)
  }

  get text(): string {
    return this.#notebook.text
  }

  /** Medians over so many keystrokes. */
  type(typing: Typing, times: number): Typed {
    const all = Array.from({ length: times }, (_, time) => this.#once(typing, time))
    const of = (key: keyof Typed) => median(all.map((each) => each[key]))
    return { findings: of('findings'), grid: of('grid'), bytes: of('bytes'), cells: of('cells') }
  }

  #once(typing: Typing, time: number): Typed {
    const text = typedInto(this.text, typing, time)
    const start = performance.now()
    const notebook = readNotebook(text, this.#notebook)
    const findings = checkNotebook(notebook)
    const checked = performance.now()
    const view = buildGrid(notebook, findings)
    const difference = diffGrid(this.#view, view)
    const done = performance.now()
    const bytes = Buffer.byteLength(JSON.stringify(difference ?? view))
    this.#notebook = notebook
    this.#findings = findings
    this.#view = view
    return { findings: checked - start, grid: done - checked, bytes, cells: difference?.cells.length ?? -1 }
  }
}

/** The text after one keystroke. */
export function typedInto(text: string, { entry, where, typed }: Typing, time: number): string {
  const start = text.indexOf(`- id: run-${entry}\n`)
  const found = where.exec(text.slice(start))!
  const at = start + found.index + found[1]!.length
  return text.slice(0, at) + typed(time) + text.slice(at + found[2]!.length)
}
