import * as vscode from 'vscode'
import type { Notebooks } from '../notebooks'
import { registerCompletion } from './completion'
import { registerFolding } from './folding'
import { registerHover } from './hover'
import { registerInlayHints } from './inlayHints'
import { registerNames } from './names'
import { registerRename } from './rename'
import { registerSymbols } from './symbols'

/** What a notebook's text can be asked in the text editor; one file a feature, each on the one reading of the text. */
export function registerLanguage(notebooks: Notebooks): vscode.Disposable {
  return vscode.Disposable.from(
    registerCompletion(notebooks),
    registerHover(notebooks),
    registerInlayHints(notebooks),
    registerSymbols(notebooks),
    registerFolding(notebooks),
    registerNames(notebooks),
    registerRename(notebooks),
  )
}
