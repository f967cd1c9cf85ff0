import { cosDeg, sinDeg, tanDeg, toDegrees, toRadians } from '../../../../src/core/compute/geometry/degrees'
import { near } from '../near'

describe('degrees', () => {
  it('knows the angles of a set square', () => {
    near(sinDeg(30), 0.5, 1e-15)
    near(cosDeg(60), 0.5, 1e-15)
    near(tanDeg(45), 1, 1e-15)
  })

  it('turns radians round and back', () => near(toDegrees(toRadians(23.7)), 23.7, 1e-13))
})
