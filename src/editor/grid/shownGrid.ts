import { buildGrid } from '../../core/grid/buildGrid'
import { diffGrid } from '../../core/grid/diffGrid'
import { packView } from '../../core/grid/packView'
import type { GridView } from '../../core/grid/view'
import type { DisplayUnits } from '../../core/notation/displayUnits'
import type { Notebook } from '../../core/notebook/notebook'
import { applyChanges, type TextChange } from '../../core/text'
import type { ToWebview } from '../../protocol'
import type { Reading } from '../readings'

/** The document and how it is shown. */
export interface Shown {
  /** As it stands now. */
  reading(): Reading
  /** As it last was without an error. */
  lastGood(): Reading | undefined
  /** The reading of a text that it is about to have. */
  readAhead(text: string): Reading
  /** The text of this notebook was to come, and did not. */
  forgetAhead(notebook: Notebook): void
  units(): DisplayUnits
  /** Why nothing can be written, where that is so. */
  readOnly(): string | undefined
}

/**
 * What a page shows of a document, kept as new as its text. What an edit comes to is shown before the editor has taken it: it follows
 * from the text that is to come as all that is shown follows from the text that is there. When that text comes, it is shown already;
 * where it does not, what is there is shown again. It knows no editor.
 */
export class ShownGrid {
  #view: GridView | undefined
  #version = 0
  /** The notebook that is shown before its text has come. */
  #ahead: Notebook | undefined

  constructor(readonly shown: Shown, readonly post: (message: ToWebview) => void) {}

  /** What was shown last. */
  get view(): GridView | undefined {
    return this.#view
  }

  /** Shows all of it. */
  show(): void {
    this.#ahead = undefined
    this.#whole(this.#current())
  }

  /** Shows what differs from what is shown. */
  update(): void {
    const ahead = this.#ahead
    this.#ahead = undefined
    if (!this.#view || (ahead && this.shown.reading().notebook === ahead)) return
    const view = this.#current()
    if (!this.#differing(this.#view, view)) this.#whole(view)
  }

  /** Shows what a text will come to with these changes, where its rows and columns stay; answers the notebook that it will be. */
  showAhead(changes: readonly TextChange[]): Notebook | undefined {
    const { text } = this.shown.reading().notebook
    const coming = applyChanges(text, changes)
    if (!this.#view || coming === text) return undefined
    const reading = this.shown.readAhead(coming)
    const { notebook } = reading
    if (!notebook.broken && this.#differing(this.#view, { ...this.#build(reading), ...this.#held() })) this.#ahead = notebook
    return notebook
  }

  /** The editor is done with the edit that this notebook was to come of. Where it did not, what the text says is shown again. */
  settle(notebook: Notebook): void {
    this.shown.forgetAhead(notebook)
    if (this.#ahead === notebook) this.update()
  }

  #whole(view: GridView): void {
    this.#view = view
    this.post({ type: 'gridShown', version: ++this.#version, view: packView(view) })
  }

  /** Whether only what differs had to be told; where rows or columns are others, nothing is. */
  #differing(before: GridView, view: GridView): boolean {
    const difference = diffGrid(before, view)
    if (!difference) return false
    this.#view = view
    const { columns, cells, findings } = difference
    const { title, state, readOnly, trouble } = view
    this.post({
      type: 'gridChanged', version: ++this.#version,
      patch: { title, state, columns, cells, ...(readOnly ? { readOnly } : {}), ...(trouble ? { trouble } : {}), ...(findings ? { findings } : {}) },
    })
    return true
  }

  /** The grid of the text as it is; of a broken text, the last one understood with the trouble on top. */
  #current(): GridView {
    const reading = this.shown.reading()
    const view = this.#build(reading)
    const good = reading.notebook.broken && this.shown.lastGood()
    if (!good) return { ...view, ...this.#held() }
    return { ...this.#build(good), state: 'broken', ...(view.trouble ? { trouble: view.trouble } : {}), ...this.#held() }
  }

  #build({ notebook, findings }: Reading): GridView {
    return buildGrid(notebook, findings, this.shown.units())
  }

  #held(): Pick<GridView, 'readOnly'> {
    const readOnly = this.shown.readOnly()
    return readOnly ? { readOnly } : {}
  }
}
