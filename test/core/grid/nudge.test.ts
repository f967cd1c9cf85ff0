import assert from 'node:assert/strict'
import fc from 'fast-check'
import { meansOf } from '../../../src/core/adjusters/changeWords'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { countOf } from '../../../src/core/rules/standings'
import { applyChanges } from '../../../src/core/text'

const head = `format: 1
adjusters:
  fork: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  shock: {on: shock, controls: rebound, counts: clicks, range: 12}
  spring: {on: shock, controls: preload, counts: turns, range: 10}
  cam: {on: shock, controls: preload, counts: steps, range: 7}
  height: {on: fork, controls: fork_height, counts: mm}
  link: {on: chassis, controls: ride_height, counts: mm, higher_is: less}
  tyre: {on: tyres, controls: tyre_pressure, counts: bar}
entries:
`

function nudged(entries: string, row: string, toward: 'more' | 'less', columns = ['a'], rows = [row]): string {
  const text = head + entries
  const cells = columns.flatMap((column) => rows.map((each) => ({ column, row: `settings/${each}` })))
  const answer = applyGesture(readNotebook(text), [], { kind: 'nudge', cells, toward })
  return answer.refused ?? applyChanges(text, answer.changes).slice(head.length)
}

const one = (settings: string) => `  - id: a\n    settings: {${settings}} # kept\n`

describe('a position moved by one count', () => {
  const cases: [title: string, row: string, toward: 'more' | 'less', before: string, after: string][] = [
    ['is turned in for more rebound where it is counted out', 'shock', 'more', 'shock: 7 out', 'shock: 6 out'],
    ['is turned out for less', 'shock', 'less', 'shock: 7 out', 'shock: 8 out'],
    ['stays a bare number', 'shock', 'more', 'shock: 7', 'shock: 6'],
    ['keeps its unit and its quotes', 'shock', 'less', "shock: '1 click out'", "shock: '2 clicks out'"],
    ['is counted in for more preload, by quarters of a turn', 'spring', 'more', 'spring: 1 3/4 turns in', 'spring: 2 turns in'],
    ['is one of the other unit it is written in', 'spring', 'more', 'spring: 3 flats in', 'spring: 4 flats in'],
    ['keeps the other end it is written from', 'shock', 'more', 'shock: 3 in', 'shock: 4 in'],
    ['goes on from a stop', 'shock', 'less', 'shock: closed', 'shock: 1 out'],
    ['follows the numbers of a cam', 'cam', 'more', 'cam: step 3', 'cam: step 4'],
    ['may be a height below nought', 'height', 'less', 'height: 0', 'height: -1'],
    ['follows a scale that runs the other way', 'link', 'more', 'link: 80 mm', 'link: 79 mm'],
    ['is a tenth of a bar', 'tyre', 'less', 'tyre: 2.1', 'tyre: 2'],
    ['moves both legs where one value stands for both', 'fork/left', 'more', 'fork: 5 out', 'fork: 4 out'],
    ['moves one leg where each has its own', 'fork/left', 'more', 'fork: {left: 5 out, right: 6 out}', 'fork: {left: 4 out, right: 6 out}'],
    ['leads back from beyond the range', 'shock', 'more', 'shock: 15', 'shock: 14'],
  ]
  for (const [title, row, toward, before, after] of cases) it(title, () => assert.equal(nudged(one(before), row, toward), one(after)))

  it('is refused at the end, on the seat, where it is unknown and where it is no position', () => {
    assert.equal(nudged(one('shock: 12 out'), 'shock', 'less'), 'Shock stands at the end of its range of 12 clicks; there is nothing further that way')
    assert.match(nudged(one('shock: 1 out'), 'shock', 'more'), /^one more would seat Shock/)
    assert.match(nudged(one('shock: closed'), 'shock', 'more'), /at its seat/)
    assert.match(nudged(one('cam: 1'), 'cam', 'less'), /the end it is counted from/)
    assert.match(nudged(one('spring: 0'), 'spring', 'less'), /the end it is counted from/)
    assert.equal(nudged(one('cam: 3'), 'shock', 'more'), 'where Shock stands is not known here; write it down first')
    assert.match(nudged(one('shock: firm'), 'shock', 'more'), /^‘firm’ is no position of Shock/)
    const field = applyGesture(readNotebook(head + one('cam: 3')), [], { kind: 'nudge', cells: [{ column: 'a', row: 'reason' }], toward: 'more' })
    assert.match(field.refused ?? '', /^only a position/)
  })

  it('is written where it is carried to, and the entry it came from stays', () => {
    const before = '  - id: a\n    settings: {fork: 5 out}\n  - id: b\n'
    assert.equal(nudged(before, 'fork/right', 'less', ['b']), `${before}    settings:\n      fork: 6 out\n`)
  })

  it('is one count in each cell of a range, however they carry from each other', () => {
    const before = '  - id: a\n    settings: {fork: 5, shock: 3}\n  - id: b\n    reason: x\n'
    assert.equal(nudged(before, '', 'less', ['a', 'b'], ['fork/left', 'fork/right', 'shock']),
      '  - id: a\n    settings: {fork: 6, shock: 4}\n  - id: b\n    settings:\n      fork: 6\n      shock: 4\n    reason: x\n')
  })

  it('comes back to the same count, wherever it stands', () => {
    const rows = ['shock', 'spring', 'cam', 'height', 'link', 'tyre']
    fc.assert(fc.property(fc.constantFrom(...rows), fc.integer({ min: 2, max: 6 }), fc.constantFrom('more' as const, 'less' as const), (row, at, toward) => {
      const text = head + one(`${row}: ${at}`)
      const go = (now: string, way: 'more' | 'less') => applyChanges(now, applyGesture(readNotebook(now), [], { kind: 'nudge', cells: [{ column: 'a', row: `settings/${row}` }], toward: way }).changes!)
      const there = go(text, toward)
      const notebook = readNotebook(there)
      const by = countOf(notebook.entries[0]!.settings.get(row))! - at
      assert.equal(meansOf(notebook.adjusters.get(row)!, by), toward)
      assert.equal(go(there, toward === 'more' ? 'less' : 'more'), text)
    }), { numRuns: 60 })
  })
})

