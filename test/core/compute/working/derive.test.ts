import assert from 'node:assert/strict'
import { derive, given } from '../../../../src/core/compute/working/derive'
import { get, missingOf, near } from '../near'

const ratio = (a: Parameters<typeof given>[2], b: Parameters<typeof given>[2]) => derive({
  formula: 'ratio = a / b', unit: '', from: { a: given('first', 'mm', a), b: given('second', 'mm', b) },
  by: (v) => v.a / v.b, assumptions: ['both straight'], source: 'a book',
})

describe('derive', () => {
  it('gives value, uncertainty, unit and the working with each contribution', () => {
    const result = get(ratio({ value: 6, u: 0.3 }, { value: 3 }))
    assert.equal(result.value, 2)
    near(result.u, 0.1, 1e-12)
    assert.deepEqual(result.working.inputs, [
      { symbol: 'a', name: 'first', value: 6, u: 0.3, unit: 'mm', contribution: result.u },
      { symbol: 'b', name: 'second', value: 3, unit: 'mm' },
    ])
    assert.deepEqual([result.working.assumptions, result.working.source], [['both straight'], 'a book'])
  })

  it('names every input that is missing or not a finite number, each once', () => {
    assert.deepEqual(missingOf(ratio(undefined, NaN)), ['first', 'second'])
    assert.deepEqual(missingOf(ratio(1, { value: Infinity })), ['second'])
    const twice = derive({ formula: 's = a + b', unit: '', from: { a: given('length', 'mm', undefined), b: given('length', 'mm', undefined) }, by: (v) => v.a + v.b, source: '' })
    assert.deepEqual(missingOf(twice), ['length'])
  })

  it('is never NaN or infinite: a formula without an answer is missing', () => {
    assert.match(missingOf(ratio(1, 0))[0]!, /has an answer/)
    assert.match(missingOf(ratio(0, 0))[0]!, /has an answer/)
  })

  it('has no uncertainty where none went in, and ignores one that is not a positive number', () => {
    assert.equal('u' in get(ratio(6, 3)), false)
    for (const u of [NaN, -1, Infinity, 0]) assert.equal('u' in get(ratio({ value: 6, u }, 3)), false)
  })

  it('takes a result as the input of the next', () => {
    const next = get(ratio(get(ratio({ value: 6, u: 0.3 }, 3)), 2))
    near(next.u, 0.05, 1e-12)
  })
})
