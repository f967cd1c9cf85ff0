import { readLength, resolutionUncertainty } from '../../../../src/core/compute/working/resolution'
import { near } from '../near'

describe('resolutionUncertainty', () => {
  it('JCGM 100:2008, 4.3.7: a reading somewhere within ±a has u = a / √3', () => {
    near(resolutionUncertainty(1), 0.5773502691896258, 1e-15)
    near(resolutionUncertainty(0.5), 0.2886751345948129, 1e-15)
  })

  it('agrees with the spread of a rectangle cut into many readings', () => {
    const readings = Array.from({ length: 10_001 }, (_, place) => -1 + place / 5000)
    const spread = Math.sqrt(readings.reduce((sum, reading) => sum + reading ** 2, 0) / readings.length)
    near(resolutionUncertainty(1), spread, 1e-3)
  })
})

describe('readLength', () => {
  it('takes ±1 mm when nobody says otherwise', () => {
    near(readLength(152).u, 1 / Math.sqrt(3), 1e-15)
    near(readLength(152, 0.1).u, 0.1 / Math.sqrt(3), 1e-15)
  })
})
