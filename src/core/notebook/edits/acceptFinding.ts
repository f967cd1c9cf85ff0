import type { Finding } from '../../finding'
import type { TextChange } from '../../text'
import type { Notebook } from '../notebook'
import { appendItem } from './appendItem'
import { asProse } from './setPath'

/** Writes down that a finding is accepted and why: only in its entry and about its row, where it has them. */
export function acceptFinding(notebook: Notebook, finding: Finding, reason: string): TextChange[] {
  const { entry, row } = finding.place ?? {}
  return appendItem(notebook, 'accepted', (context) => [
    `finding: ${asProse(finding.code, context)}`,
    ...(entry === undefined ? [] : [`entry: ${asProse(entry, context)}`]),
    ...(row === undefined ? [] : [`about: ${asProse(row.replace(/^settings\//, ''), context)}`]),
    `reason: ${asProse(reason, context)}`,
  ])
}
