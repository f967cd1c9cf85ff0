import assert from 'node:assert/strict'
import fc from 'fast-check'
import { adviceCard } from '../../../src/core/advice/adviceCard'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { adviceText } from '../../../src/core/advice/adviceText'
import { adviseNext } from '../../../src/core/advice/adviseNext'
import type { Advice } from '../../../src/core/advice/advice'
import { readEntry, sketchWith, ternSketch } from '../derived/ternSketch'

const advise = (text: string, key?: string): Advice => {
  const { notebook, entry } = readEntry(text, key)
  return adviseNext(notebook, entry)
}
const tries = ({ topic, kind, step }: Advice) => `${topic}/${kind}: ${step}`

/** The sketch with level legs and a front sag inside its window; the rear has no preload to set. */
const sagRight: [string, string][] = [['{left: 3 out, right: 6 out}', '3 out'], ['extended: 152, bike: [128, 122], rider: [118, 110]', 'extended: 152, bike: [138, 134], rider: [123, 119]']]
const ride = (words: string): [string, string] => ['ride: {laps: 6, front_travel_used: 104}', `ride: {${words}}`]

describe('adviseNext', () => {
  it('first: legs that stand apart, whatever else there is', () => {
    const advice = advise(ternSketch, 'as-found')
    assert.equal(tries(advice), 'legs/change: bring the right leg of Fork rebound to the left one: 3 clicks in, to 3 clicks out')
    assert.deepEqual(advice.evidence, ['as-found: Fork rebound stands at 3 clicks out left and 6 clicks out right'])
  })

  it('a difference that was accepted with a reason is none', () => {
    assert.notEqual(advise(`${ternSketch}accepted:\n  - {finding: legs-differ, about: fork_rebound, reason: a left and a right cartridge}\n`, 'as-found').topic, 'legs')
  })

  it('then sag, with the reading of an entry before that still holds, and what both sags become', () => {
    const advice = advise(ternSketch, 'run-1')
    assert.equal(tries(advice), 'sag/change: turn Fork preload: 8 turns in, to 8 turns in')
    assert.deepEqual(advice.expect, ['rider sag about 30 mm, bike alone about 19 mm; the rate stays as it is'])
    assert.ok(advice.assumes.includes('what carries this end stands as in as-found'))
  })

  it('a reading does not outlive what carries the end: then it says what to measure', () => {
    const changed = advise(sketchWith(['{fork_rebound: 3 out}', '{fork_rebound: 3 out, fork_preload: 4}']))
    assert.equal(changed.kind, 'measure')
    assert.match(changed.step, /^measure the front: .* with the bike alone$/)
  })

  it('and holds again once everything was put back', () => {
    const back = `${sketchWith(['{fork_rebound: 3 out}', '{fork_rebound: 3 out, fork_preload: 4}'])}  - id: back\n    settings: {fork_preload: 0 flats in}\n`
    assert.equal(tries(advise(back)), 'sag/change: turn Fork preload: 8 turns in, to 8 turns in')
  })

  it('a fork that binds is freed before its sag is used', () => {
    assert.equal(advise(sketchWith(...sagRight, ['rider: [123, 119]', 'rider: [131, 111]']), 'as-found').topic, 'friction')
  })

  it('springs only where both sags say so beyond their uncertainty, and at least a step from what is fitted', () => {
    const weighed: [string, string] = ['  geometry:', '  axle_loads: {bike: {front: 90}, rider: {front: 150}}\n  geometry:']
    const soft = sketchWith(['{left: 3 out, right: 6 out}', '3 out'], ['fork_preload: 0 in', 'fork_preload: 6 in'], weighed, ['extended: 152, bike: [128, 122], rider: [118, 110]', 'extended: 152, bike: [149, 145], rider: [121, 117]'])
    const advice = advise(soft, 'as-found')
    assert.equal(advice.topic, 'springs')
    assert.match(advice.step, /^consider stiffer springs at the front: (10|1\d(\.5)?) N\/mm each leg/)
    assert.match(advice.evidence[0]!, /the bike alone would sag 5 mm, 10 mm below its window$/)
    const near = advise(sketchWith(...sagRight, ['bike: [138, 134]', 'bike: [139, 137]']), 'as-found')
    assert.notEqual(near.topic, 'springs')
  })

  it('nothing is built on sags that contradict the springs', () => {
    const weighed: [string, string] = ['  geometry:', '  axle_loads: {bike: {front: 90}, rider: {front: 150}}\n  geometry:']
    const advice = advise(sketchWith(...sagRight, weighed), 'as-found')
    assert.match(tries(advice), /^springs\/measure: read the lengths of the front again/)
  })

  it('then travel: bottomed is a step of compression more, little used a step less, within the adjuster', () => {
    const compression = (at: string): [string, string][] => [
      ['  shock_rebound:', '  fork_compression: {on: fork, legs: [left, right], controls: compression, counts: clicks, range: 20}\n  shock_rebound:'],
      ['      fork_height: 5', `      fork_height: 5\n      fork_compression: ${at}`],
    ]
    const bottomed = advise(sketchWith(...sagRight, ...compression('9 out'), ride('front_travel_used: 119')))
    assert.equal(tries(bottomed), 'travel/change: try more compression damping by the smallest step: Fork compression 1 click in, both legs, to 8 clicks out')
    assert.deepEqual(bottomed.expect, ['less than 118 mm used at the same place'])
    assert.match(advise(sketchWith(...sagRight, ...compression('9 out'), ride('front_travel_used: 50'))).step, /1 click out, both legs, to 10 clicks out$/)
    // One click from its seat it is never advised onto it.
    const atItsSeat = advise(sketchWith(...sagRight, ...compression('1 out'), ride('front_travel_used: 119')))
    assert.equal(atItsSeat.kind, 'measure')
    assert.match(tries(atItsSeat), /^travel\/measure: look at what holds the end of the front’s stroke: oil level, spring and bump stops/)
  })

  it('then oil, where nothing that is turned is left: a step of level with its ml, its force and its assumptions', () => {
    const air: [string, string] = ['spring_rate: 9.5}', 'spring_rate: 9.5, spring_preload: 10, air: {seal_diameter: 43, bore: 43, oil_level: 120, spring_volume: 40}}']
    const advice = advise(sketchWith(...sagRight, air, ride('front_travel_used: 119')))
    // S17: 10 mm of level in a 43 mm bore are 14.522 ml.
    assert.equal(tries(advice), 'travel/change: try 5 mm more oil in both legs: a level of 115 mm, which is 7.3 ml poured in each leg')
    assert.match(advice.expect[0]!, /^\d+ N more from the air of each leg at full travel/)
    assert.match(advise(sketchWith(...sagRight, air, ride('front_travel_used: 50'))).step, /^try 5 mm less oil in both legs: a level of 125 mm/)
    const rear = advise(sketchWith(...sagRight, ride('front_travel_used: 104, rear_travel_used: 130')))
    assert.match(tries(rear), /^travel\/measure: look at what holds the end of the rear’s stroke: spring and bump stop/)
  })

  it('speaks in the units asked for, the notebook’s own apart', () => {
    const { notebook, entry } = readEntry(ternSketch, 'run-1')
    const advice = adviseNext(notebook, entry, { ...fileUnits, length: 'in' })
    assert.match(advice.evidence[0]!, /rider sag of the front is 1\.5 in, 0\.12 in above the window of 0\.98 to 1\.38 in/)
    assert.deepEqual(advice.expect, ['rider sag about 1.18 in, bike alone about 0.75 in; the rate stays as it is'])
    assert.match(advice.step, /8 turns in/)
  })

  it('asks for the travel used where a ride tells nothing of it', () => {
    assert.match(tries(advise(sketchWith(...sagRight, ride('laps: 6')))), /^travel\/measure: put a cable tie on a fork tube/)
  })

  it('then rebound, by the bounce test and not without one', () => {
    assert.match(tries(advise(sketchWith(...sagRight))), /^rebound\/measure: push each end down once/)
    const bouncing = advise(sketchWith(...sagRight, ['reason: right leg', 'bounce: {front: [40, 30, 22], rear: [40, 8]}\n    reason: right leg']))
    assert.equal(tries(bouncing), 'rebound/change: try more rebound damping by the smallest step: Fork rebound 1 click in, both legs, to 2 clicks out')
    assert.match(bouncing.evidence[0]!, /^run-1: the front goes on bouncing after it is let go; it swings 7\d % past its rest/)
  })

  it('where nothing asks for a change it says so', () => {
    const advice = advise(sketchWith(...sagRight, ['reason: right leg', 'bounce: {front: [40, 10], rear: [40, 8]}\n    reason: right leg']))
    assert.equal(advice.kind, 'ride')
  })

  it('advises nothing on figures that cannot be', () => {
    assert.equal(advise(sketchWith(['travel: 120', 'travel: -120'])).topic, 'figures')
  })

  it('property: never past a range and never onto the seat of a damper', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 12 }), fc.integer({ min: 20, max: 50 }), (rebound, preload, sag) => {
      const text = sketchWith(['{left: 3 out, right: 6 out}', `${Math.min(rebound, 10)} out`], ['{fork_rebound: 3 out}', '{}\n    bounce: {front: [40, 30], rear: [40, 39]}'], ['fork_preload: 0 in', `fork_preload: ${preload} in`],
        ['bike: [128, 122], rider: [118, 110]', `bike: ${152 - sag + 11}, rider: ${152 - sag}`])
      const to = /to (\d+(?: \d\/\d)?|\d\/\d) (clicks?|turns?) (?:out|in)/.exec(advise(text).step)
      if (!to) return
      const [, at, unit] = to
      if (unit!.startsWith('click')) assert.ok(Number(at) >= 1 && Number(at) <= 22, at)
      else assert.ok(Number(at!.split(' ')[0]) <= 12, at)
    }), { numRuns: 25 })
  })
})

