import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { buildGrid } from '../../src/core/grid/buildGrid'
import type { Notebook } from '../../src/core/notebook/notebook'
import { parseByEntry, type ParsedByEntry } from '../../src/core/notebook/parseByEntry'
import { parseTree, type Parsed } from '../../src/core/notebook/parseTree'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'

/** How many times as many runs as usual. */
const more = Number(process.env['DETENT_RUNS'] ?? 1)
const root = join(__dirname, '../..')
const texts = ['samples', 'test/fixtures/rules'].flatMap((folder) => readdirSync(join(root, folder))
  .filter((name) => name.endsWith('.setup.yaml')).map((name) => readFileSync(join(root, folder, name), 'utf8')))

/** What a hand slips in, and what YAML makes something of. */
const pieces = [
  '', '\n', ' ', '  ', '- ', '\n  - ', '\n- ', '"', "'", '[', ']', '{', '}', '#', ' # x', ': ', '|', '>-\n', '\t', '---\n', '\n...\n', '&a ', '*a', '!t ', '%',
  '\r', '? ', 'entries:\n', '\n  - id: z\n    date: 2026-01-01\n', '\nrider: {kitted_mass: 3}\n', '\nx', 'é', '\uFEFF', ',', '7', ' out',
]

interface Slip { at: number; remove: number; piece: string }
const slip: fc.Arbitrary<Slip> = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), remove: fc.constantFrom(0, 0, 0, 1, 2, 30), piece: fc.constantFrom(...pieces) })
const history = fc.record({ text: fc.constantFrom(...texts, ...texts.map((text) => text.replaceAll('\n', '\r\n'))), slips: fc.array(slip, { minLength: 1, maxLength: 6 }) })

function versions(text: string, slips: readonly Slip[]): string[] {
  return slips.reduce((all, { at, remove, piece }) => {
    const before = all.at(-1)!
    const start = Math.floor(at * before.length)
    return [...all, before.slice(0, start) + piece + before.slice(start + remove)]
  }, [text])
}

const isBroken = ({ findings }: Parsed) => findings.some(({ severity }) => severity === 'error')

describe('reading entry by entry', () => {
  it('makes the tree of the whole of every sample and fixture, most of them from pieces', () => {
    const parsed = texts.map((text) => ({ whole: parseTree(text), pieced: parseByEntry(text) }))
    for (const { whole, pieced } of parsed) sameTree(pieced, whole)
    assert.ok(parsed.filter(({ pieced }) => pieced.pieces).length > texts.length / 2)
  })

  it('makes the tree of the whole after any slips, from what it made before', function () {
    this.timeout(30_000 * more)
    fc.assert(fc.property(history, ({ text, slips }) => {
      let before: ParsedByEntry | undefined
      for (const version of versions(text, slips)) sameTree((before = parseByEntry(version, before)), parseTree(version))
    }), { numRuns: 40 * more })
  })

  it('finds and shows the same after any slips as when it is read anew', function () {
    this.timeout(30_000 * more)
    fc.assert(fc.property(history, ({ text, slips }) => {
      let before: Notebook | undefined
      for (const version of versions(text, slips)) {
        const next = readNotebook(version, before)
        const anew = readNotebook(version)
        const findings = checkNotebook(next)
        assert.deepEqual(findings, checkNotebook(anew))
        assert.deepEqual(buildGrid(next, findings), buildGrid(anew, findings))
        before = next
      }
    }), { numRuns: 20 * more })
  })
})

/** Where a text is broken the trees may differ in what they hold of it, but never in that it is. */
function sameTree(pieced: ParsedByEntry, whole: Parsed): void {
  assert.equal(isBroken(pieced), isBroken(whole))
  if (!isBroken(whole)) assert.deepEqual({ root: pieced.root, findings: pieced.findings }, { root: whole.root, findings: whole.findings })
}
