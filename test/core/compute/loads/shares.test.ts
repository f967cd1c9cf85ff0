import assert from 'node:assert/strict'
import { frontShare } from '../../../../src/core/compute/loads/frontShare'
import { transferPerG } from '../../../../src/core/compute/loads/transferPerG'
import { missingOf, near, valueOf } from '../near'

describe('frontShare', () => {
  it('J. R. Davis, tip 106: 45 on the front and 55 on the rear of 100 is 45 %', () => {
    near(valueOf(frontShare({ frontKg: 45, rearKg: 55, whose: 'bike alone' })), 45, 1e-12)
    assert.deepEqual(missingOf(frontShare({ frontKg: 45, rearKg: undefined, whose: 'bike alone' })), ['weight on the rear axle, bike alone'])
    assert.deepEqual(missingOf(frontShare({ frontKg: -45, rearKg: 5, whose: 'bike alone' })), ['axle weights above zero'])
  })
})

describe('transferPerG', () => {
  it('moments, round numbers: 280 kg at 620 mm over 1400 mm is 1216.02 N for each g, as between the rows of the table', () => {
    const of = (more: Partial<Parameters<typeof transferPerG>[0]> = {}) => transferPerG({ massKg: 280, wheelbaseMm: 1400, heightMm: 620, ...more })
    near(valueOf(of()), 2588.956 - 1372.931, 2e-3)
    // J. R. Davis: proportional to height over wheelbase.
    near(valueOf(of({ heightMm: 1240 })), 2 * valueOf(of()), 1e-9)
    near(valueOf(of({ wheelbaseMm: 2800 })), valueOf(of()) / 2, 1e-9)
    assert.deepEqual(missingOf(of({ heightMm: 0 })), ['a mass, a height and a wheelbase above zero'])
  })
})
