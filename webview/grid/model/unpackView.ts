import type { PackedView } from '../../../src/core/grid/packView'
import type { GridView } from '../../../src/core/grid/view'

/** The grid that was packed for its way here. Cells that say the same are one object: who changes one puts another in its place. */
export function unpackView({ kinds, ...view }: PackedView): GridView {
  return { ...view, cells: view.cells.map((row) => row.map((kind) => kinds[kind]!)) }
}
