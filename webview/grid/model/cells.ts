import type { PackedView, PackedWords } from '../../../src/core/grid/packView'
import type { Cell } from '../../../src/core/grid/view'

/** The cells of a grid as they came: nobody pays for those that are never looked at. */
export class Cells {
  /** Those that changed since, and marked ones that were looked at. */
  readonly #own = new Map<number, Cell>()
  /** Where each row begins; the last is where they end. */
  readonly #starts: number[] = [0]

  constructor(readonly packed: Pick<PackedView, 'cells' | 'marks'>, readonly kinds: PackedWords['kinds'], { rows, columns }: Pick<PackedWords['view'], 'rows' | 'columns'>) {
    for (const { kind } of rows) this.#starts.push(this.#starts.at(-1)! + (kind === 'group' ? 0 : columns.length))
  }

  /** The same cell each time, and for all that say the same; none in a group's row. */
  at(row: number, column: number): Cell | undefined {
    const at = this.#placeOf(row, column)
    return at === undefined ? undefined : this.#own.get(at) ?? this.#kindAt(at)
  }

  /** What it says, without what is found about it: for who looks at all of them. */
  said(row: number, column: number): PackedWords['kinds'][number] | undefined {
    const at = this.#placeOf(row, column)
    return at === undefined ? undefined : this.#own.get(at) ?? this.kinds[this.packed.cells[at]! >>> 1]
  }

  /** Whether it has findings: told without looking which. */
  isMarked(row: number, column: number): boolean {
    const at = this.#placeOf(row, column)
    if (at === undefined) return false
    const own = this.#own.get(at)
    return own ? (own.findings?.length ?? 0) > 0 : this.packed.cells[at]! % 2 === 1
  }

  /** Puts another in its place. */
  put(row: number, column: number, cell: Cell): void {
    const at = this.#placeOf(row, column)
    if (at !== undefined) this.#own.set(at, cell)
  }

  #placeOf(row: number, column: number): number | undefined {
    const [start, end] = [this.#starts[row], this.#starts[row + 1]]
    return start === undefined || end === undefined || column < 0 || start + column >= end ? undefined : start + column
  }

  #kindAt(at: number): Cell {
    const packed = this.packed.cells[at]!
    const kind = this.kinds[packed >>> 1]!
    if (packed % 2 === 0) return kind
    const cell = { ...kind, findings: this.#marksAt(at) }
    this.#own.set(at, cell)
    return cell
  }

  #marksAt(at: number): number[] {
    const { marks } = this.packed
    let [low, high] = [0, marks.length / 2]
    while (low < high) {
      const middle = (low + high) >>> 1
      if (marks[2 * middle]! < at) low = middle + 1
      else high = middle
    }
    const ids: number[] = []
    for (; marks[2 * low] === at; low++) ids.push(marks[2 * low + 1]!)
    return ids
  }
}
