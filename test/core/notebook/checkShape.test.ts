import assert from 'node:assert/strict'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { findingsOf, fixedBy, source } from '../rules/check'

const shape = (text: string) => findingsOf(text).filter(({ code }) => code === 'wrong-shape')
const messages = (text: string) => shape(text).map(({ message }) => message)
const at = (text: string) => shape(text).map(({ range }) => text.slice(range.start, range.end))

describe('checkShape', () => {
  it('points at the value, or at the key of a group', () => {
    assert.deepEqual(at('format: 1\nmachine: {name: 650, front: [1], rear: {springs: 3}}\n'), ['650', 'front', '3'])
    assert.deepEqual(at('format: 1\nentries:\n  - words\n'), ['words'])
  })

  it('names everything that is missing in one finding', () => {
    assert.deepEqual(messages('format: 1\nadjusters: {a: {on: fork}}\n'), ['`controls` and `counts` are missing here'])
    assert.deepEqual(messages('format: 1\nadjusters: {a: {on: fork, counts: clicks}}\n'), ['`controls` is missing here'])
  })

  it('takes a key with nothing behind it for one that is not written yet', () => {
    assert.deepEqual(messages('format: 1\nmachine:\nentries:\n  - id: a\n    date:\n    settings:\n    verdict: ~\n'), [])
    assert.deepEqual(messages('format: 1\nadjusters: {a: {on: fork, counts: clicks, controls: }}\n'), ['`controls` is missing here'])
    assert.deepEqual(messages('format:\n'), ['`format` is missing here: begin with `format: 1`'])
  })

  it('writes the format before the first key, as far in as that stands', () => {
    assert.equal(fixedBy('wrong-shape', '  machine: {}\n  notes: x\n'), '  format: 1\n  machine: {}\n  notes: x\n')
    assert.equal(fixedBy('wrong-shape', 'machine: {}\r\n'), 'format: 1\r\nmachine: {}\r\n')
  })

  it('says of a choice only what is wrong with the branch that was meant', () => {
    const reading = (text: string) => messages(`format: 1\nentries: [{id: a, sag: {front: {bike: ${text}}}}]\n`)
    assert.deepEqual(reading('[128, 122, 120]'), ['`bike` takes at most 2 values'])
    assert.deepEqual(reading('{lifted: [128]}'), ['`lifted` must be a number or a text'])
    assert.deepEqual(reading('true'), ['`bike` must be a number, a text, a list or a group of `key: value` lines'])
  })

  it('finds its way through keys that look like pointers', () => {
    const text = 'format: 1\nentries: [{id: a, settings: {"a/b~c": [1]}}]\n'
    assert.deepEqual(at(text), ['"a/b~c"'])
    assert.match(messages(text)[0]!, /^`a\/b~c` must be/)
  })

  it('stands keys with names that objects have of their own', () => {
    assert.deepEqual(messages('format: 1\nmachine: {__proto__: {a: 1}, constructor: 1, toString: x}\n'), [])
  })
})

