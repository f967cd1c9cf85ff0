import assert from 'node:assert/strict'
import { derive, given } from '../../../../src/core/compute/working/derive'
import { found, reasons } from '../../../../src/core/compute/working/result'

const ratio = (a: number | undefined, b: number | undefined) => derive({
  formula: 'ratio = a / b', unit: '', from: { a: given('first', 'mm', a), b: given('second', 'mm', b) }, by: (v) => v.a / v.b, source: 'a book',
})

describe('found and reasons', () => {
  it('give the thing or undefined, and all reasons once', () => {
    assert.equal(found(ratio(1, undefined)), undefined)
    assert.equal(found(ratio(1, 2))?.value, 0.5)
    assert.deepEqual(reasons(ratio(1, undefined), ratio(undefined, undefined), ratio(1, 2)), ['second', 'first'])
  })
})
