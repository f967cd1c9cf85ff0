import assert from 'node:assert/strict'
import { judgePlausible, plausibleSteering } from '../../../../src/core/compute/geometry/plausibleSteering'

describe('plausibleSteering', () => {
  it('Trevitt, Sportbike Suspension Tuning: sport rake 20 to 25°, trail 80 to 110 mm', () => {
    assert.deepEqual([20, 25, 19.9, 25.1].map((rake) => judgePlausible(rake, plausibleSteering.sportRake)), ['within', 'within', 'below', 'above'])
    assert.deepEqual([80, 110, 79, 111].map((trail) => judgePlausible(trail, plausibleSteering.sportTrail)), ['within', 'within', 'below', 'above'])
  })

  it('Foale, Motor Cycle News: racing near 22 to 23°, touring near 30°, custom up to 45°', () => {
    for (const rake of [22, 23, 30, 45]) assert.equal(judgePlausible(rake, plausibleSteering.anyRake), 'within')
    assert.equal(judgePlausible(46, plausibleSteering.anyRake), 'above')
  })
})
