import type { Cell, GridFinding, GridView } from './view'

/**
 * A grid on its way to the page. A season says few things many times: each kind of cell and each wording of a finding goes once, and which
 * of them stands where goes as plain numbers, which cross at no cost; objects by the ten thousand would cost more than all that is drawn.
 */
export interface PackedView {
  /** As JSON, which is read faster than what it says would cross. */
  words: string
  /** Which kind of cell, twice its number and one more where it has findings, row by row; a group's row has none. */
  cells: Uint32Array
  /** Which cell, by its place in `cells`, has which finding, by its id: in the order of the cells, and of each one's findings. */
  marks: Uint32Array
  /** Of each finding its id, its wording, its line or -1, and its column and row in `names` or -1. */
  findings: Int32Array
}

/** What a packed grid says in words. */
export interface PackedWords {
  view: Omit<GridView, 'cells' | 'findings'>
  kinds: Omit<Cell, 'findings'>[]
  wordings: Wording[]
  /** Keys that findings name. */
  names: string[]
}

type Wording = Pick<GridFinding, 'code' | 'severity' | 'message' | 'fixes'>

/** Packs a grid for the way to its page. */
export function packView({ cells, findings, ...view }: GridView): PackedView {
  const { kinds, ...where } = packCells(cells)
  const { wordings, names, listed } = packFindings(findings)
  const words: PackedWords = { view, kinds, wordings, names }
  return { words: JSON.stringify(words), ...where, findings: listed }
}

function packCells(cells: GridView['cells']): { kinds: PackedWords['kinds']; cells: Uint32Array; marks: Uint32Array } {
  const kinds = new Kinds<Omit<Cell, 'findings'>>()
  const marks: number[] = []
  const packed = new Uint32Array(cells.reduce((sum, row) => sum + row.length, 0))
  let at = 0
  for (const row of cells) {
    for (const cell of row) {
      for (const id of cell.findings ?? []) marks.push(at, id)
      packed[at++] = 2 * kinds.of(saidBy(cell), () => without(cell)) + (cell.findings ? 1 : 0)
    }
  }
  return { kinds: kinds.all, cells: packed, marks: Uint32Array.from(marks) }
}

function packFindings(findings: readonly GridFinding[]): { wordings: Wording[]; names: string[]; listed: Int32Array } {
  const [wordings, names] = [new Kinds<Wording>(), new Kinds<string>()]
  const nameOf = (key: string | undefined) => (key === undefined ? -1 : names.of(key, () => key))
  const listed: number[] = []
  for (const { id, line, column, row, ...wording } of findings) listed.push(id, wordings.of(saidBy(wording), () => wording), line ?? -1, nameOf(column), nameOf(row))
  return { wordings: wordings.all, names: names.all, listed: Int32Array.from(listed) }
}

/** What differs, each once and known by its number. */
class Kinds<T> {
  readonly all: T[] = []
  readonly #known = new Map<string, number>()

  of(said: string, make: () => T): number {
    const known = this.#known.get(said)
    if (known !== undefined) return known
    const kind = this.all.push(make()) - 1
    this.#known.set(said, kind)
    return kind
  }
}

function without({ findings: _, ...cell }: Cell): Omit<Cell, 'findings'> {
  return cell
}

/** All that a plain object says besides findings; lengths go with it, so that no two say the same by where they are parted. */
function saidBy(one: Cell | Wording): string {
  let said = ''
  // A cell is not taken apart for it: there are hundreds of thousands.
  for (const name in one) {
    if (name === 'findings') continue
    const value: unknown = one[name as keyof typeof one]
    const text = typeof value === 'object' ? JSON.stringify(value) : String(value)
    said += `${name} ${text.length} ${text}`
  }
  return said
}
