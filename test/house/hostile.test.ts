import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { isMap, isScalar, isSeq, parseDocument, type Node } from 'yaml'
import { run } from '../../src/cli/run'
import type { World } from '../../src/cli/outcome'
import { cardFor } from '../../src/core/card/cardFor'
import { cardMarkdown } from '../../src/core/card/cardMarkdown'
import { turnList } from '../../src/core/compare/turnList'
import { turnListHtml } from '../../src/core/compare/turnListHtml'
import { exportNotebook } from '../../src/core/export/exportNotebook'
import { toCsv } from '../../src/core/export/toCsv'
import { buildGrid } from '../../src/core/grid/buildGrid'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { makeSheet } from '../../src/core/sheet/makeSheet'
import { sheetHtml } from '../../src/core/sheet/sheetHtml'
import { complete, hoverAt } from '../../src/language'
import { asText } from '../../src/editor/asText'
import { readCsv } from '../fuzz/readCsv'
import { codeBlocks } from './docs/codeBlocks'
import { MarkdownIt } from '../markdownIt'

/** What a page, a spreadsheet, a terminal, a renderer of Markdown, a forge or the editor itself might act on. */
const hostile = [
  '<img src=x onerror=alert(1)>', '</style><script>alert(1)</script>', '"><svg onload=alert(1)>', '&lt;b&gt;', '=HYPERLINK("x")', '+1+1', '-2+3', '@SUM(A1)', '\t=1', '\r=1',
  '[click](command:workbench.action.quit)', '![x](https://evil.invalid/x.png)', '<https://evil.invalid>', 'https://evil.invalid/x', 'www.evil.invalid', 'a@evil.invalid', '$(trash)', '`code` **bold**', '| a | b |', '# head', '- item',
  'two\n::error file=x::gone', 'x\r\n::set-output name=a::b', '\u001b[31mred\u001b[2J\u001b]0;title\u0007', '\u009b31m', '\u202ereversed\u202c\u2066', '{0} {{1}}', '%0A::error::x', '\u2028=x', '{left: 1}', '__proto__',
]

/** The format's own example, with every word in it that is free made hostile. `free` words are names, notes and reasons; without it, all. */
function spoil(onlyFree: boolean, first = 0): string {
  const example = codeBlocks(readFileSync('schemas/FORMAT.md', 'utf8')).filter(({ text }) => text.includes('entries:')).reduce((longest, { text }) => (text.length > longest.length ? text : longest), '')
  const document = parseDocument(example)
  let next = first
  const free = new Set(['name', 'notes', 'reason', 'label', 'place', 'tool', 'session', 'service_manual', 'feel', 'felt', 'weather', 'log', 'id'])
  const walk = (node: unknown, key: string): void => {
    if (isMap(node)) for (const pair of node.items) walk(pair.value, String((pair.key as Node & { value?: unknown }).value ?? ''))
    else if (isSeq(node)) for (const item of node.items) walk(item, key)
    else if (isScalar(node) && typeof node.value === 'string' && (!onlyFree || free.has(key))) {
      node.value = hostile[next++ % hostile.length]!
      node.type = 'QUOTE_DOUBLE'
    }
  }
  walk(document.contents, '')
  assert.ok(next > first + 15, `${next} words`)
  return String(document)
}

// Each kind of word has its turn in every third place or so; where positions and dates are words, little else is worked out.
const texts = [...[0, 7, 13, 22].map((first) => spoil(true, first)), spoil(false)]
const acting = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]|\r(?!\n)/
const world = (text: string): World => ({ find: (paths: readonly string[]) => [...paths], read: () => text, today: () => '2026-05-01' }) as Partial<World> as World
const printed = (text: string, ...args: string[]) => {
  const { out, err } = run(args, world(text))
  return out + (err ?? '')
}

/** A page by its tags: their names, and each with what stands in it. */
function tagsOf(html: string): string[] {
  return [...html.matchAll(/<(\/?[a-z!][^\s>]*)([^>]*)>/gi)].map(([, name, rest]) => (/\son\w+\s*=|javascript:|\shref\s*=|\ssrc\s*=/i.test(rest!) ? `ACTS ${name} ${rest}` : name!.toLowerCase()))
}

const own = new Set(['!doctype', 'html', 'head', 'meta', 'title', 'style', 'body', 'h1', 'h2', 'h3', 'p', 'br', 'b', 'ul', 'ol', 'li', 'section', 'span', 'svg', 'path', 'circle', 'line', 'g', 'text', 'div', 'table', 'thead', 'tbody', 'tr', 'th', 'td', 'header', 'main', 'footer', 'dl', 'dt', 'dd', 'rect', 'polygon', 'em', 'strong', 'small', 'article', 'aside', 'caption', 'colgroup', 'col', 'hr'])
const expectOwnTags = (html: string) => assert.deepEqual(tagsOf(html).filter((name) => !own.has(name.replace('/', ''))), [])

/** Markdown as the editor and a forge read it: with tables, with HTML and with addresses made links. */
const markdown = new MarkdownIt({ html: true, linkify: true })
function kindsIn(source: string): Set<string> {
  return new Set(markdown.parse(source, {}).flatMap((token) => [token.type, ...(token.children ?? []).map(({ type }) => type)]))
}
const expectNoActs = (source: string) => {
  const kinds = kindsIn(source)
  for (const kind of ['link_open', 'image', 'html_inline', 'html_block', 'code_inline', 'fence', 'code_block', 'heading_open']) assert.ok(!kinds.has(kind), `${kind} in ${source.slice(0, 400)}`)
}

