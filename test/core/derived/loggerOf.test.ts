import assert from 'node:assert/strict'
import { logFactsOf, loggerOf, logGeometryOf } from '../../../src/core/derived/loggerOf'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const machine = (lines: string) => readNotebook(`format: 1\nmachine:\n${lines.split('\n').map((line) => `  ${line}\n`).join('')}`)

describe('loggerOf', () => {
  it('reads which column is what, and leaves out what has the wrong shape', () => {
    const notebook = machine(`logger:
  time: {column: Time, unit: ms}
  front: {column: 2, unit: V, scale: 30, offset: 0.5, direction: extension, at: wheel}
  rear: {column: Shock, scale: many, at: chain}
  brake: {column: Brake, on: 3}
  lap: {column: Lap}`)
    assert.deepEqual(loggerOf(notebook), {
      time: { column: 'Time', unit: 'ms' }, front: { column: 2, unit: 'V', scale: 30, offset: 0.5, direction: 'extension', at: 'wheel' },
      rear: { column: 'Shock' }, brake: { column: 'Brake', on: 3 }, lap: { column: 'Lap' },
    })
    assert.deepEqual(loggerOf(machine('logger: {rate: 200, front: {column: }}')), { rateHz: 200 })
    assert.equal(loggerOf(machine('logger: yes')), undefined)
    assert.equal(loggerOf(readNotebook('')), undefined)
  })

  it('brings the travels, the leverage and the figures along', () => {
    const notebook = machine('front: {travel: 120}\nrear: {travel: 130, motion_ratio: 0.45}\ngeometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}')
    assert.deepEqual(logFactsOf(notebook), { front: { travelMm: 120 }, rear: { travelMm: 130, leverage: { motionRatio: 0.45 } } })
    assert.deepEqual(logGeometryOf(notebook), { rakeDeg: 24, offsetMm: 30, frontRadiusMm: 300, wheelbaseMm: 1400, rearRadiusMm: 315 })
    assert.deepEqual([logFactsOf(readNotebook('')), logGeometryOf(readNotebook(''))], [{ front: {}, rear: {} }, undefined])
  })
})
