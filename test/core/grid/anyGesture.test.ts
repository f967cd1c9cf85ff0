import assert from 'node:assert/strict'
import fc from 'fast-check'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { Choices } from './choices'
import { keptPromises } from './keptPromises'
import { randomGesture } from './randomGesture'
import { writeRandomNotebook } from './writeRandomNotebook'

/** `DETENT_RUNS=20` runs twenty times as many, `DETENT_SEED=1` others, and `DETENT_SHRINK=1` looks for the smallest text that fails. */
const more = Number(process.env['DETENT_RUNS'] ?? 1)
const runs = 70 * more
const tape = fc.array(fc.nat(9999), { maxLength: 900, size: 'max' })

describe('any gesture on any notebook', () => {
  it('changes what it is about and not one byte besides', function () {
    this.timeout(60_000 * more)
    const told = { broken: 0, refused: 0, done: 0 }
    fc.assert(fc.property(tape, (numbers) => {
      const choices = new Choices(numbers)
      let text = writeRandomNotebook(choices)
      if (readNotebook(text).broken) {
        told.broken++
        return
      }
      for (let at = 0; at < 5; at++) {
        const outcome = keptPromises(text, randomGesture(readNotebook(text), choices))
        if (outcome.refused !== undefined) told.refused++
        else {
          told.done++
          text = outcome.text
        }
      }
    }), { numRuns: runs, seed: Number(process.env['DETENT_SEED'] ?? 20260418), endOnFailure: process.env['DETENT_SHRINK'] === undefined })
    assert.ok(told.broken < runs * 0.05, `${told.broken} of ${runs} are no YAML`)
    assert.ok(told.done > told.refused, `${told.done} done, ${told.refused} refused`)
  })
})
