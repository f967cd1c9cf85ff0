import type { Notebook } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'

/** A plain number under a path, one without a unit such as a ratio; absent where there is none that is finite. */
export function numberAt(notebook: Notebook, path: readonly (string | number)[]): number | undefined {
  const value = scalarAt(notebook.root, path)?.value
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined
}
