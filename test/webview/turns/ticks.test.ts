import assert from 'node:assert/strict'
import type { TurnList } from '../../../src/core/compare/turns'
import { kept, nextUnticked, tickOf, ticksIn } from '../../../webview/turns/model/ticks'
import { readSavedState, sameSources } from '../../../webview/turns/model/savedState'

const turn = (row: string, from = '3 out', to = '5 out') => ({
  row, legWords: '', by: 2, amount: '2 clicks out', how: '', gives: '', from, to, toCount: 5, check: '',
})
const list = (...rows: ReturnType<typeof turn>[]): TurnList => ({
  from: { title: 'Tern', file: 'x' }, to: { title: 'Tern', file: 'x' }, cannot: [], cautions: [],
  groups: [
    { key: 'stand', label: 'First', first: ['Put it on a stand.'], steps: [] },
    { key: 'fork', label: 'Fork', first: [], steps: rows.map((each) => ({ key: each.row, label: each.row, alike: false, turns: [each], cautions: [] })) },
  ],
})

describe('what is ticked off a turn list', () => {
  it('is everything there is to do, in its order', () => {
    assert.deepEqual(ticksIn(list(turn('a'), turn('b'))), ['first\nPut it on a stand.', tickOf(turn('a')), tickOf(turn('b'))])
  })

  it('stays ticked when the list is made anew, unless that turn is another one now', () => {
    const ticked = ticksIn(list(turn('a'), turn('b')))
    assert.deepEqual([...kept(list(turn('a'), turn('b', '3 out', '6 out')), ticked)], ['first\nPut it on a stand.', tickOf(turn('a'))])
  })

  it('is gone on from to the next that is left, round and round', () => {
    const all = ['a', 'b', 'c']
    assert.equal(nextUnticked(all, new Set(['a']), 'a'), 'b')
    assert.equal(nextUnticked(all, new Set(['b', 'c']), 'b'), 'a')
    assert.equal(nextUnticked(all, new Set(), 'c'), 'a')
    assert.equal(nextUnticked(all, new Set(all), 'a'), undefined)
  })
})

describe('what the page of a turn list leaves behind', () => {
  const sources = { from: { uri: 'file:///x', entry: 'a' }, to: { uri: 'file:///x' } }

  it('is read back', () => {
    assert.deepEqual(readSavedState({ sources, ticked: ['a'], large: true }), { sources, ticked: ['a'], large: true })
  })

  it('is left out where it is odd', () => {
    for (const odd of [undefined, null, 3, [], { ticked: 'a', large: 1, sources: {} }, { sources: { from: { uri: 3 }, to: {} } }]) assert.deepEqual(readSavedState(odd), { ticked: [], large: false })
    assert.deepEqual(readSavedState({ ticked: [1, 'a', null] }).ticked, ['a'])
  })

  it('belongs to the two states alone', () => {
    assert.equal(sameSources(sources, structuredClone(sources)), true)
    assert.equal(sameSources(sources, { from: sources.to, to: sources.from }), false)
    assert.equal(sameSources(undefined, sources), false)
  })
})
