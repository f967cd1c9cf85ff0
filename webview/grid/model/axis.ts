/** One direction of the grid: sizes in CSS px one after the other, and which of them lie in a stretch. */
export class Axis {
  readonly #offsets: Float64Array

  constructor(readonly sizes: readonly number[]) {
    this.#offsets = new Float64Array(sizes.length + 1)
    for (let index = 0; index < sizes.length; index++) this.#offsets[index + 1] = this.#offsets[index]! + sizes[index]!
  }

  get count(): number {
    return this.sizes.length
  }

  get total(): number {
    return this.#offsets[this.count]!
  }

  /** Where the item begins, in px from the first. */
  offset(index: number): number {
    return this.#offsets[Math.max(0, Math.min(index, this.count))]!
  }

  size(index: number): number {
    return this.sizes[index] ?? 0
  }

  /** The item at a px; the first or last beyond the ends; -1 when there is none. */
  at(px: number): number {
    let low = 0
    let high = this.count - 1
    while (low < high) {
      const middle = (low + high + 1) >> 1
      if (this.#offsets[middle]! <= px) low = middle
      else high = middle - 1
    }
    return high
  }

  /** How many items, at most, are needed to cover a stretch of `length` px anywhere, and `more` on each side. */
  reach(length: number, more: number): number {
    const smallest = this.sizes.reduce((least, size) => Math.min(least, size), Infinity)
    return this.count === 0 ? 0 : Math.min(this.count, Math.ceil(length / smallest) + 1 + 2 * more)
  }

  /** The first of `reach` items that cover the stretch from `start` with `more` to spare before it. */
  firstOf(start: number, reach: number, more: number): number {
    return Math.max(0, Math.min(this.at(start) - more, this.count - reach))
  }
}

/**
 * The least move of a scroll position that shows the item whole in a stretch of `length` px; where it moves to the item's start, with
 * those from `head` on before it, if they have room.
 */
export function scrollToShow(axis: Axis, index: number, scroll: number, length: number, head = index): number {
  const end = axis.offset(index) + axis.size(index)
  const isHeadSeen = end - axis.offset(head) <= length
  const start = axis.offset(isHeadSeen ? head : index)
  if (start < scroll || end - start > length) return start
  return end > scroll + length ? end - length : scroll
}
