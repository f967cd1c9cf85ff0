import assert from 'node:assert/strict'
import { buildGrid } from '../../src/core/grid/buildGrid'
import { applyGesture } from '../../src/core/grid/applyGesture'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { applyChanges } from '../../src/core/text'
import { complete, documentSymbols, foldingRanges, hoverAt } from '../../src/language'
import { oneLine } from '../../src/core/compare/oneLine'
import { markdownText } from '../../src/core/compare/report/markdownText'
import { escapeMarkdown } from '../../src/core/card/cardMarkdown'
import { readQuery } from '../../src/core/search/readQuery'
import { numberFrom } from '../../src/core/logs/reading/fieldText'
import { findColumn } from '../../src/core/logs/mapping/resolveMapping'
import { aNotebook } from '../language/aNotebook'
import type { Finding } from '../../src/core/finding'
import type { Notebook } from '../../src/core/notebook/notebook'
import { busyMs } from '../busyMs'

const slow = Number(process.env['DETENT_SLOW'] ?? 4)
/** About a second on a machine that has nothing else to do. A loaded one takes several, and what is gone over for each of itself takes minutes. */
const longestMs = 2500 * slow

/** Reads, checks, shows and looks into a text, and says how it was taken. */
function taken(text: string): { first: string; at: number; broken: boolean; ms: number } {
  let [notebook, findings]: [Notebook, readonly Finding[]] = [readNotebook(''), []]
  const ms = busyMs(() => {
    notebook = readNotebook(text)
    findings = checkNotebook(notebook)
    buildGrid(notebook, findings)
    foldingRanges({ text })
    documentSymbols(notebook)
    hoverAt(notebook, text.length >> 1)
    complete(notebook, text.length, findings)
  })
  const error = findings.find(({ severity }) => severity === 'error')
  for (const { range } of findings) assert.ok(range.start >= 0 && range.start <= range.end && range.end <= text.length)
  return { first: error?.message ?? '', at: error?.range.start ?? -1, broken: notebook.broken !== undefined, ms }
}

const doubled = (depth: number) => ['a0: &a0 [x, x, x, x, x, x, x, x, x, x]', ...Array.from({ length: depth }, (_, at) => `a${at + 1}: &a${at + 1} [${Array.from({ length: 10 }, () => `*a${at}`).join(', ')}]`), ''].join('\n')
const head = 'format: 1\n'
const keys = (count: number) => Array.from({ length: count }, (_, at) => `k${at}: 1`)

/** A text, what is said of it first (nothing where it is taken as it is), and where. */
const refused: [name: string, text: string, says: RegExp, at?: number | string][] = [
  ['aliases of aliases', head + doubled(9), /too many values are shared|too long|too deeply/],
  ['an alias that holds itself', `${head}notes: &a [*a]\n`, /would hold itself/, '*a'],
  ['an alias without an anchor', `${head}notes: *b\n`, /no anchor|[Uu]nresolved alias/, '*b'],
  ['brackets in brackets', `${head}notes: ${'['.repeat(20_000)}${']'.repeat(20_000)}\n`, /too deeply/],
  ['braces that never close', `${head}notes: ${'{a: '.repeat(5000)}`, /too deeply|not closed|missing/],
  ['a block in a block', `${head}notes:\n${Array.from({ length: 900 }, (_, at) => `${' '.repeat(at + 1)}a:\n`).join('')}`, /too deeply/],
  ['a million keys', `${head}notes: {${keys(1_000_000).join(', ')}}\n`, /too long/],
  ['a million lines', `${head}notes: |\n${'  x\n'.repeat(1_000_000)}`, /too long/],
  ['more than four million characters', `${head}notes: ${'x'.repeat(4_100_000)}\n`, /too long/],
  ['a key twice', `${head}notes: a\nnotes: b\n`, /stands here twice/, 'notes: b'],
  ['a tab for an indent', `${head}machine:\n\tname: x\n`, /tab/],
  ['a second document', `${head}---\nformat: 1\n`, /one YAML document/, '---'],
  ['a NUL', `${head}notes: "a\u0000b"\n`, /./, '\u0000'],
  ['half a surrogate pair', `${head}notes: a\ud800b\n`, /./, '\ud800'],
  ['a group for a name', `${head}machine: {name: {constructor: 1}}\n`, /`name` must be/],
  ['a number for the format', 'format: 1e999\n', /./],
]

