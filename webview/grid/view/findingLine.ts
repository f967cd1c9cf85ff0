import type { GridFinding } from '../../../src/core/grid/view'
import { say } from '../strings'
import { make } from './dom'

/** The mark of a severity: its own shape with a letter cut out, so that it tells without colour. */
export function severityMark(severity: GridFinding['severity']): HTMLElement {
  return make('span', `mark mark-${severity}`, { role: 'img', 'aria-label': say(`severity.${severity}`) })
}
