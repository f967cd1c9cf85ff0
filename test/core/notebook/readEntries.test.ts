import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { head } from '../grid/editing'

const read = (entries: string) => readNotebook(`${head}entries:\n${entries}`)

/** Where every slot stands in each entry, and who set it: `a:shock=3<a`. */
function standing(entries: string): string[] {
  return read(entries).entries.map(({ key, state }) => `${key}: ${[...state].map(([slot, { setting, setIn }]) => `${slot}=${setting.node.text}<${setIn.key}`).join(' ')}`.trim())
}

function parents(entries: string): string[] {
  return read(entries).entries.map(({ key, parent }) => `${key}<${parent?.key ?? ''}`)
}

describe('the key of an entry', () => {
  it('is its id where no other has it, else its place', () => {
    assert.deepEqual(read('  - id: a\n  - date: 2026-04-18\n  - id: b\n  - id: b\n  - id: 1.0\n  -\n  - id: "#1"\n').entries.map(({ key }) => key), ['a', '#2', '#3', '#4', '1.0', '#6'])
  })
})

describe('the entry another comes from', () => {
  it('is the one before, unless it names one', () => {
    assert.deepEqual(parents('  - id: a\n  - id: b\n  - id: c\n    from: a\n  - id: d\n'), ['a<', 'b<a', 'c<a', 'd<c'])
  })

  it('may stand later', () => {
    assert.deepEqual(parents('  - id: a\n    from: c\n  - id: b\n    from: a\n  - id: c\n    from: 12\n  - id: 12\n    from: nobody\n'), ['a<c', 'b<a', 'c<12', '12<'])
  })

  it('is nobody where it is unknown, and where it would lead back', () => {
    assert.deepEqual(parents('  - id: a\n    from: gone\n  - id: b\n    from: b\n'), ['a<', 'b<'])
    assert.deepEqual(parents('  - id: a\n    from: b\n  - id: b\n  - id: c\n'), ['a<', 'b<a', 'c<b'])
    assert.deepEqual(parents('  - id: x\n  - id: a\n    from: c\n  - id: b\n    from: a\n  - id: c\n    from: b\n'), ['x<', 'a<', 'b<a', 'c<b'])
  })

  it('is found in a moment in a long history, in any order', () => {
    const long = Array.from({ length: 4000 }, (_, at) => `  - {id: e${at}, from: e${at + 1}}\n`).join('')
    const started = process.cpuUsage()
    const { entries } = read(`  - {id: e4000, settings: {shock: 3}}\n${long}`)
    assert.equal(entries[1]!.state.get('shock')?.setIn.key, 'e4000')
    assert.ok(process.cpuUsage(started).user < 4e6)
  })
})

describe('where everything stands', () => {
  it('is carried from the entry one comes from', () => {
    assert.deepEqual(standing('  - id: a\n    settings: {shock: 3, fork: 5}\n  - id: b\n    settings: {fork: {left: 6}}\n  - id: c\n    from: a\n    settings: {shock: ~, foot: 2}\n  - id: d\n'), [
      'a: shock=3<a fork/left=5<a fork/right=5<a',
      'b: shock=3<a fork/left=6<b fork/right=5<a',
      'c: shock=3<a fork/left=5<a fork/right=5<a foot/right=2<c',
      'd: shock=3<a fork/left=5<a fork/right=5<a foot/right=2<c',
    ])
  })

  it('leaves out what names no adjuster or leg, and says what', () => {
    const { entries } = read('  - id: a\n    settings: {shok: 3, fork: {left: 1, middle: 2}, shock: {left: 3}, foot: [1]}\n')
    assert.deepEqual(entries[0]!.strangers.map(({ name, leg }) => `${name}/${leg ?? ''}`), ['shok/', 'fork/middle', 'shock/left'])
    assert.deepEqual([...entries[0]!.state.keys()], ['fork/left'])
  })

  it('is read where it is an alias', () => {
    assert.deepEqual(standing('  - id: a\n    settings: &s {shock: 3}\n  - id: b\n    settings: *s\n'), ['a: shock=3<a', 'b: shock=3<b'])
  })
})
