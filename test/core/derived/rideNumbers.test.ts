import assert from 'node:assert/strict'
import { travelUsedOf } from '../../../src/core/derived/travelUsedOf'
import { tyreRiseOf, tyreTemperatureOf } from '../../../src/core/derived/tyresOf'
import { get, missingOf, near, valueOf } from '../compute/near'
import { readEntry, sketchWith, ternSketch } from './ternSketch'

describe('travelUsedOf', () => {
  it('Tern 650: 104 of 120 mm are 86.7 %, well used', () => {
    const { notebook, entry } = readEntry(ternSketch)
    const used = get(travelUsedOf(notebook, entry, 'front'))
    near(used.usedPercent.value, 86.6667, 1e-3)
    near(used.usedPercent.u, (100 * 0.57735) / 120, 1e-4)
    assert.equal(used.verdict, 'wellUsed')
    assert.deepEqual(missingOf(travelUsedOf(notebook, entry, 'rear')), ['travel used'])
  })
})

describe('tyreRiseOf and tyreTemperatureOf', () => {
  const text = (altitude = '') => sketchWith(
    ['  fork_height: {', '  front_tyre: {on: tyres, controls: tyre_pressure, counts: psi}\n  fork_height: {'],
    ['{fork_rebound: 3 out}', `{front_tyre: 30}\n    conditions: {air: 11${altitude}}`], ['front_travel_used: 104', 'front_tyre_hot: 2.5'])

  it('gas law at constant volume, absolute pressure: 30 psi at 11 °C that reads 2.5 bar hot', () => {
    const { notebook, entry } = readEntry(text())
    const cold = 30 * 0.0689475729317
    near(valueOf(tyreRiseOf(notebook, entry, 'front')), 100 * (2.5 / cold - 1), 1e-6)
    near(valueOf(tyreTemperatureOf(notebook, entry, 'front')), ((2.5 + 1.01325) / (cold + 1.01325)) * 284.15 - 273.15, 1e-6)
  })

  it('takes the thinner air of an altitude: US Standard Atmosphere 1976, 0.794944 bar at 2000 m', () => {
    const { notebook, entry } = readEntry(text(', altitude: 2000 m'))
    near(valueOf(tyreTemperatureOf(notebook, entry, 'front')), ((2.5 + 0.794944) / (30 * 0.0689475729317 + 0.794944)) * 284.15 - 273.15, 1e-3)
  })

  it('is absent with its reasons', () => {
    const { notebook, entry } = readEntry(ternSketch)
    assert.deepEqual(missingOf(tyreRiseOf(notebook, entry, 'front')), ['gauge pressure, hot', 'gauge pressure, cold'])
  })
})
