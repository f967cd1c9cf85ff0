import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { applyChanges } from '../../src/core/text'
import * as language from '../../src/language'
import { findCursor } from '../../src/language/cursor/cursor'

/** One of everything: braces over lines, quotes, comments, anchors, texts of several lines, CR LF, wrong values. */
const everything = [
  '%YAML 1.2', '---', '# a comment', 'format: 1', 'machine: {name: "T: 1", front: {travel: 120}, # why', '  rear: {travel: 130}}',
  'adjusters:', '  a: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10}', '  "b": &b', '    on: shock', '    controls: preload',
  '    counts: turns', 'entries:', '- id: x', '  settings: &s {a: {left: 3 out, right: 4 in}, b: 1 1/2}', '  notes: |+', '    one', '', "  reason: 'it''s, so'",
  '-', '  id: "y"', '  from: x', '  settings: *s', '  remarks: {a/left: z}', '- {settings: {c: 5 ¾}}', 'accepted: [{finding: legs-differ, entry: x, about: a}]', '...', '',
]

/** Asks everything there is to ask at the end of a text, and holds the answers to what an editor demands of them. */
function askAt(text: string, offset = text.length): void {
  const notebook = readNotebook(text)
  const findings = checkNotebook(notebook)
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

describe('a half-typed text', () => {
  it('is no trouble for any feature, wherever it ends', function () {
    this.timeout(60_000)
    const text = everything.join('\n')
    for (let end = 0; end <= text.length; end++) askAt(text.slice(0, end))
  })

  it('is no trouble with CR LF', () => {
    const text = everything.join('\r\n')
    for (let end = 0; end <= text.length; end += 23) askAt(text.slice(0, end))
  })

  it('is no trouble in the middle of a notebook', () => {
    const text = readFileSync('samples/wren-250.setup.yaml', 'utf8')
    for (let end = 0; end <= text.length; end += 211) askAt(text.slice(0, end) + text.slice(text.indexOf('\n', end)), end)
  })

  it('lets the cursor be looked for anywhere in a sample', () => {
    const text = readFileSync('samples/tern-650.setup.yaml', 'utf8')
    for (let end = 0; end <= text.length; end += 11) findCursor(text, end)
  })

  it('is no trouble whatever it is made of', () => {
    const pieces = fc.constantFrom(...everything, ...everything.map((line) => line.trim()), '{', '}', '[', ']', ',', ': ', '"', "'", '|', '>', '&a', '*a', '- ', '  ', '\t', '\r\n', '\n', '\u2028', '💥', '\ue000', '#', ' #')
    fc.assert(fc.property(fc.array(pieces, { maxLength: 12 }), fc.nat(), (parts, at) => {
      const text = parts.join('\n').replace(/\n(?=[,\]}:"'])/g, '')
      askAt(text, at % (text.length + 1))
    }), { numRuns: 150 })
  })
})
