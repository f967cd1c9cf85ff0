import assert from 'node:assert/strict'
import { findingsOf, fixedBy, source } from './check'

const notebook = source`
  format: 1
  adjusters:
    fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20, clicks_per_turn: 8}
    fork_preload: {on: fork, controls: preload, counts: turns, range: 12, mm_per_turn: 1.5}
    cap_rings: {on: fork, controls: preload, counts: rings, range: 8, mm_per_ring: 3, mm_per_turn: 1}
  entries:
    - id: run-1
      settings:
        WHAT
`
/** The value after the fix of the first finding of this code. */
function fixed(code: string, name: string, value: string, at = 0): string {
  const text = fixedBy(code, notebook.replace('WHAT', `${name}: ${value}`), at)
  return new RegExp(`^ +${name}: (.*)$`, 'm').exec(text.slice(text.indexOf('settings')))![1]!
}

describe('the converted value offered as a fix', () => {
  it('counts from the adjuster’s own end', () => {
    assert.equal(fixed('wrong-end', 'fork_rebound', '14 in'), '6 clicks out')
    assert.equal(fixed('wrong-end', 'fork_preload', '2 1/2 turns out'), '9 1/2 turns in')
  })

  it('counts in the adjuster’s own unit', () => {
    assert.equal(fixed('wrong-unit', 'fork_rebound', '1 1/4 turns out'), '10 clicks out')
    assert.equal(fixed('wrong-unit', 'fork_preload', '6 mm'), '4 turns in')
  })

  it('turns round where rings show less the further it goes in', () => {
    assert.equal(fixed('wrong-unit', 'cap_rings', '12 turns in'), '4 rings out')
  })

  it('replaces a quoted value with its quotes, and one leg alone', () => {
    assert.equal(fixed('wrong-end', 'fork_rebound', '{left: "14 in", right: 6}'), '{left: 6 clicks out, right: 6}')
  })

  it('is not offered where a fact is missing', () => {
    const text = notebook.replace('WHAT', 'fork_rebound: 3 in').replace(', range: 20', '')
    const [finding] = findingsOf(text)
    assert.equal(finding?.fixes, undefined)
    assert.match(finding!.message, /with its `range` this could be converted/)
  })

  it('is the whole click on either side of half a one', () => {
    assert.deepEqual([fixed('fraction-of-step', 'fork_rebound', '7½ out'), fixed('fraction-of-step', 'fork_rebound', '7½ out', 1)], ['7 out', '8 out'])
  })
})

describe('the fix for legs that differ', () => {
  it('writes the other leg’s value, even where that was quoted, or stands in an earlier entry', () => {
    assert.equal(fixed('legs-differ', 'fork_rebound', '{left: 3, right: "6 out"}'), '{left: 6 out, right: "6 out"}')
    const text = source`
      format: 1
      adjusters: {r: {on: fork, legs: [left, right], controls: rebound, counts: clicks}}
      entries:
        - id: a
          settings: {r: '4 out'}
        - id: b
          reason: one leg
          settings: {r: {right: 6}}
    `
    assert.match(fixedBy('legs-differ', text, 0), /settings: \{r: \{right: 6, left: 6\}\}/)
    assert.match(fixedBy('legs-differ', text, 1), /settings: \{r: \{right: 4 out\}\}/)
  })
})

describe('the fix for a misspelt name', () => {
  it('does not write a name that stands beside it already', () => {
    const texts = ['adjusters: {r: {on: fork, controls: rebound, counts: clicks}}\nentries: [{id: 1, settings: {r: 3, rr: 4}}]', 'machine: {name: a, nmae: b}', 'rules: {no-reason: off, no-raeson: off}']
    for (const text of texts) {
      const [finding, ...more] = findingsOf(`format: 1\n${text}\n`)
      assert.equal(finding?.fixes, undefined, text)
      assert.deepEqual(more, [])
    }
  })

  it('puts quotes where YAML needs them', () => {
    const text = 'format: 1\nadjusters: {"knob, left": {on: shock, controls: preload, counts: clicks}}\nentries: [{id: 1, settings: {"knob, left side": 3}}]\n'
    assert.match(fixedBy('unknown-adjuster', text.replace('left side', 'leftt')), /settings: \{"knob, left": 3\}/)
  })
})

describe('the fix for a sentence cut by a comma', () => {
  it('quotes it from its beginning to its last piece', () => {
    const text = 'format: 1\nentries: [{id: 1, ride: {felt: better, but lazy, as before, laps: 6}}]\n'
    assert.equal(fixedBy('unknown-key', text), 'format: 1\nentries: [{id: 1, ride: {felt: "better, but lazy, as before", laps: 6}}]\n')
    assert.equal(findingsOf(fixedBy('unknown-key', text)).length, 0)
  })

  it('is not offered where it would swallow a comment', () => {
    assert.equal(findingsOf('format: 1\nentries: [{id: 1, ride: {felt: better, # much\n  but lazy}}]\n')[0]?.fixes, undefined)
  })

  it('is not offered where no sentence begins', () => {
    assert.equal(findingsOf('format: 1\nmachine: {front: {travel: 120}, strange}\n')[0]?.fixes, undefined)
  })
})
