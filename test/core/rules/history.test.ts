import assert from 'node:assert/strict'
import { codesOf, source } from './check'

/** What a paddock does to a notebook in the course of a weekend. */
const adjusters = source`
  format: 1
  adjusters:
    fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
    shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
  entries:
    - {id: baseline, as_found: true, settings: {fork_rebound: 4, shock_rebound: 7}}
`
const after = (...entries: string[]) => codesOf(adjusters + entries.map((entry) => `  - {${entry}}\n`).join(''))

describe('the rules about changes', () => {
  it('compare a branch with the entry it comes from, not with the one above', () => {
    assert.deepEqual(after('id: a, reason: r, settings: {fork_rebound: 5}', 'id: b, from: baseline, reason: r, settings: {shock_rebound: 8}'), [])
    assert.deepEqual(after('id: a, reason: r, settings: {fork_rebound: 5}', 'id: b, from: baseline, settings: {fork_rebound: 5}'), ['no-reason'])
  })

  it('see no change in going back, nor in writing down what stands already', () => {
    assert.deepEqual(after('id: a, reason: r, settings: {fork_rebound: 5}', 'id: b, from: baseline'), [])
    assert.deepEqual(after('id: a, settings: {fork_rebound: 4 clicks out, shock_rebound: 7}'), [])
  })

  it('see no change in the first position of an adjuster nobody had written down', () => {
    assert.deepEqual(codesOf(source`
      format: 1
      adjusters: {r: {on: shock, controls: rebound, counts: clicks}, c: {on: shock, controls: compression, counts: clicks}}
      entries:
        - id: a
        - id: b
          settings: {r: 3, c: 4}
    `), [])
  })

  it('compare what is found with what was found before, too', () => {
    assert.deepEqual(after('id: later, as_found: true, settings: {fork_rebound: 5}'), ['adjuster-crept'])
    assert.deepEqual(after('id: later, as_found: true, settings: {fork_rebound: 4}'), [])
  })

  it('ask for no reason, and count no changes, where things were found and not set', () => {
    assert.deepEqual(after('id: later, as_found: true, settings: {fork_rebound: 5, shock_rebound: 8}'), ['adjuster-crept', 'adjuster-crept'])
  })

  it('see no change from a position that cannot be converted', () => {
    assert.deepEqual(after('id: a, as_found: true, settings: {fork_rebound: 2 turns}', 'id: b, settings: {fork_rebound: 4}'), ['wrong-unit'])
  })

  it('see no change in a position that cannot be read, and go on from the last that can', () => {
    assert.deepEqual(after('id: a, settings: {fork_rebound: four}'), ['unreadable-position'])
  })

  it('resolve nothing over an entry that does not exist', () => {
    assert.deepEqual(after('id: a, from: nowhere, settings: {fork_rebound: 9}'), ['unknown-parent'])
  })
})
