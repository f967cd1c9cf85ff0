import assert from 'node:assert/strict'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { applyChanges } from '../../src/core/text'
import * as language from '../../src/language'

/** Asks everything there is to ask at the end of a text, and holds the answers to what an editor demands of them. */
export function askAt(text: string, offset = text.length, notebook = readNotebook(text), findings = checkNotebook(notebook)): void {
  const inside = ({ start, end }: { start: number; end: number }) => assert.ok(0 <= start && start <= end && end <= text.length, `${start} to ${end} lie in the text`)
  const completions = language.complete(notebook, offset, findings)
  if (completions) {
    inside(completions.range)
    assert.ok(completions.range.start <= offset && offset <= completions.range.end)
    assert.ok(!text.slice(completions.range.start, completions.range.end).includes('\n'))
  }
  const hover = language.hoverAt(notebook, offset)
  if (hover) inside(hover.range)
  for (const { at } of language.inlayHints(notebook, { start: 0, end: text.length })) inside({ start: at, end: at })
  const nested = (symbols: readonly language.NotebookSymbol[]) => {
    for (const { range, nameRange, name, children } of symbols) {
      inside(range)
      assert.ok(name !== '' && range.start <= nameRange.start && nameRange.end <= range.end)
      for (const child of children) assert.ok(range.start <= child.range.start && child.range.end <= range.end)
      nested(children)
    }
  }
  nested(language.documentSymbols(notebook))
  language.foldingRanges(notebook).forEach(inside)
  language.referencesAt(notebook, offset, true).forEach(inside)
  language.highlightsAt(notebook, offset)
  language.definitionAt(notebook, offset)?.to.forEach(inside)
  language.findRenamable(notebook, offset)
  const { changes } = language.renameAt(notebook, offset, 'renamed')
  if (changes) applyChanges(text, changes)
  for (const action of language.codeActions(notebook, findings, { start: 0, end: text.length })) {
    action.changes.forEach(inside)
    if (action.cursor !== undefined) assert.ok(action.cursor <= applyChanges(text, action.changes).length)
  }
}
