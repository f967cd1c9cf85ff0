import assert from 'node:assert/strict'
import { sagFeel } from '../../../../src/core/compute/sag/sagFeel'

describe('sagFeel', () => {
  it('CRF250X 2006 owner’s manual, p. 120: less race sag (90 mm) turns quicker, more (110 mm) is more stable and turns slower', () => {
    assert.match(sagFeel('rear', 'less')!.words, /quicker .* slightly less stable/)
    assert.match(sagFeel('rear', 'more')!.words, /more stable .* slower/)
  })

  it('says nothing of the front, for which nothing was found in print', () => {
    assert.equal(sagFeel('front', 'less'), undefined)
  })
})