describe('adviceText', () => {
  it('is worded as a starting point, with its reasons, and with the caution wherever something is changed', () => {
    const text = adviceText(advise(ternSketch, 'run-1'))
    assert.match(text, /^A starting point: turn Fork preload: 8 turns in, to 8 turns in\.\n {2}because: as-found: rider sag of the front is 38 mm, 3 mm above the window/)
    assert.match(text, /the service manual comes first, and the first ride after it is a slow one\.\n$/)
    assert.doesNotMatch(adviceText(advise(sketchWith(...sagRight))), /One change at a time/)
  })
})

describe('adviceCard', () => {
  it('says the same as the command line, sentence by sentence', () => {
    for (const [text, key] of [[ternSketch, 'run-1'], [ternSketch, 'as-found'], [sketchWith(...sagRight), 'run-1']] as const) {
      const { notebook, entry } = readEntry(text, key)
      const card = adviceCard(notebook, entry)
      const lines = adviceText(adviseNext(notebook, entry)).trimEnd().split('\n').map((line) => line.trim().replace(/^(A starting point|To know more first|Nothing to change|because|expect|assumes): /, ''))
      assert.deepEqual(card.sections.flatMap((section) => section.lines).map((line) => line.toLowerCase()), lines.map((line) => line.toLowerCase()))
      assert.equal(card.title, `What next, after ${key}?`)
      assert.equal(card.sections.some(({ caution }) => caution), adviseNext(notebook, entry).kind === 'change')
    }
  })
})
