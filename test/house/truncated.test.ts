import assert from 'node:assert/strict'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { keptPromises } from '../core/grid/keptPromises'
import { readNotebook } from '../../src/core/notebook/readNotebook'

const more = Number(process.env['DETENT_RUNS'] ?? 1)
const folder = 'samples'
const samples = readdirSync(folder).filter((name) => name.endsWith('.setup.yaml')).map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }))
const smallest = samples.reduce((least, each) => (each.text.length < least.text.length ? each : least))

/** Reads the beginning of a text: whatever is missing, what is found points into what is there. */
function readBeginning(text: string, length: number): void {
  const begun = text.slice(0, length)
  for (const { range } of readNotebook(begun).findings) assert.ok(range.start >= 0 && range.start <= range.end && range.end <= length, `${length}`)
}

describe('a sample that breaks off', () => {
  it(`is read wherever it does: ${smallest.name}, at every character`, function () {
    this.timeout(120_000)
    for (let length = 0; length <= smallest.text.length; length++) readBeginning(smallest.text, length)
  })

  for (const { name, text } of samples) {
    // At every hundredth character or so: each at every character would take minutes.
    it(`is read wherever it does: ${name}`, function () {
      this.timeout(120_000 * more)
      for (let length = 0; length <= text.length; length += Math.max(1, Math.round(101 / more))) readBeginning(text, length)
    })
  }

  it('is written to or refused, and keeps what it says', function () {
    this.timeout(120_000 * more)
    let done = 0
    for (let length = 0; length <= smallest.text.length; length += Math.max(1, Math.round(61 / more))) {
      done += keptPromises(smallest.text.slice(0, length), { kind: 'addEntry', date: '2026-07-01', id: 'next', reason: 'one\ntwo' }).refused === undefined ? 1 : 0
    }
    assert.ok(done > 5, `${done} done`)
  })
})
