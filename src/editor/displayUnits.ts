import * as vscode from 'vscode'
import { readDisplayUnits, type DisplayUnits } from '../core/notation/displayUnits'

/** The setting below which the units stand that computed numbers are shown in. */
export const displaySection = 'detent.display'

/** The units that the settings ask for, for a file. */
export function displayUnitsFor(uri: vscode.Uri): DisplayUnits {
  const settings = vscode.workspace.getConfiguration(displaySection, uri)
  return readDisplayUnits((kind) => settings.get(kind))
}
