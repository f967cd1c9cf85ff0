import assert from 'node:assert/strict'
import { compareRates } from '../../../../src/core/compute/springs/compareRates'
import { get, missingOf, near } from '../near'

describe('compareRates', () => {
  it('tells the difference in percent of the fitted springs', () => {
    near(get(compareRates({ impliedNPerMm: 19.8, fittedNPerMm: 18 })).difference.value, 10, 1e-9)
  })

  it('JCGM 100:2008, 6.3.3: agrees within twice the standard uncertainty and not beyond', () => {
    assert.equal(get(compareRates({ impliedNPerMm: { value: 19.8, u: 1 }, fittedNPerMm: 18 })).agree, true)
    assert.equal(get(compareRates({ impliedNPerMm: { value: 19.8, u: 0.8 }, fittedNPerMm: 18 })).agree, false)
  })

  it('does not judge without an uncertainty', () => {
    assert.equal(get(compareRates({ impliedNPerMm: 19.8, fittedNPerMm: 18 })).agree, undefined)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(compareRates({ impliedNPerMm: undefined, fittedNPerMm: 18 })), ['rate that the sags imply'])
    assert.equal(missingOf(compareRates({ impliedNPerMm: 18, fittedNPerMm: 0 })).length, 1)
  })
})
