import * as vscode from 'vscode'
import { buildGrid } from '../../core/grid/buildGrid'
import type { GridView } from '../../core/grid/view'
import { say } from '../../core/words/say'
import { displayUnitsFor } from '../displayUnits'
import type { Analysis, Notebooks } from '../notebooks'

/** So many of a long notebook's last entries are worked out before its grid is first shown: what is in sight, and some more. */
const firstSight = 60

/** The grid of a text as it is; of a broken text, the last one understood with the trouble on top; of a long one, a first sight until it is worked out. */
export function viewOf(document: vscode.TextDocument, analysis: Analysis, notebooks: Notebooks): GridView {
  const { notebook } = analysis
  const units = displayUnitsFor(document.uri)
  const view = notebooks.isWorkedOut(document) ? buildGrid(notebook, analysis.findings, units) : buildGrid(notebook, [], units, firstSight)
  // Told when it is.
  if (view.unfinished) notebooks.prepare(document)
  const readOnly = whyReadOnly(document)
  const held = readOnly ? { readOnly } : {}
  const good = notebook.broken && notebooks.lastGood(document)
  if (!good) return { ...view, ...held }
  return { ...buildGrid(good.notebook, good.findings, units), state: 'broken', ...(view.trouble ? { trouble: view.trouble } : {}), ...held }
}

export function whyReadOnly({ uri: { scheme } }: vscode.TextDocument): string | undefined {
  if (scheme === 'git' || vscode.workspace.fs.isWritableFileSystem(scheme) === false) return say('This is a version to read, not to edit.')
  return undefined
}
