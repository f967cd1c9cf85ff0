import assert from 'node:assert/strict'
import { sprungLoad } from '../../../../src/core/compute/loads/sprungLoad'
import { missingOf, near, valueOf } from '../near'

describe('sprungLoad', () => {
  it('statics: axle weight less unsprung mass, times g', () => {
    near(valueOf(sprungLoad({ axleKg: 98, unsprungKg: 18 })), 80 * 9.80665, 1e-12)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(sprungLoad({ axleKg: 98, unsprungKg: undefined })), ['unsprung mass of this end'])
    assert.deepEqual(missingOf(sprungLoad({ axleKg: 18, unsprungKg: 18 })), ['an axle weight above the unsprung mass'])
  })
})
