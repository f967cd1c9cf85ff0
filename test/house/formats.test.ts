import assert from 'node:assert/strict'
import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { exportNotebook } from '../../src/core/export/exportNotebook'
import { migrateNotebook } from '../../src/core/migrate/migrateNotebook'
import { currentFormat, readNotebook } from '../../src/core/notebook/readNotebook'
import { applyChanges } from '../../src/core/text'

const folder = 'test/fixtures/formats'
const formats = readdirSync(folder)

/** A kept notebook beside what it said when it was written, as `detent export` prints it. Neither is ever changed. */
const kept = formats.flatMap((format) => readdirSync(join(folder, format)).filter((name) => name.endsWith('.setup.yaml')).map((name) => ({ format: Number(format), path: join(folder, format, name) })))

/** Whether everything that was said then is said now; more may be. */
function stillSays(then: unknown, now: unknown, at: string): void {
  if (typeof then !== 'object' || then === null) return assert.equal(now, then, at)
  assert.ok(typeof now === 'object' && now !== null, at)
  if (Array.isArray(then)) assert.equal((now as unknown[]).length, then.length, `${at}.length`)
  for (const [key, value] of Object.entries(then)) stillSays(value, (now as Record<string, unknown>)[key], `${at}.${key}`)
}

describe('notebooks kept of every format', () => {
  it('are there for each', () => {
    assert.deepEqual(formats.map(Number), Array.from({ length: currentFormat + 1 }, (_, at) => at))
    for (const { path } of kept) assert.ok(existsSync(path.replace(/setup\.yaml$/, 'export.json')), path)
  })

  for (const { format, path } of kept) {
    it(`${path} still says what it said`, () => {
      const text = readFileSync(path, 'utf8')
      const migrated = migrateNotebook(text)
      assert.ok('changes' in migrated && migrated.from === format)
      const now = JSON.parse(JSON.stringify(exportNotebook(readNotebook(applyChanges(text, migrated.changes))))) as unknown
      stillSays(JSON.parse(readFileSync(path.replace(/setup\.yaml$/, 'export.json'), 'utf8')), now, path)
    })
  }
})
