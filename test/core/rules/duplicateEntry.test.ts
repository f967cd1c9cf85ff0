import assert from 'node:assert/strict'
import { freeId } from '../../../src/core/rules/duplicateEntry'
import { fixedBy } from './check'

const free = (id: string, ...taken: string[]) => freeId(id, new Set(taken))

describe('freeId', () => {
  it('counts on from the number at the end', () => {
    assert.equal(free('run-3', 'run-3'), 'run-4')
    assert.equal(free('7', '7'), '8')
    assert.equal(free('run-19', 'run-19'), 'run-20')
  })

  it('passes over what is taken', () => {
    assert.equal(free('run-3', 'run-3', 'run-4', 'run-5'), 'run-6')
  })

  it('begins with 2 where there is no number', () => {
    assert.equal(free('baseline', 'baseline'), 'baseline-2')
  })

  it('does not take a long row of digits for a number it could lose', () => {
    assert.equal(free('12345678901234567890', '12345678901234567890'), '12345678901234567891')
  })
})

describe('the fix of duplicate-entry', () => {
  it('renames the later one', () => {
    assert.equal(fixedBy('duplicate-entry', 'format: 1\nentries: [{id: run-1}, {id: run-1}]\n'), 'format: 1\nentries: [{id: run-1}, {id: run-2}]\n')
  })

  it('puts quotes where YAML needs them', () => {
    assert.equal(fixedBy('duplicate-entry', 'format: 1\nentries: [{id: "a, b"}, {id: "a, b"}]\n'), 'format: 1\nentries: [{id: "a, b"}, {id: "a, b-2"}]\n')
  })
})
