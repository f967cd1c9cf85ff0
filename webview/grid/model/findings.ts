import type { PackedView, PackedWords } from '../../../src/core/grid/packView'
import type { Severity } from '../../../src/core/finding'
import type { GridFinding } from '../../../src/core/grid/view'
import type { GridPatch } from '../../../src/protocol'

/** How many numbers tell of a finding. */
const stride = 5

/** Looks that are answered by going through what came: those for what is in sight at first. */
const firstLooks = 100

/** All findings of a notebook as they came, by their ids: put into words where somebody looks at one. What a patch costs does not grow with them. */
export class Findings {
  readonly #counts: Record<Severity, number> = { error: 0, warning: 0, info: 0 }
  /** What was put into words before they were put in order by their ids, by where in what came it stands. */
  readonly #early = new Map<number, GridFinding>()
  #looks = 0
  #map: Map<number, GridFinding | number> | undefined
  #list: GridFinding[] | undefined

  constructor(readonly packed: PackedView['findings'], readonly words: Pick<PackedWords, 'wordings' | 'names'>) {
    const severities = words.wordings.map(({ severity }) => severity)
    for (let at = 0; at < packed.length; at += stride) this.#counts[severities[packed[at + 1]!]!]++
  }

  /** How many there are of each severity. */
  get counts(): Readonly<Record<Severity, number>> {
    return this.#counts
  }

  get list(): readonly GridFinding[] {
    return this.#list ??= [...this.#byId.keys()].map((id) => this.get(id)!)
  }

  get(id: number): GridFinding | undefined {
    if (!this.#map && this.#looks++ < firstLooks) return this.#getEarly(id)
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

  /** In their order; a number is where in what came it stands. Made once it is wanted: a season's would hold up its first drawing. */
  get #byId(): Map<number, GridFinding | number> {
    if (this.#map) return this.#map
    const map = this.#map = new Map<number, GridFinding | number>()
    for (let at = 0; at < this.packed.length; at += stride) map.set(this.packed[at]! >>> 0, this.#early.get(at) ?? at)
    return map
  }

  #getEarly(id: number): GridFinding | undefined {
    let at = this.packed.indexOf(id | 0)
    while (at > 0 && at % stride !== 0) at = this.packed.indexOf(id | 0, at + 1)
    if (at < 0) return undefined
    const finding = this.#early.get(at) ?? this.#made(at)
    this.#early.set(at, finding)
    return finding
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
