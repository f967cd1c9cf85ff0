import * as vscode from 'vscode'
import { headSvg } from '../../core/card/headSvg'
import { cardMarkdown, escapeMarkdown } from '../../core/card/cardMarkdown'
import { hoverAt, type Hover } from '../../language'
import { toRange } from '../convert'
import { displayUnitsFor } from '../displayUnits'
import { notebookPattern, type Notebooks } from '../notebooks'
import { readsSchema } from './schemaExtension'

export function registerHover(notebooks: Notebooks): vscode.Disposable {
  return vscode.languages.registerHoverProvider({ pattern: notebookPattern }, {
    provideHover(document, position) {
      const hover = hoverAt(notebooks.of(document).notebook, document.offsetAt(position), displayUnitsFor(document.uri))
      if (!hover || (hover.fromSchema && readsSchema('hover'))) return undefined
      return new vscode.Hover(toMarkdown(hover), toRange(document, hover.range))
    },
  })
}

function toMarkdown({ markdown, card }: Hover): vscode.MarkdownString {
  const drawing = card?.drawing
  if (!drawing) return new vscode.MarkdownString(markdown)
  // A picture in a hover is a document of its own: it knows no colour of the theme, only whether that is dark.
  const isLight = [vscode.ColorThemeKind.Light, vscode.ColorThemeKind.HighContrastLight].includes(vscode.window.activeColorTheme.kind)
  const svg = encodeURIComponent(headSvg(drawing, isLight ? 'black' : 'white')).replace(/[()']/g, (c) => `%${c.charCodeAt(0).toString(16)}`)
  return new vscode.MarkdownString(cardMarkdown(card, `![${escapeMarkdown(drawing.text)}](data:image/svg+xml,${svg})`))
}