describe('both legs at once', () => {
  const both = (entries: string, text: string, row = 'settings/fork/left') => {
    const answer = applyGesture(readNotebook(head + entries), [], { kind: 'setBothLegs', column: 'a', row, text })
    return answer.refused ?? applyChanges(head + entries, answer.changes).slice(head.length)
  }
  it('are one value where nothing or one value stands, else each keeps its place', () => {
    assert.equal(both('  - id: a\n', '4 out'), '  - id: a\n    settings:\n      fork: 4 out\n')
    assert.equal(both(one('fork: 5'), '4'), one('fork: 4'))
    assert.equal(both('  - id: a\n    settings:\n      fork:\n        left: 3 # here\n        right: 5\n', '4'), '  - id: a\n    settings:\n      fork:\n        left: 4 # here\n        right: 4\n')
    assert.equal(both(one('fork: {left: 3}'), '4'), one('fork: {left: 4, right: 4}'))
  })
  it('are cleared together', () => {
    assert.equal(both(one('fork: {left: 3, right: 4}, cam: 2'), ' '), one('cam: 2'))
    assert.equal(both(one('fork: 3, cam: 2'), ''), one('cam: 2'))
  })
  it('are refused where there is one of it', () => {
    assert.match(both(one('cam: 2'), '3', 'settings/cam'), /only one of this/)
  })
})

describe('cells written as far as they can be', () => {
  it('are written, and each of the others is explained', () => {
    const text = `${head}${one('cam: 2')}`
    const cells = [['settings/cam', '3'], ['computed/front.static_sag_mm', '9'], ['settings/gone', '1']].map(([row, typed]) => ({ column: 'a', row: row!, text: typed! }))
    const answer = applyGesture(readNotebook(text), [], { kind: 'setCells', cells, partly: true })
    assert.deepEqual(answer.changes && answer.left?.map(({ row, why }) => [row, why]), [
      ['computed/front.static_sag_mm', 'this is worked out from the other cells'], ['settings/gone', 'there is no such adjuster any more'],
    ])
    assert.equal(applyChanges(text, answer.changes!), head + one('cam: 3'))
  })
  it('are refused where none can be', () => {
    const answer = applyGesture(readNotebook(head + one('cam: 2')), [], { kind: 'setCells', cells: [{ column: 'a', row: 'settings/gone', text: '1' }], partly: true })
    assert.equal(answer.refused, 'there is no such adjuster any more')
  })
})
