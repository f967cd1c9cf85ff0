import assert from 'node:assert/strict'
import { applyChanges } from '../../../src/core/text'
import { codesOf, findingsOf, fixedBy, source } from './check'

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

/** What a fix rewrites, and all that stands before and behind it on its line. */
const rewritten: readonly { code: string; head: string; before: string; value: string; key?: true }[] = [
  { code: 'wrong-end', head: 'adjusters: {r: {on: shock, controls: rebound, counts: clicks, range: 20}}', before: '    settings:\n      r: ', value: '14 in' },
  { code: 'wrong-unit', head: 'adjusters: {r: {on: shock, controls: rebound, counts: clicks, clicks_per_turn: 8}}', before: '    settings:\n      r: ', value: '2 turns out' },
  { code: 'fraction-of-step', head: 'adjusters: {r: {on: shock, controls: rebound, counts: clicks}}', before: '    settings:\n      r: ', value: '2.5 out' },
  { code: 'unreadable-position', head: 'adjusters: {r: {on: shock, controls: rebound, counts: clicks}}', before: '    settings:\n      r: ', value: '2,5 out' },
  { code: 'unreadable-value', head: 'machine: {use: road}', before: '    ride:\n      front_travel_used: ', value: '104,5' },
  { code: 'unreadable-date', head: 'machine: {use: road}', before: '    date: ', value: '18.4.2026' },
  { code: 'unknown-parent', head: 'machine: {use: road}', before: '    from: ', value: 'fond' },
  { code: 'wrong-shape', head: 'machine: {use: road}', before: '    verdict: ', value: 'kep' },
  { code: 'unknown-adjuster', head: 'adjusters: {rebound: {on: shock, controls: rebound, counts: clicks}}', before: '    settings:\n      ', value: 'rebond', key: true },
  { code: 'unknown-key', head: 'machine: {use: road}', before: '    ', value: 'sesion', key: true },
]
const text = ({ head, before }: (typeof rewritten)[number], written: string, more = '') => `format: 1\n${head}\nentries:\n  - id: found\n  - id: run-1\n    reason: x\n${before}${written}\n${more}`
const offered = (code: string, source: string) => findingsOf(source).filter((finding) => finding.code === code).flatMap(({ fixes = [] }) => fixes)

describe('a fix that rewrites a word', () => {
  for (const each of rewritten) {
    describe(`of ${each.code}`, () => {
      const plain = text(each, each.key ? `${each.value}: 3` : each.value)

      it('is offered where the word stands plainly', () => assert.ok(offered(each.code, plain).length > 0))

      if (each.key) {
        it('is not offered where an anchor stands before the name, or an alias for it elsewhere', () => {
          assert.deepEqual(offered(each.code, text(each, `&k ${each.value}: 3`)), [])
          assert.deepEqual(offered(each.code, text(each, `&k ${each.value}: 3`, 'notes: *k\n')), [])
        })
        return
      }

      it('keeps the comment behind a block’s header, and makes the finding go away', () => {
        for (const header of ['>-', '|-', '>']) {
          const source = text(each, `${header} # counted twice\n          ${each.value}`, '# the last line\n')
          const fixes = offered(each.code, source)
          assert.ok(fixes.length > 0, header)
          for (const { changes } of fixes) {
            const after = applyChanges(source, changes)
            assert.match(after, /# counted twice\n# the last line\n$/)
            assert.doesNotMatch(after, new RegExp(`${each.value}\\n`))
            assert.deepEqual(offered(each.code, after), [])
          }
        }
      })

      it('is not offered where an anchor is shared, nor where the whole group is', () => {
        assert.deepEqual(offered(each.code, text(each, `&v ${each.value}`, 'notes: *v\n')), [])
        const group = text(each, each.value, 'notes: *e\n').replace('- id: run-1', '- &e\n    id: run-1')
        assert.deepEqual(offered(each.code, group), [])
      })

      it('gives a place that only stands for a value its own, and leaves the other', () => {
        const source = text(each, '*v').replace('format: 1\n', `format: 1\nnotes: &v ${each.value}\n`)
        const fixes = offered(each.code, source)
        assert.ok(fixes.length > 0)
        for (const { changes } of fixes) {
          const after = applyChanges(source, changes)
          assert.match(after, new RegExp(`^notes: &v ${each.value}$`, 'm'))
          assert.deepEqual(offered(each.code, after), [])
        }
      })
    })
  }

  it('is not offered for an alias inside of a group that is shared itself', () => {
    const source = 'format: 1\nadjusters: {r: {on: shock, controls: rebound, counts: clicks, range: 20}}\nnotes: &v 14 in\nentries:\n  - id: a\n    settings: &s {r: *v}\n  - id: b\n    settings: *s\n'
    assert.equal(codesOf(source).filter((code) => code === 'wrong-end').length, 2)
    assert.deepEqual(offered('wrong-end', source), [])
  })
})

describe('the fix that swaps two values', () => {
  const sag = (bike: string, more = '') => `format: 1\nentries:\n  - id: a\n    sag:\n      front:\n        extended: 152\n        bike:\n${bike}${more}`

  it('is not offered where a value is shared, stands for another, or runs over lines', () => {
    assert.equal(offered('sag-lengths-swapped', sag('          lifted: 122\n          pushed: 128\n')).length, 1)
    for (const bike of ['          lifted: &x 122\n          pushed: 128\n        rider: *x\n', '          lifted: >- # by Jo\n            122\n          pushed: 128\n']) {
      assert.ok(codesOf(sag(bike)).includes('sag-lengths-swapped'))
      assert.deepEqual(offered('sag-lengths-swapped', sag(bike)), [])
    }
    const window = 'format: 1\nnotes: &x 35\nmachine: {front: {travel: 120, targets: {rider_sag: [*x, 30]}}}\n'
    assert.ok(codesOf(window).includes('unusable-window'))
    assert.deepEqual(offered('unusable-window', window), [])
  })
})