const accepted: [name: string, text: string][] = [
  ['forty thousand keys nobody knows', `${head}notes: x\n${keys(40_000).join('\n')}\n`],
  ['ten thousand settings of adjusters nobody defined', `${head}adjusters:\n  fork_rebound: {on: fork, controls: rebound, counts: clicks}\nentries:\n  - id: a\n    date: 2026-04-18\n    settings:\n${Array.from({ length: 10_000 }, (_, at) => `      fork_rebund${at}: 3\n`).join('')}`],
  ['ten thousand adjusters', `${head}adjusters:\n${Array.from({ length: 10_000 }, (_, at) => `  a${at}: {on: fork, controls: rebound, counts: clicks}\n`).join('')}`],
  ['ten thousand adjusters in one place', `${head}adjusters:\n${Array.from({ length: 10_000 }, (_, at) => `  a${at}: {on: fork, controls: rebound, counts: clicks, place: fork cap}\n`).join('')}`],
  ['five thousand entries of one name', `${head}entries:\n${'  - {id: a, date: 2026-04-18}\n'.repeat(5000)}`],
  ['three megabytes on one line', `${head}notes: ${'word '.repeat(600_000)}\n`],
  ['three megabytes of a quoted text', `${head}notes: "${'\\n'.repeat(1_500_000)}"\n`],
  ['a comment of three megabytes', `${head}# ${'#'.repeat(3_000_000)}\nnotes: x\n`],
  ['names that objects have of their own', `${head}adjusters:\n  __proto__: {on: fork, controls: rebound, counts: clicks}\n  constructor: {on: shock, controls: rebound, counts: clicks}\nentries:\n  - id: toString\n    settings: {__proto__: 3, constructor: 4}\n  - id: hasOwnProperty\n    from: toString\n`],
  ['a byte order mark and both line ends', '\ufeffformat: 1\r\nnotes: x\nentries:\r\n  - id: a\n'],
  ['tags', `${head}notes: !!str 12\nmachine: !<tag:x> {name: !y z}\n`],
  ['lines that begin with a sign of their own', `${head}notes: "\u2028\u2029\u0085"\n`],
  ['many colons behind separators of lines', `${head}# ${'\u2028entries:#'.repeat(40_000)}\n`],
  ['spaces without end', `${head}notes: x${' '.repeat(1_000_000)}\n`],
]

describe('a text at its limits', function () {
  this.timeout(60_000)

  for (const [name, text, says, at] of refused) {
    it(`is refused, with a reason at its place: ${name}`, () => {
      const { first, at: where, ms } = taken(text)
      assert.match(first, says)
      if (typeof at === 'string') assert.ok(Math.abs(where - text.lastIndexOf(at)) <= 2, `at ${where}, not ${text.lastIndexOf(at)}`)
      assert.ok(ms < longestMs, `${Math.round(ms)} ms`)
    })
  }

  for (const [name, text] of accepted) {
    it(`is taken as it is: ${name}`, () => {
      const { broken, first, ms } = taken(text)
      assert.equal(broken, false, first)
      assert.ok(ms < longestMs, `${Math.round(ms)} ms`)
    })
  }

  it('leaves every object as it was', () => {
    for (const [, text] of [...refused, ...accepted].filter(([, each]) => each.length < 2000)) taken(text)
    assert.equal(({} as Record<string, unknown>)['on'], undefined)
    assert.deepEqual(Object.keys(Object.prototype), [])
  })

  it('keeps both line ends and the mark where it writes', () => {
    const text = '\ufeffformat: 1\r\nadjusters:\n  a: {on: shock, controls: rebound, counts: clicks}\r\nentries:\r\n  - id: x\n    settings: {a: 3}\r\n'
    const { changes } = applyGesture(readNotebook(text), [], { kind: 'setCell', column: 'x', row: 'settings/a', text: '4' })
    assert.equal(applyChanges(text, changes!), text.replace('a: 3', 'a: 4'))
  })

  it('takes numbers of any length for what they are', () => {
    for (const number of ['9'.repeat(5000), `1${'0'.repeat(400)}`, `0.${'0'.repeat(5000)}1`, '1e99999', '-1e-99999', `1/${'3'.repeat(500)}`]) {
      const text = aNotebook.replace('shock_rebound: 7\n', `shock_rebound: ${number}\n`).replace('entries:', `rider: {kitted_mass: ${number}}\nentries:`)
      const { ms, broken } = taken(text)
      assert.equal(broken, false)
      assert.ok(ms < longestMs, `${Math.round(ms)} ms`)
      const shown = buildGrid(readNotebook(text), checkNotebook(readNotebook(text))).cells.flat().map((cell) => `${cell.text} ${cell.about ?? ''}`).join('\n')
      assert.doesNotMatch(shown, /\bNaN\b|Infinity/)
    }
  })
})

/** What made a pattern go over a text again and again. */
const looping: [name: string, act: (text: string) => unknown, text: string][] = [
  ['oneLine', oneLine, `${'\t'.repeat(100_000)}x`], ['escapeMarkdown', escapeMarkdown, `${'\t'.repeat(100_000)}x`], ['markdownText', markdownText, `${'::'.repeat(50_000)}+`],
  ['readQuery, blanks', readQuery, `a${' '.repeat(100_000)}b`], ['readQuery, signs', readQuery, `x=${' '.repeat(100_000)}>`], ['numberFrom', (text) => numberFrom(text, '.'), `${'0'.repeat(100_000)}x`],
  ['findColumn', (text) => findColumn([text], 'x'), `${' '.repeat(100_000)})`], ['foldingRanges', (text) => foldingRanges({ text }), `-${':\t>#'.repeat(40_000)}\u2028+`],
]

describe('a pattern', () => {
  for (const [name, act, text] of looping) {
    it(`goes over a text once: ${name}`, () => {
      const ms = busyMs(() => act(text))
      assert.ok(ms < 200 * slow, `${Math.round(ms)} ms for ${text.length} characters`)
    })
  }
})
