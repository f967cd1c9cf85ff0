import assert from 'node:assert/strict'
import { inWorkingOrder } from '../../../src/core/compare/workingOrder'
import { anAdjuster } from '../adjusters/anAdjuster'

const order = (...adjusters: ReturnType<typeof anAdjuster>[]) => inWorkingOrder(adjusters.map((adjuster) => ({ adjuster }))).map(({ adjuster }) => adjuster.id)

// Common practice, no source.
describe('the working order', () => {
  it('goes from what takes the fork apart over height, air and preload to damping', () => {
    const all = ['rebound', 'preload', 'balance_pressure', 'low_speed_compression', 'high_speed_compression', 'fork_height', 'air_pressure', 'oil_level', 'spring_rate']
    const counts: Record<string, string> = { fork_height: 'mm', air_pressure: 'psi', balance_pressure: 'psi', oil_level: 'mm', spring_rate: 'N/mm' }
    assert.deepEqual(order(...all.map((name) => anAdjuster(name, counts[name] ?? 'clicks'))),
      ['spring_rate', 'oil_level', 'fork_height', 'air_pressure', 'balance_pressure', 'preload', 'high_speed_compression', 'rebound', 'low_speed_compression'])
  })

  it('does pairs first, then the left leg’s own and then the right one’s', () => {
    const [right, left, pair] = [['right'], ['left'], ['left', 'right']].map((legs) => anAdjuster('rebound', 'clicks', { id: legs.join(), legs: legs as ['left'] }))
    assert.deepEqual(order(right!, left!, pair!), ['left,right', 'left', 'right'])
  })

  it('does what sits inside of another after it', () => {
    const outer = anAdjuster('compression', 'clicks', { id: 'outer' })
    const inner = anAdjuster('preload', 'turns', { id: 'inner', inside: 'outer' })
    assert.deepEqual(order(inner, outer), ['outer', 'inner'])
    assert.deepEqual(order(inner), ['inner'])
  })
})
