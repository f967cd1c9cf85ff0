import assert from 'node:assert/strict'
import fc from 'fast-check'
import { massHeight, type Lifting } from '../../../../src/core/compute/loads/massHeight'
import { get, missingOf, near, valueOf } from '../near'

const machine: Lifting = { wheelbaseMm: 1400, frontRadiusMm: 300, frontLevelKg: 97.142857142857, rearLevelKg: 102.857142857143, frontLiftedKg: 108.626394, liftMm: 362.3467 }

/** The front scale with the machine turned nose down about its front axle, from a known centre of mass: the other way round. */
function frontScale({ L, R, r, behind, height, total, angle }: Record<'L' | 'R' | 'r' | 'behind' | 'height' | 'total' | 'angle', number>) {
  const turned = (x: number, y: number) => ({ x: x * Math.cos(angle) - y * Math.sin(angle), y: x * Math.sin(angle) + y * Math.cos(angle) })
  const [mass, rearAxle] = [turned(behind, height - R), turned(L, r - R)]
  return { frontKg: total * (1 - mass.x / rearAxle.x), liftMm: rearAxle.y - (r - R) }
}

describe('massHeight', () => {
  it('ISO 9129 method, L 1400, r 300 mm, 200 kg, 15°: the front goes from 97.142857 to 108.626394 kg for a height of 600.000 mm', () => {
    near(valueOf(massHeight(machine)), 600, 1e-3)
  })

  it('R. Gray, centre of gravity: with equal wheels it is R + L·ΔW / (W·tan A)', () => {
    const angle = Math.asin(362.3467 / 1400)
    near(valueOf(massHeight(machine)), 300 + (1400 * (108.626394 - 97.142857142857)) / (200 * Math.tan(angle)), 1e-9)
  })

  it('gives back the height that made the readings, with unequal wheels as well', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(450, 900), number(500, 800), number(270, 330), number(270, 330), number(0.1, 0.5), (height, behind, R, r, angle) => {
      const [L, total] = [1400, 200]
      const { frontKg, liftMm } = frontScale({ L, R, r, behind, height, total, angle })
      const rearLevelKg = (total * behind) / L
      near(valueOf(massHeight({ wheelbaseMm: L, frontRadiusMm: R, rearRadiusMm: r, frontLevelKg: total - rearLevelKg, rearLevelKg, frontLiftedKg: frontKg, liftMm })), height, 1e-6)
    }))
  })

  it('ISO 10392: a small lift is far less certain than a high one', () => {
    const u = (angle: number) => {
      const { frontKg, liftMm } = frontScale({ L: 1400, R: 300, r: 300, behind: 720, height: 600, total: 200, angle })
      return get(massHeight({ ...machine, frontLiftedKg: { value: frontKg, u: 0.3 }, liftMm })).u!
    }
    assert.ok(u(0.05) > 4 * u(0.3))
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(massHeight({ ...machine, liftMm: undefined })), ['lift of the rear axle'])
    assert.deepEqual(missingOf(massHeight({ ...machine, liftMm: 0 })), ['a lift above zero and below the wheelbase'])
    assert.deepEqual(missingOf(massHeight({ ...machine, rearLevelKg: 0 })), ['axle weights above zero'])
  })
})
