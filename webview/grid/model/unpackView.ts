import type { PackedView, PackedWords } from '../../../src/core/grid/packView'
import type { GridView } from '../../../src/core/grid/view'
import { Cells } from './cells'
import { Findings } from './findings'

/** A grid as the page holds it. */
export interface PageView extends Omit<GridView, 'cells' | 'findings'> {
  cells: Cells
  findings: Findings
}

/** The grid that was packed for its way here: nothing is made of a cell or a finding before it is looked at. */
export function unpackView(packed: PackedView): PageView {
  const { view, kinds, ...words } = JSON.parse(packed.words) as PackedWords
  return { ...view, cells: new Cells(packed, kinds, view), findings: new Findings(packed.findings, words) }
}
