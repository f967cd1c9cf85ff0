import assert from 'node:assert/strict'
import { dampedFrequencyOf, dampingRatioOf, naturalFrequencyOf } from '../../../src/core/derived/bounceOf'
import { get, missingOf, near, valueOf } from '../compute/near'
import { readEntry, sketchWith } from './ternSketch'

const loaded: [string, string] = ['  geometry:', '  axle_loads: {bike: {front: 90, rear: 88}}\n  geometry:']
const unsprung: [string, string] = ['spring_rate: 9.5}', 'spring_rate: 9.5, unsprung_mass: 15}']
const bounce = (words: string): [string, string] => ['    sag:\n', `    bounce: {front: ${words}}\n    sag:\n`]
const all = (text: string) => {
  const { notebook, entry } = readEntry(text, 'as-found')
  return { ratio: dampingRatioOf(notebook, entry, 'front'), damped: dampedFrequencyOf(notebook, entry, 'front'), natural: naturalFrequencyOf(notebook, entry, 'front') }
}

describe('the bounce test of an entry', () => {
  it('S. S. Rao, Mechanical Vibrations: 40 then 10 mm half a cycle apart is a ratio of 0.4037, with an uncertainty', () => {
    const { ratio } = all(sketchWith(bounce('[40, 10]')))
    near(get(ratio).value, 0.4037128, 1e-6)
    // dz/dδ = π² / (π² + δ²)^1.5; u(δ)² = (0.57735 / 40)² + (0.57735 / 10)²
    const delta = Math.log(4)
    near(get(ratio).u, ((Math.PI ** 2) / (Math.PI ** 2 + delta ** 2) ** 1.5) * Math.hypot(0.57735 / 40, 0.57735 / 10), 2e-4)
  })

  it('a timed test gives its own frequencies: three heights are one cycle', () => {
    const { damped, natural, ratio } = all(sketchWith(bounce('{heights: [40, 10, 2.5], seconds: 0.5}')))
    near(valueOf(damped), 2, 1e-9)
    near(valueOf(natural), 2 / Math.sqrt(1 - 0.4037128 ** 2), 1e-5)
    near(valueOf(ratio), 0.4037128, 1e-6)
  })

  it('S. S. Rao: otherwise springs and sprung load tell the natural frequency, √(k / m) / 2π, the fork’s springs over cos²', () => {
    const { damped, natural } = all(sketchWith(bounce('[40, 10]'), loaded, unsprung))
    const expected = Math.sqrt((1000 * 19) / Math.cos((24 * Math.PI) / 180) ** 2 / 75) / (2 * Math.PI)
    near(valueOf(natural), expected, 1e-9)
    near(valueOf(damped), expected * Math.sqrt(1 - 0.4037128 ** 2), 1e-5)
    assert.ok(get(natural).working.assumptions.includes('the bike alone, without its rider'))
  })

  it('where no spring is noted the rate that the sags imply serves, turned to the vertical', () => {
    const { natural } = all(sketchWith(loaded, ['spring_rate: 9.5}', 'unsprung_mass: 15}']))
    const implied = (9.80665 * 84 * 0.4) / 11
    near(valueOf(natural), Math.sqrt((1000 * implied) / Math.cos((24 * Math.PI) / 180) / 75) / (2 * Math.PI), 1e-9)
  })

  it('heights alone cannot give Hz, and it is said what would', () => {
    const { damped, natural } = all(sketchWith(bounce('[40, 10]')))
    assert.deepEqual(missingOf(natural), ['weight on this axle', 'unsprung mass of this end'])
    assert.match(missingOf(damped).join(), /^the seconds the swings took, or weight on this axle/)
  })

  it('swings that grow, or a height of zero, are no damping', () => {
    assert.deepEqual(missingOf(all(sketchWith(bounce('[10, 40]'))).ratio), ['swings that die away'])
    assert.equal(missingOf(all(sketchWith(bounce('[40, 0]'))).ratio).length, 1)
    assert.deepEqual(missingOf(all(sketchWith(bounce('[40, many]'))).ratio).length, 1)
  })
})
