import assert from 'node:assert/strict'
import { controls } from '../../../src/core/adjusters/controls'
import { guessAdjuster } from '../../../src/core/notebook/guessAdjuster'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

function guess(name: string, ...uses: string[]) {
  const entries = uses.map((use) => `  - settings: {${JSON.stringify(name)}: ${use}}\n`).join('')
  const { on, legs, control, counts, possible } = guessAdjuster(readNotebook(`format: 1\nentries:\n${entries}`), name)
  return { on, legs, control: control?.name, counts: counts?.symbol, possible: possible.map((each) => each.name) }
}
const known = (name: string, ...uses: string[]) => {
  const { on, legs, control, counts } = guess(name, ...uses)
  return [on, legs?.join('+'), control, counts]
}

describe('what a name and its uses tell of an adjuster', () => {
  it('is all of it, where both leave no doubt', () => {
    assert.deepEqual(known('shock_rebound', '7 clicks out'), ['shock', '', 'rebound', 'clicks'])
    assert.deepEqual(known('fork_compression', '{left: 3, right: 3 clicks}'), ['fork', 'left+right', 'compression', 'clicks'])
    assert.deepEqual(known('rear-preload', 'step 4'), ['shock', '', 'preload', 'steps'])
    assert.deepEqual(known('fork_height', '5 mm'), ['fork', 'left+right', 'fork_height', 'mm'])
    assert.deepEqual(known('front_tyre', '2.1 bar'), ['tyres', '', 'tyre_pressure', 'bar'])
    assert.deepEqual(known('steering_damper', '4 clicks out'), ['chassis', '', 'steering_damper', 'clicks'])
    assert.deepEqual(known('shock_low_speed_compression', '9 clicks'), ['shock', '', 'low_speed_compression', 'clicks'])
    assert.deepEqual(known('Shock high rebound', '2 turns'), ['shock', '', 'high_speed_rebound', 'turns'])
    assert.deepEqual(known('rear_ride_height', '312 mm'), ['shock', '', 'ride_height', 'mm'])
  })

  it('leaves out the unit where none is written, and takes it from any entry', () => {
    assert.deepEqual(known('shock_rebound', '7 out'), ['shock', '', 'rebound', undefined])
    assert.deepEqual(known('shock_rebound', '7', '9 clicks out'), ['shock', '', 'rebound', 'clicks'])
    assert.deepEqual(known('shock_rebound', 'somewhere'), ['shock', '', 'rebound', undefined])
  })

  it('leaves out the legs of one value at the fork, which may be for both or for the only one', () => {
    assert.deepEqual(known('fork_rebound', '3 clicks out'), ['fork', undefined, 'rebound', 'clicks'])
    assert.deepEqual(known('fork_rebound', '{right: 3 clicks out}'), ['fork', 'right', 'rebound', 'clicks'])
  })

  it('leaves out where it sits when the name does not say, or says two', () => {
    assert.deepEqual(known('rebound', '3 clicks out'), [undefined, undefined, 'rebound', 'clicks'])
    assert.equal(guess('fork_and_shock_rebound', '3 clicks').on, undefined)
    assert.equal(guess('fork_rear_preload', '3 turns').on, undefined)
  })

  it('is in doubt where the name says nothing or two things, or the unit speaks against it', () => {
    assert.equal(guess('front_knob', '3 clicks').control, undefined)
    assert.equal(guess('shock_rebound_compression', '3 clicks').control, undefined)
    assert.deepEqual([guess('shock_rebound', '2.1 bar').control, guess('shock_rebound', '2.1 bar').possible], [undefined, []])
    assert.equal(guess('reboundish', '3').control, undefined)
  })

  it('offers what can be at that place and be counted so', () => {
    assert.deepEqual(guess('fork_knob', '3 bar').possible, ['air_pressure', 'balance_pressure'])
    assert.deepEqual(guess('shock_length', '312 mm').possible, ['preload', 'ride_height'])
    assert.deepEqual(guess('fork_springs', '{left: 9.5 N/mm, right: 9.5 N/mm}').possible, ['spring_rate'])
    assert.deepEqual(guess('knob', '3').possible, controls.map(({ name }) => name))
  })

  it('knows every control by its own name', () => {
    for (const { name } of controls) assert.equal(guess(name, '3').control, name)
  })

  it('counts in the usual unit where adjusters do not count in the one that is written', () => {
    assert.equal(guess('fork_height', '0.2 inch').counts, 'mm')
    assert.equal(guess('front_tyre', '2.3 kgf/cm²').counts, 'bar')
  })

  it('stands names that objects have of their own', () => {
    for (const name of ['__proto__', 'constructor', 'toString', '']) assert.equal(guess(name, '3 clicks').control, undefined)
  })
})
