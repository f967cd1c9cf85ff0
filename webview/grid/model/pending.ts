import type { LeftOut } from '../../../src/core/grid/applyGesture'
import type { GridPlace } from '../../../src/core/grid/view'

/** A text on its way into the notebook, or turned back. */
export interface Pending extends GridPlace {
  text: string
  /** The gesture it went out with; texts of one gesture are answered and let go together. */
  gesture: number
  /** `waiting` for an answer; `written` but not yet seen in the view; `refused`. */
  state: 'waiting' | 'written' | 'refused'
  why?: string
  /** The view has shown the cell anew since it went out: once it is written, it stands there. */
  shown?: boolean
}

/**
 * What was typed and does not stand in the view yet. A text stays here until the view shows the cell anew or a
 * person lets it go: nothing typed is ever lost on the way.
 */
export class PendingTexts {
  #texts = new Map<string, Pending>()
  /** Texts that never went out count downwards, apart from real gestures. */
  #unsent = 0

  add(gesture: number, cells: readonly ({ text: string } & GridPlace)[]): void {
    for (const { row, column, text } of cells) this.#texts.set(keyOf({ row, column }), { row, column, text, gesture, state: 'waiting' })
  }

  /** Takes texts that never went out, or whose answer an earlier life of the page did not see. */
  keep(texts: readonly ({ text: string } & GridPlace)[], why: string): void {
    for (const { row, column, text } of texts) {
      this.#texts.set(keyOf({ row, column }), { row, column, text, gesture: --this.#unsent, state: 'refused', why })
    }
  }

  /** The places whose look changes by the answer; `left` are those that were refused while others were written. */
  answer(gesture: number, refused: string | undefined, left: readonly LeftOut[] = []): GridPlace[] {
    const answered = this.#of(gesture)
    const why = new Map(left.map((each) => [keyOf(each), each.why]))
    for (const pending of answered) {
      const alone = why.get(keyOf(pending))
      if (alone !== undefined) Object.assign(pending, { state: 'refused', why: alone, gesture: --this.#unsent })
      else if (refused === undefined && pending.shown) this.#texts.delete(keyOf(pending))
      else if (refused === undefined) pending.state = 'written'
      else Object.assign(pending, { state: 'refused', why: refused })
    }
    return answered
  }

  at(place: GridPlace | undefined): Pending | undefined {
    return place && this.#texts.get(keyOf(place))
  }

  /**
   * The view shows these cells anew: what was written there has arrived. What waits for its answer stays until that comes:
   * it may have been another who changed the cell. Refused texts stay.
   */
  seen(places: readonly GridPlace[]): void {
    for (const place of places) {
      const pending = this.at(place)
      if (pending?.state === 'written') this.#texts.delete(keyOf(place))
      else if (pending?.state === 'waiting') pending.shown = true
    }
  }

  /** Everything written stands in the view by now. */
  settle(): GridPlace[] {
    const written = [...this.#texts.values()].filter(({ state }) => state === 'written')
    for (const pending of written) this.#texts.delete(keyOf(pending))
    return written
  }

  /** Lets go of a text and of all that went out with it. */
  letGo(place: GridPlace): GridPlace[] {
    const pending = this.at(place)
    if (!pending) return []
    const together = this.#of(pending.gesture)
    for (const each of together) this.#texts.delete(keyOf(each))
    return together
  }

  /** What would be lost if the page ended now. */
  get unwritten(): Pending[] {
    return [...this.#texts.values()].filter(({ state }) => state !== 'written')
  }

  /** What was turned back and neither mended nor let go of yet. */
  get refused(): Pending[] {
    return [...this.#texts.values()].filter(({ state }) => state === 'refused')
  }

  /** Forgets texts one by one, for what is done to their cells instead. */
  drop(places: readonly GridPlace[]): readonly GridPlace[] {
    for (const place of places) this.#texts.delete(keyOf(place))
    return places
  }

  #of(gesture: number): Pending[] {
    return [...this.#texts.values()].filter((pending) => pending.gesture === gesture)
  }
}

const keyOf = ({ row, column }: GridPlace) => `${row}\u0000${column}`
