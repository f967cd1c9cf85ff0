import assert from 'node:assert/strict'
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