describe('the cell of a wrong shape', () => {
  const adjusters = 'adjusters: {pair: {on: fork, legs: [right, left], controls: rebound, counts: clicks}, one: {on: shock, controls: rebound, counts: clicks}}'
  const places = (entry: string) => shape(`format: 1\n${adjusters}\nentries:\n  - words\n  - id: first\n  - ${entry}\n`).slice(1).map(({ place }) => place)

  it('is the setting’s, by leg where there are legs', () => {
    assert.deepEqual(places('{id: a, settings: {one: [1]}}'), [{ entry: 'a', row: 'settings/one' }])
    assert.deepEqual(places('{id: a, settings: {pair: {left: [1], right: true}}}'), [{ entry: 'a', row: 'settings/pair/left' }, { entry: 'a', row: 'settings/pair/right' }])
    assert.deepEqual(places('{id: a, settings: {pair: [1]}}'), [{ entry: 'a', row: 'settings/pair/left' }])
    assert.deepEqual(places('{id: a, settings: {none: [1]}}'), [{ entry: 'a', row: 'settings/none' }])
  })

  it('is the field’s, whichever way a reading is written', () => {
    for (const [written, row] of [['[true, 122]', 'lifted'], ['[128, true]', 'pushed'], ['{pushed: [1]}', 'pushed'], ['true', 'lifted']] as const) {
      assert.deepEqual(places(`{id: a, sag: {front: {bike: ${written}}}}`), [{ entry: 'a', row: `sag.front.bike.${row}` }], written)
    }
    assert.deepEqual(places('{id: a, verdict: kep}'), [{ entry: 'a', row: 'verdict' }])
    assert.deepEqual(places('{id: a, ride: {laps: many}}'), [{ entry: 'a', row: 'ride.laps' }])
  })

  it('is the entry’s where it is in no row, by its place where it has no name', () => {
    assert.deepEqual(places('{ride: 3}'), [{ entry: '#2' }])
    assert.deepEqual(places('{id: [a]}'), [{ entry: '#2' }])
  })

  it('is none outside of the entries', () => {
    for (const { place } of shape('format: 1\nmachine: {name: 650}\nadjusters: {a: 1}\nentries: [words]\n')) assert.equal(place, undefined)
  })

  it('is marked in the grid', () => {
    const text = `format: 1\n${adjusters}\nentries: [{id: a, settings: {pair: {left: [1]}}, verdict: kep}]\n`
    const view = buildGrid(readNotebook(text), findingsOf(text))
    const marked = view.rows.flatMap(({ key }, at) => (view.cells[at]?.[0]?.worst ? [key] : []))
    assert.deepEqual(marked, ['settings/pair/left', 'verdict'])
  })
})

describe('the fix for a wrong shape', () => {
  const fix = (text: string) => fixedBy('wrong-shape', text)

  it('begins a notebook with its format, wherever its first key stands', () => {
    assert.equal(fix('machine: {name: Tern}\n'), 'format: 1\nmachine: {name: Tern}\n')
    assert.equal(fix('# mine\n---\nmachine: {name: Tern}\n'), '# mine\n---\nformat: 1\nmachine: {name: Tern}\n')
    assert.equal(fix('{machine: {name: Tern}}\n'), '{format: 1, machine: {name: Tern}}\n')
  })

  it('keeps the line ends of the text', () => {
    assert.equal(fix('machine: {name: Tern}\r\n'), 'format: 1\r\nmachine: {name: Tern}\r\n')
  })

  it('quotes a number where words belong, and unquotes one where a number does', () => {
    assert.equal(fix('format: 1\nmachine: {name: 650}\n'), 'format: 1\nmachine: {name: "650"}\n')
    assert.equal(fix('format: 1\nentries: [{id: a, ride: {laps: "12"}}]\n'), 'format: 1\nentries: [{id: a, ride: {laps: 12}}]\n')
    assert.equal(fix('format: "1"\n'), 'format: 1\n')
  })

  it('knows the yes and no of other notebooks', () => {
    assert.equal(fix('format: 1\nentries: [{id: a, as_found: Yes}]\n'), 'format: 1\nentries: [{id: a, as_found: true}]\n')
    assert.equal(fix('format: 1\nentries: [{id: a, baseline: off}]\n'), 'format: 1\nentries: [{id: a, baseline: false}]\n')
  })

  it('takes no unit away: that would be another quantity', () => {
    const [finding] = shape('format: 1\nadjusters: {a: {on: fork, controls: preload, counts: turns, mm_per_turn: 1 in}}\n')
    assert.equal(finding?.message, '`mm_per_turn` must be a number without a unit')
    assert.equal(finding?.fixes, undefined)
  })

  it('offers the nearest of what may be chosen', () => {
    assert.equal(fix(source`
      format: 1
      machine: {use: Trak}
    `), 'format: 1\nmachine: {use: track}\n')
  })
})

describe('the fix that begins a notebook', () => {
  it('is not offered where it would take an anchor or the mark of a key for its own', () => {
    for (const text of ['&a machine: {name: Tern}\n', '? machine\n: {name: Tern}\n', '&all\nmachine: {name: Tern}\n', '{&a machine: {name: Tern}}\n']) {
      assert.equal(shape(text).length, 1, text)
      assert.equal(shape(text)[0]!.fixes, undefined, text)
    }
  })
})
