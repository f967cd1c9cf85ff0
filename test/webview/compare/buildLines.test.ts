import assert from 'node:assert/strict'
import { buildLines } from '../../../webview/compare/model/buildLines'
import type { Line } from '../../../webview/compare/model/lines'
import { columnsOf } from '../../../webview/compare/model/lines'
import { pairOf, stateIn, tern, viewOf } from './views'

const line = (lines: readonly Line[], key: string) => lines.find((each) => each.key === key)!
const groups = (lines: readonly Line[]) => lines.filter(({ kind }) => kind === 'group').map(({ label }) => label)

describe('the lines of a comparison', () => {
  it('stand in the groups of the grid, without what neither side has on record', () => {
    const lines = buildLines(pairOf('as-found', 'run-1'), false)
    assert.deepEqual(groups(lines), ['Fork', 'Shock', 'Sag, front', 'The change', 'The ride', 'Findings'])
    assert.ok(lines.every(({ kind, left, right }) => kind === 'group' || left.text !== '' || right.text !== ''))
    assert.equal(new Set(lines.map(({ key }) => key)).size, lines.length)
  })

  it('are those that differ alone where so asked, and no heading without a line', () => {
    const lines = buildLines(pairOf('as-found', 'run-1'), true)
    assert.deepEqual(lines.filter(({ kind, different }) => kind !== 'group' && !different), [])
    assert.deepEqual(lines.filter(({ key }) => key.startsWith('settings/')).map(({ key }) => key), ['settings/fork_rebound/right'])
    assert.ok(lines.every(({ kind }, at) => kind !== 'group' || (lines[at + 1] && lines[at + 1]!.kind !== 'group')))
  })

  it('are none where an entry is held against itself and only differences are asked for', () => {
    assert.deepEqual(buildLines(pairOf('run-2', 'run-2'), true), [])
    assert.ok(buildLines(pairOf('run-2', 'run-2'), false).length > 10)
  })

  it('say a change in the adjuster’s own count, in words and as a share of its range, with a bar from where to where', () => {
    const { change, left, right } = line(buildLines(pairOf('as-found', 'run-1'), false), 'settings/fork_rebound/right')
    assert.deepEqual([left.text, right.text, change?.words, change?.more], ['6 clicks out', '3 clicks out', '3 clicks in: more rebound damping', '15 % of range'])
    assert.deepEqual(change?.bar, { kind: 'range', from: 0.7, to: 0.85 })
    assert.deepEqual(left.place, { column: 'as-found', row: 'settings/fork_rebound/right' })
    assert.equal(left.about, 'Written ‘6 out’')
  })

  it('draw what has no range against what was ever recorded, and say so', () => {
    const { change } = line(buildLines(pairOf('run-1', 'run-3'), false), 'settings/fork_height/left')
    assert.deepEqual(change?.bar, { kind: 'step', size: 1, more: true, of: 'record' })
    assert.match(change?.about ?? '', /range is not known/)
    assert.equal(change?.more, undefined)
  })

  it('say whether a number changed beyond its uncertainty, by a sign and in words', () => {
    const { change } = line(buildLines(pairOf('as-found', 'run-3'), false), 'computed/front.rider_sag_mm')
    assert.deepEqual([change?.words, change?.sign], ['−6 mm', { more: false, sure: true }])
    assert.match(change?.more ?? '', /^more than twice its uncertainty of /)
    const small = line(buildLines(pairOf('as-found', 'run-3', tern.replace('[115.5, 108.5]', '[109.5, 103.5]')), false), 'computed/front.rider_sag_mm')
    assert.deepEqual(small.change?.sign, { more: false, sure: false })
    assert.match(small.change?.more ?? '', /^within twice/)
  })

  it('leave the room of a change to what is said in words', () => {
    const lines = buildLines(pairOf('as-found', 'run-1'), false)
    assert.deepEqual(columnsOf(line(lines, 'reason')), ['label', 'left', 'right'])
    assert.deepEqual(columnsOf(line(lines, 'settings/shock_rebound')), ['label', 'left', 'change', 'right'])
    assert.deepEqual(line(lines, 'settings/shock_rebound').change, { words: 'the same', quiet: true })
    assert.equal(line(lines, 'reason').right.text, 'right leg brought to the left')
  })

  it('say what was read on one side only, and how a sag changed since it was last read', () => {
    const lines = buildLines(pairOf('run-1', 'run-3'), false)
    assert.deepEqual(line(lines, 'sag.front.extended').change, { words: 'only in run-3', quiet: true })
    const { change } = line(lines, 'computed/front.rider_sag_mm')
    assert.equal(change?.words, '−6 mm since as-found')
    assert.match(change?.more ?? '', /^42 mm then, more than twice/)
  })

  it('tell the sag to expect behind the sags, and that it is a guess', () => {
    const lines = buildLines(pairOf('run-1', 'run-2'), true)
    const at = lines.findIndex(({ key }) => key === 'expected')
    assert.ok(at > 0 && groups(lines.slice(at))[0] === 'Sag to expect, as it was not measured since')
    const { left, right, change } = line(lines, 'expected/front/Rider sag')
    assert.deepEqual([left, right.text, change?.words], [{ text: '42 mm', more: 'in as-found' }, 'about 36 mm', '−6 mm'])
    assert.match(change?.more ?? '', /measure it$/)
  })

  it('tell remarks beside what they are about', () => {
    assert.equal(line(buildLines(pairOf('run-1', 'run-2'), false), 'settings/fork_preload/left').right.more, 'Remark: counted twice')
  })

  it('tell what lies on the way, undone on the left and done on the right, unless it is the right side itself', () => {
    assert.equal(buildLines(pairOf('as-found', 'run-1'), false).some(({ kind }) => kind === 'way'), false)
    const ways = buildLines(pairOf('run-2', 'run-3'), true).filter(({ kind }) => kind === 'way')
    assert.deepEqual(ways.map(({ label, detail, left, right }) => [label, detail, left.text, right.text]), [
      ['run-2', '2026-04-19, undone', 'rider sag was too much', ''], ['run-3', '2026-04-19, done', '', ''],
    ])
    assert.deepEqual(ways[0]!.change?.words, 'Fork preload, both legs: 6 turns in: more preload')
    assert.deepEqual(ways[0]!.left.place, { column: 'run-2', row: 'reason' })
  })

  it('tell findings on the side they are of, with where they lead', () => {
    const found = buildLines(pairOf('as-found', 'run-1'), true).filter(({ kind }) => kind === 'finding')
    const legs = found.find(({ left }) => left.text.includes('the left leg stands at'))!
    assert.deepEqual([legs.label, legs.detail, legs.right.text, legs.left.mark], ['Warning', 'gone', 'not found here', 'warning'])
    assert.equal(legs.left.place?.column, 'as-found')
    const [back] = buildLines(pairOf('run-1', 'as-found'), true).filter(({ kind, right }) => kind === 'finding' && right.mark)
    assert.deepEqual([back?.detail, back?.left.text], ['new', 'not found here'])
  })

  it('hold two machines against each other by their share of range alone', () => {
    const other = tern.replace('Tern 650', 'Wren 250').replace('controls: rebound, counts: clicks, range: 22', 'controls: rebound, counts: clicks, range: 11')
    const view = viewOf(stateIn(tern, 'run-1'), stateIn(other, 'run-1', 'wren.setup.yaml'))
    assert.match(view.comparison.notes.join(), /share of the range alone/)
    const { change } = line(buildLines(view, false), 'settings/shock_rebound')
    assert.equal(change?.words, '32 % of range: less rebound damping')
    assert.equal(change?.more, undefined)
    assert.equal(change?.bar?.kind, 'range')
  })

  it('show the side that can be read alone, without changes and whole, where the other cannot', () => {
    for (const broken of [stateIn('entries: ['), { ...stateIn(''), missing: 'There is no revision ‘x’.' }]) {
      const lines = buildLines(viewOf(broken, stateIn(tern, 'run-1')), true)
      assert.ok(lines.length > 10)
      assert.ok(lines.every(({ change }) => change === undefined))
      assert.equal(line(lines, 'settings/shock_rebound').right.text, '7 clicks out')
    }
    assert.deepEqual(buildLines(viewOf(stateIn('entries: ['), stateIn(': [')), false), [])
  })

  it('keep their keys apart where a rule finds the same thing twice', () => {
    const twice = tern.replace('laps: 6', 'laps: 6, lapz: 7, lapzz: 8')
    const lines = buildLines(pairOf('as-found', 'run-1', twice), false)
    assert.equal(new Set(lines.map(({ key }) => key)).size, lines.length)
  })
})