describe('what a stranger wrote', function () {
  this.timeout(20_000)

  it('stands in the grid and its findings as it is written', () => {
    for (const text of texts) {
      const notebook = readNotebook(text)
      assert.equal(notebook.broken, undefined)
      const { cells } = buildGrid(notebook, checkNotebook(notebook))
      const shown = cells.flat().map((cell) => cell.text)
      assert.ok(shown.some((cell) => hostile.some((each) => cell.includes(each.trim()))), 'some of it is shown')
    }
  })

  it('is text in every hover, card and completion', () => {
    let hovers = 0
    for (const text of texts) {
      const notebook = readNotebook(text)
      for (let at = 0; at < text.length; at += 3) {
        const hover = hoverAt(notebook, at)
        // What the format says of its own keys is ours, and may show code.
        if (hover && !hover.fromSchema && !hover.markdown.includes('\n\n')) expectNoActs(hover.markdown)
        if (hover?.card) {
          hovers++
          expectNoActs(cardMarkdown(hover.card))
        }
      }
      for (const { key } of buildGrid(notebook, []).rows) for (const entry of notebook.entries) {
        const card = cardFor(notebook, key, entry.key)
        if (card) expectNoActs(cardMarkdown(card))
      }
      for (let at = 0; at < text.length; at += 97) for (const { about } of complete(notebook, at)?.items ?? []) if (about) assert.ok(!kindsIn(about).has('html_inline') && !kindsIn(about).has('image'))
    }
    assert.ok(hovers > 50, `${hovers}`)
  })

  it('adds no tag to a sheet or a turn list, and neither loads or runs anything', () => {
    for (const text of texts) {
      const notebook = readNotebook(text)
      for (const entry of notebook.entries) {
        const sheet = sheetHtml(makeSheet(notebook, entry))
        const turns = turnListHtml(turnList({ notebook, file: '<b>.yaml', entry: notebook.entries[0]! }, { notebook, file: '"><i>', entry }))
        for (const page of [sheet, turns]) {
          expectOwnTags(page)
          assert.match(page, /default-src 'none'; style-src 'unsafe-inline'/)
        }
      }
    }
  })

  it('is no formula in a table for spreadsheets', () => {
    let kept = 0
    for (const text of texts) {
      const rows = readCsv(toCsv(exportNotebook(readNotebook(text))))
      const words = rows.flat().filter((cell) => !/^-?[\d.]+(?:e[+-]\d+)?$/.test(cell))
      assert.deepEqual(words.filter((cell) => /^[=+\-@\t\r\n\u2028]/.test(cell.replace(/^"/, ''))), [])
      kept += words.filter((cell) => cell.startsWith("'")).length
    }
    assert.ok(kept > 0, 'some would have been')
  })

  it('moves no cursor and colours nothing on a terminal, and makes no line of its own', () => {
    for (const text of texts) {
      const found = checkNotebook(readNotebook(text)).length
      for (const args of [['check', 'a'], ['check', 'a', '--format', 'github'], ['show', 'a', '--all'], ['compare', 'a', 'a'], ['turns', 'a', 'a'], ['advise', 'a'], ['check', 'a\u001b[31m\n.yaml']]) {
        const out = printed(text, ...args)
        assert.doesNotMatch(out, acting, args.join(' '))
      }
      const lines = printed(text, 'check', 'a').trimEnd().split('\n')
      assert.equal(lines.length, found + 1)
      const commands = printed(text, 'check', 'a', '--format', 'github').split(/[\r\n]/).filter((line) => line.startsWith('::'))
      assert.equal(commands.length, found)
      for (const command of commands) assert.match(command, /^::(?:error|warning|notice) file=a,[^:]*::/)
    }
    assert.doesNotMatch(run(['check', '--\u001b[31m'], world('')).err ?? '', acting)
    assert.doesNotMatch(run(['\u001b[31m'], world('')).err ?? '', acting)
  })

  it('is data in SARIF and JSON', () => {
    for (const text of texts) {
      const sarif = JSON.parse(printed(text, 'check', 'a', '--format', 'sarif')) as { runs: { results: { message: { text: string; markdown?: string } }[] }[] }
      for (const { message } of sarif.runs[0]!.results) {
        assert.equal(message.markdown, undefined)
        assert.doesNotMatch(message.text.replaceAll('{{', '').replaceAll('}}', ''), /[{}]/, 'no placeholder')
      }
      JSON.parse(printed(text, 'export', 'a'))
    }
  })

  it('is text in the summary that goes under a pull request', () => {
    for (const text of texts.slice(0, -1)) {
      const earlier = text.replace(/\d+ out/g, '1 out')
      const versions: World = { ...world(text), read: (path) => (path === 'a' ? text : earlier) }
      const out = run(['compare', 'b', 'a', '--format', 'markdown'], versions).out
      assert.ok(out.length > 100, out)
      const kinds = kindsIn(out)
      for (const kind of ['link_open', 'image', 'html_inline', 'html_block', 'fence', 'code_block']) assert.ok(!kinds.has(kind), `${kind} in ${out}`)
      assert.doesNotMatch(out, acting)
    }
  })

  it('is neither an icon nor a link in the editor’s notifications and lists', () => {
    for (const each of hostile) assert.doesNotMatch(asText(each), /\$\(|\]\(/)
    assert.equal(asText('3 out (soft)'), '3 out (soft)')
  })
})
