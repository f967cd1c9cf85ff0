import type { End } from '../compute/sag/loadCase'
import { rateFromOutside, readCalliper } from '../compute/springs/rateFromOutside'
import type { Outcome } from '../compute/working/result'
import { factAt } from '../notebook/machine'
import type { Notebook } from '../notebook/notebook'
import { nodeAt } from '../notebook/tree'
import { numberAt } from './numberAt'

/** Whether the notebook says what the spring of an end measures. */
export function hasCoil(notebook: Notebook, end: End): boolean {
  return nodeAt(notebook.root, ['machine', end, 'spring'])?.kind === 'map'
}

/** The rate of each spring of an end from its wire, diameter and coils, N/mm. */
export function rateFromCoil(notebook: Notebook, end: End): Outcome {
  const length = (key: string) => {
    const mm = factAt(notebook, ['machine', end, 'spring', key], 'length')?.base
    return mm === undefined ? undefined : readCalliper(mm)
  }
  const shearModulusGPa = numberAt(notebook, ['machine', end, 'spring', 'shear_modulus'])
  return rateFromOutside({
    wireMm: length('wire'), outerMm: length('outer_diameter'), activeCoils: numberAt(notebook, ['machine', end, 'spring', 'active_coils']),
    ...(shearModulusGPa === undefined ? {} : { shearModulusGPa }),
  })
}
