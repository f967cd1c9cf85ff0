import assert from 'node:assert/strict'
import fc from 'fast-check'
import { loggerOf } from '../../../../src/core/derived/loggerOf'
import type { LoggerMapping } from '../../../../src/core/logs/mapping/mapping'
import { describeLogger } from '../../../../src/core/notebook/edits/describeLogger'
import { readNotebook } from '../../../../src/core/notebook/readNotebook'
import { applyChanges } from '../../../../src/core/text'

const mapping: LoggerMapping = { time: { column: 'Time', unit: 's' }, front: { column: 'Fork', unit: 'mm' }, rear: { column: 'Shock pos', unit: 'V', scale: 30, offset: 0.4, at: 'damper' } }
const written = (text: string, said: LoggerMapping = mapping) => applyChanges(text, describeLogger(readNotebook(text), said))

describe('describeLogger', () => {
  it('adds the lines to a machine in block style, and nothing else', () => {
    const text = 'format: 1\nmachine:\n  name: Tern 650   # ours\n  front: {travel: 120}\nentries:\n  - id: a\n'
    assert.equal(written(text), text.replace('entries:', `  logger:
    time: {column: Time, unit: s}
    front: {column: Fork, unit: mm}
    rear: {column: Shock pos, unit: V, scale: 30, offset: 0.4, at: damper}
entries:`))
  })

  it('adds them to a machine in flow style, and makes a machine where there is none', () => {
    assert.match(written('machine: {name: Tern}\n'), /^machine: \{name: Tern, logger: \{time: \{column: Time, unit: s\}, front: /)
    for (const text of ['format: 1\n', 'format: 1\nmachine:\n', '', '# nothing yet\n']) assert.deepEqual(loggerOf(readNotebook(written(text))), mapping, JSON.stringify(text))
  })

  it('changes only what is said otherwise', () => {
    const text = 'machine:\r\n  logger:   # from the maker\r\n    time: {column: Time}\r\n    front: {column: Fork, scale: 2}   # left leg\r\n    brake: {column: B}\r\n    mine: kept\r\n'
    assert.equal(written(text, { time: { column: 'Time' }, front: { column: 'Fork', scale: 2.5 } }), text.replace('scale: 2}', 'scale: 2.5}').replace('    brake: {column: B}\r\n', ''))
    assert.deepEqual(describeLogger(readNotebook(text), { time: { column: 'Time' }, front: { column: 'Fork', scale: 2 }, brake: { column: 'B' } }), [])
  })

  it('takes back what does not hold any more', () => {
    const text = 'machine:\n  logger:\n    time: {column: t}\n    front: {column: a, offset: 3, direction: extension}\n'
    assert.equal(written(text, { rateHz: 200, front: { column: 'a' } }), 'machine:\n  logger:\n    front: {column: a}\n    rate: 200\n')
  })

  it('refuses to touch what is shared by an anchor', () => {
    assert.throws(() => written('a: &l {front: {column: x}}\nmachine: {logger: *l}\n'), /anchor|elsewhere|shared/i)
  })

  it('reads back as what was said, whatever the columns are called', () => {
    const name = fc.oneof(fc.string({ minLength: 1, maxLength: 12 }).filter((text) => text.trim() !== '' && text.trim() === text), fc.constantFrom('null', 'yes', '1', '{a}', '# x', 'a: b', "it's", '"q"', '__proto__', 'Gabel [mm]', '- x', '&a', '*a'))
    const channel = fc.record({ column: name, unit: fc.constantFrom('mm', '%', 'V'), scale: fc.double({ min: 0.01, max: 99, noNaN: true }), direction: fc.constantFrom('compression' as const, 'extension' as const) }, { noNullPrototype: true })
    const any = fc.record({ time: fc.record({ column: name }, { noNullPrototype: true }), front: channel }, { noNullPrototype: true })
    const starts = ['', 'machine: {name: T}\n', 'format: 1\nmachine:\n  name: T\n  logger:\n    front: {column: old, at: wheel}\nentries: []\n']
    fc.assert(fc.property(fc.constantFrom(...starts), any, (text, said) => {
      const now = written(text, said)
      assert.deepEqual(loggerOf(readNotebook(now)), said)
      assert.equal(written(now, said), now)
    }), { numRuns: 150 })
  })
})
