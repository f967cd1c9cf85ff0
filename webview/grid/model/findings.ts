import type { PackedView, PackedWords } from '../../../src/core/grid/packView'
import type { Severity } from '../../../src/core/finding'
import type { GridFinding } from '../../../src/core/grid/view'
import type { GridPatch } from '../../../src/protocol'

/** How many numbers tell of a finding. */
const stride = 5

/** All findings of a notebook as they came, by their ids: put into words where somebody looks at one. What a patch costs does not grow with them. */
export class Findings {
  /** In their order; a number is where in what came it stands. */
  readonly #byId = new Map<number, GridFinding | number>()
  readonly #counts: Record<Severity, number> = { error: 0, warning: 0, info: 0 }
  #list: GridFinding[] | undefined

  constructor(readonly packed: PackedView['findings'], readonly words: Pick<PackedWords, 'wordings' | 'names'>) {
    for (let at = 0; at < packed.length; at += stride) {
      this.#byId.set(packed[at]! >>> 0, at)
      this.#counts[words.wordings[packed[at + 1]!]!.severity]++
    }
  }

  /** How many there are of each severity. */
  get counts(): Readonly<Record<Severity, number>> {
    return this.#counts
  }

  get list(): readonly GridFinding[] {
    return this.#list ??= [...this.#byId.keys()].map((id) => this.get(id)!)
  }

  get(id: number): GridFinding | undefined {
    const known = this.#byId.get(id)
    if (typeof known !== 'number') return known
    const finding = this.#made(known)
    this.#byId.set(id, finding)
    return finding
  }

  /** Those that differ stay where they were in the list; new ones come last. */
  take({ put, gone }: NonNullable<GridPatch['findings']>): void {
    this.#list = undefined
    for (const id of gone) this.#count(id, -1)
    for (const id of gone) this.#byId.delete(id)
    for (const finding of put) {
      this.#count(finding.id, -1)
      this.#byId.set(finding.id, finding)
      this.#count(finding.id, 1)
    }
  }

  #count(id: number, by: number): void {
    const finding = this.get(id)
    if (finding) this.#counts[finding.severity] += by
  }

  #made(at: number): GridFinding {
    const { packed, words: { wordings, names } } = this
    const [line, column, row] = [packed[at + 2]!, names[packed[at + 3]!], names[packed[at + 4]!]]
    return {
      ...wordings[packed[at + 1]!]!, id: packed[at]! >>> 0,
      ...(line < 0 ? {} : { line }), ...(column === undefined ? {} : { column }), ...(row === undefined ? {} : { row }),
    }
  }
}
