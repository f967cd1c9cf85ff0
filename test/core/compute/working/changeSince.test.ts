import assert from 'node:assert/strict'
import { normalFromTrail } from '../../../../src/core/compute/geometry/normalFromTrail'
import { asWritten } from '../../../../src/core/compute/working/asWritten'
import { changeSince } from '../../../../src/core/compute/working/changeSince'
import { get, missingOf, near, valueOf } from '../near'

describe('asWritten', () => {
  it('is the number, with its name for a formula', () => assert.deepEqual(get(asWritten('rake', '°', 26)).working.formula, 'rake'))
  it('is missing where nothing was written', () => assert.deepEqual(missingOf(asWritten('rake', '°', undefined)), ['rake']))
})

describe('changeSince', () => {
  it('is now less then, without counting what both share as uncertain twice', () => {
    const change = get(changeSince({ ...get(asWritten('trail', 'mm', 98)), u: 2 }, { ...get(asWritten('trail', 'mm', 100)), u: 2 }, 'baseline'))
    assert.deepEqual([change.value, change.u, change.unit], [-2, undefined, 'mm'])
  })
})

describe('normalFromTrail', () => {
  it('plane trigonometry: half the trail at 60°', () => near(valueOf(normalFromTrail({ rakeDeg: 60, trailMm: 100 })), 50, 1e-9))
})
