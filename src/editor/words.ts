import * as vscode from 'vscode'
import { speak } from '../core/words/say'

export type PageName = 'grid' | 'compare' | 'turns'

/** The words of a page have no English text on this side, so they are known by page and key. */
const pageKey = /^(\w+):(.+)$/

/** Speaks the language that VS Code is shown in, where we have words for it (`src/words`); English otherwise. */
export function speakDisplayLanguage(): void {
  speak(vscode.l10n.bundle)
}

/** The words of a webview's page by their keys; empty in English, which each page knows by itself. */
export function pageWords(page: PageName): Record<string, string> {
  const words: Record<string, string> = {}
  for (const [key, text] of Object.entries(vscode.l10n.bundle ?? {})) {
    const [, of, name] = pageKey.exec(key) ?? []
    if (of === page && name) words[name] = text
  }
  return words
}
