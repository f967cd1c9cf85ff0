import { polytropicPressure, polytropicTemperature, polytropicWork } from '../../../../src/core/compute/springs/polytropic'
import { near, nearRelative } from '../near'

describe('polytropicPressure and polytropicWork', () => {
  // bar · m³ is 100 kJ
  for (const [exponent, bar, kilojoule] of [[1.5, 1.06066, 17.5736], [1, 1.5, 20.7944], [0, 3, 30]] as const) {
    it(`Moran & Shapiro, example 2.1: 3 bar from 0.1 to 0.2 m³ at n = ${exponent} is ${bar} bar and ${kilojoule} kJ`, () => {
      const squeeze = { pressureAbs: 3, volume: 0.1, newVolume: 0.2, exponent }
      nearRelative(polytropicPressure(squeeze), bar, 5e-4)
      nearRelative(polytropicWork(squeeze) * 100, kilojoule, 5e-4)
    })
  }

  it('gives work that is the area under the pressure, by a sum of many strips', () => {
    const squeeze = { pressureAbs: 2, volume: 300, newVolume: 120, exponent: 1.3 }
    const strips = 4000
    const width = (squeeze.newVolume - squeeze.volume) / strips
    const area = Array.from({ length: strips }, (_, strip) => polytropicPressure({ ...squeeze, newVolume: squeeze.volume + (strip + 0.5) * width }) * width)
    nearRelative(polytropicWork(squeeze), area.reduce((sum, part) => sum + part, 0), 1e-6)
  })
})

describe('polytropicTemperature', () => {
  it('Moran & Shapiro, example 3.11: 295 K at a ratio of 5 and n = 1.3 is 427.684 K', () => {
    near(polytropicTemperature({ kelvin: 295, pressureRatio: 5, exponent: 1.3 }), 427.684, 1e-3)
  })
})
