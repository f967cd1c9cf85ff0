import assert from 'node:assert/strict'
import { creepOf, creepRecord, creepWords } from '../../../src/core/derived/creep'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const machine = `format: 1
adjusters:
  rebound: {on: shock, controls: rebound, counts: clicks, range: 22, held_by: ball}
  fork: {on: fork, legs: [left, right], controls: rebound, counts: clicks, clicks_per_turn: 4}
  air: {on: fork, controls: air_pressure, counts: bar}
entries:
`

function record(...entries: string[]) {
  const notebook = readNotebook(machine + entries.map((entry, at) => `  - {id: e${at}, ${entry}}\n`).join(''))
  assert.deepEqual(notebook.findings, [])
  return { notebook, of: (slot: string) => creepRecord(notebook).find((creep) => creep.slot === slot) }
}

describe('creep over time', () => {
  it('is a pattern where an adjuster is found elsewhere time and again', () => {
    const creep = record(
      'as_found: true, settings: {rebound: 7}', 'settings: {rebound: 9}', 'as_found: true, settings: {rebound: 11}',
      'settings: {rebound: 9}', 'as_found: true, settings: {rebound: 10}',
    ).of('rebound')!
    assert.equal(creep.pattern, 'keeps-moving')
    assert.ok(creep.oneWay)
    assert.deepEqual(creep.moved.map(({ by, left, found }) => [left, found, by]), [[9, 11, 2], [9, 10, 1]])
    assert.deepEqual(creep.checks.map(({ leftIn, foundIn }) => [leftIn.key, foundIn.key]), [['e1', 'e2'], ['e3', 'e4']])
    assert.match(creepWords(creep), /in 2 of 2 checks: 2 clicks out, 1 click out; always the same way\. Its ball detent/)
  })

  it('is one surprise where it moved once, and none where it holds', () => {
    const { of } = record('settings: {rebound: 9, fork: 3}', 'as_found: true, settings: {rebound: 9, fork: {left: 3, right: 4}}', 'as_found: true, settings: {rebound: 9}')
    assert.equal(of('rebound')!.pattern, 'holds')
    assert.equal(creepWords(of('rebound')!), 'Looked at again 2 times, and found where it was left.')
    assert.equal(of('fork/left')!.pattern, 'holds')
    assert.equal(of('fork/right')!.pattern, 'once')
    assert.equal(creepWords(of('fork/right')!), 'Found elsewhere than it was left in 1 of 1 check: 1 click out.')
  })

  it('that goes both ways is not said to go one way', () => {
    const creep = record('settings: {rebound: 9}', 'as_found: true, settings: {rebound: 10}', 'as_found: true, settings: {rebound: 8}').of('rebound')!
    assert.equal(creep.pattern, 'keeps-moving')
    assert.ok(!creep.oneWay)
    assert.doesNotMatch(creepWords(creep), /same way/)
  })

  it('is measured against the entry it comes from, in the adjuster’s own count', () => {
    const { of } = record('settings: {fork: 8}', 'settings: {fork: 4}', 'from: e0, as_found: true, settings: {fork: 2 turns out}')
    assert.equal(of('fork/left')!.pattern, 'holds')
  })

  it('is unknown for what was never looked at again, cannot be counted or is not turned', () => {
    const { notebook, of } = record('as_found: true, settings: {rebound: 9, air: 8}', 'as_found: true, settings: {air: 7, rebound: 3 mm}')
    assert.equal(of('rebound'), undefined)
    assert.equal(of('air'), undefined)
    assert.equal(creepOf(notebook, notebook.adjusters.get('fork')!, 'left'), undefined)
    assert.deepEqual(creepRecord(readNotebook('')), [])
    assert.deepEqual(creepRecord(readNotebook('entries: 3')), [])
  })
})
