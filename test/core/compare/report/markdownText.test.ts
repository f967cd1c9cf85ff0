import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { Block } from '../../../../src/core/compare/report/report'
import { markdownText } from '../../../../src/core/compare/report/markdownText'
import { reportMarkdown } from '../../../../src/core/compare/report/reportMarkdown'
import { oneLine } from '../../../../src/core/compare/oneLine'
import { MarkdownIt } from '../../../markdownIt'

/** HTML is let through, as a forge lets through some. */
const reader = new MarkdownIt({ html: true, linkify: false })
const parse = (text: string) => reader.parse(text, {})

/** The text of the inline parts, one a cell, line or item, and every kind of token that there is. */
function seen(markdown: string): { texts: string[]; types: Set<string> } {
  const tokens = parse(markdown)
  const inline = tokens.filter(({ type }) => type === 'inline')
  return {
    texts: inline.map(({ children }) => children!.map(({ content }) => content).join('').replaceAll('\u200b', '')),
    types: new Set([...tokens, ...inline.flatMap(({ children }) => children!)].map(({ type }) => type.replace(/_(open|close)$/, ''))),
  }
}

const nasty = [
  '|', '||', '`', '``', '\n', '\r\n', '\\', '\\|', '\\\\|', '<b>', '</td>', '<script>alert(1)</script>', '<!-- ', '-->', '<img src=x onerror=alert(1)>', '&lt;', '&#124;', '&amp;', '@team', '@a/b', '#12', '!34', '*', '**', '_', '__', '~~',
  '[x](javascript:alert(1))', '![x](y)', '[^1]', '[ ]', '# ', '- ', '--- ', '1. ', '2) ', '> ', '    ', '\t', '```', '~~~', '| --- |', '\u2028', '\u202e', '\0', '\x1b[2J', '$x$', '$$', ':smile:', 'GH-1', '=', '===', '{{', '%1', '\ud800', 'ü', '日本', ' ', 'x', '3 out',
]
const anyText = fc.oneof(
  fc.array(fc.constantFrom(...nasty), { minLength: 1, maxLength: 6 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary', maxLength: 30 }),
)
const shown = (text: string) => oneLine(text).replaceAll('\u200b', '').trim()
const trials = { numRuns: 400 * Number(process.env['DETENT_RUNS'] ?? 1), seed: Number(process.env['DETENT_SEED'] ?? 20260418) }

describe('Markdown of what people wrote', () => {
  it('reads in a table as it was written, in its own cell, and is no markup', () => {
    fc.assert(fc.property(anyText, anyText, (one, other) => {
      const block: Block = { kind: 'table', head: ['A', 'B'], rows: [[one, 'x'], ['y', other]] }
      const { texts, types } = seen(reportMarkdown([block]))
      assert.deepEqual(texts.map((text) => text.trim()), ['A', 'B', shown(one), 'x', 'y', shown(other)])
      for (const type of types) assert.ok(['inline', 'table', 'tbody', 'td', 'text', 'text_special', 'th', 'thead', 'tr'].includes(type), type)
    }), trials)
  })

  it('stays one line, one item, one heading', () => {
    fc.assert(fc.property(anyText.filter((text) => shown(text) !== ''), (text) => {
      const { texts, types } = seen(reportMarkdown([{ kind: 'heading', level: 2, text }, { kind: 'line', label: 'Why', text }, { kind: 'line', text }, { kind: 'list', label: 'L', items: [text, text] }]))
      assert.deepEqual(texts.map((each) => each.trim()), [shown(text), `Why: ${shown(text)}`, shown(text), 'L:', shown(text), shown(text)])
      for (const type of types) assert.ok(['heading', 'inline', 'text', 'text_special', 'paragraph', 'strong', 'bullet_list', 'list_item'].includes(type), type)
    }), trials)
  })

  it('mentions nobody and refers to no issue, merge request or commit', () => {
    assert.equal(markdownText('fixes #12, ask @oda/pit and !34'), 'fixes \\#&#8203;12, ask @&#8203;oda/pit and !&#8203;34')
    assert.equal(markdownText('GH-7 :tada:'), 'GH-&#8203;7 :&#8203;tada:')
    fc.assert(fc.property(anyText, (text) => {
      const plain = parse(markdownText(text)).flatMap(({ children }) => children ?? []).map(({ content }) => content).join('')
      assert.doesNotMatch(plain, /[@#!%~$][\p{L}\p{N}]|GH-\d/iu)
    }), trials)
  })

  it('leaves plain words plain', () => {
    assert.equal(markdownText('2 clicks out: less rebound damping (9 % of range)'), '2 clicks out: less rebound damping (9 % of range)')
    assert.equal(markdownText('−2.8 mm, more than twice its uncertainty'), '−2.8 mm, more than twice its uncertainty')
    assert.equal(markdownText('8.5 mm'), '8.5 mm')
    assert.equal(markdownText('one\r\n\r\n  two'), 'one / two')
  })
})

describe('one line', () => {
  it('has nothing in it that moves a cursor or turns the reading round', () => {
    assert.equal(oneLine(' a\u001b[2Jb\u202ec\u0000 \n\t d\u2028e '), 'a[2Jbc / d / e')
    fc.assert(fc.property(anyText, (text) => assert.doesNotMatch(oneLine(text), /[\p{Cc}\u202a-\u202e\u2066-\u2069]/u)), trials)
  })
})
