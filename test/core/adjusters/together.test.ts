import assert from 'node:assert/strict'
import { cautionsFor } from '../../../src/core/adjusters/cautions'
import { neighbourWords } from '../../../src/core/adjusters/together'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { findingsOf, messagesOf } from '../rules/check'

const text = (...adjusters: string[]) => `format: 1\nadjusters:\n${adjusters.map((each) => `  ${each}\n`).join('')}`
const screw = (more = '') => `screw: {label: 'Low speed', on: shock, controls: low_speed_compression, counts: clicks, tool: flat screwdriver${more}}`
const hex = (more = '') => `hex: {label: 'High speed', on: shock, controls: high_speed_compression, counts: turns, tool: 17 mm spanner${more}}`
const words = (name: string, ...adjusters: string[]) => neighbourWords(readNotebook(text(...adjusters)).adjusters.get(name)!)

describe('two adjusters in one place', () => {
  it('a screw inside a hex: each card has the other held still', () => {
    const both = [screw(', inside: hex'), hex()]
    assert.deepEqual(words('hex', ...both), ['‘Low speed’ sits inside it and must not turn along: hold it still (flat screwdriver) while you turn this, and count it again afterwards.'])
    assert.deepEqual(words('screw', ...both), ['It sits inside ‘High speed’, which must not turn along: hold that still (17 mm spanner) while you turn this.'])
    assert.deepEqual(findingsOf(text(...both)), [])
  })

  it('is what is said first among the cautions, so that a list of turns says it too', () => {
    const { adjusters } = readNotebook(text(screw(', inside: hex'), hex()))
    assert.match(cautionsFor(adjusters.get('hex')!)[0]!, /must not turn along/)
  })

  it('in a place of the same name they are told apart, though nobody wrote which sits in which', () => {
    const both = [screw(", place: 'Reservoir, the screw'"), hex(", place: 'reservoir , the hex'")]
    assert.deepEqual(words('hex', ...both), ['‘Low speed’ (flat screwdriver) is in the same place: make sure which of the two you turn, and that the other stays where it is.'])
    assert.deepEqual(words('screw', ...both), ['‘High speed’ (17 mm spanner) is in the same place: make sure which of the two you turn, and that the other stays where it is.'])
  })

  it('are not in one place at two ends, in two legs, facing two ways, in places without a name, or where nothing is turned', () => {
    const apart: [string, string][] = [
      [screw(', place: cap'), hex(', place: foot')],
      [screw(', place: cap').replace('on: shock', 'on: fork'), hex(', place: cap')],
      [screw(', place: cap, legs: [left]'), hex(', place: cap, legs: [right]')],
      [screw(', place: foot, faces: up'), hex(', place: foot, faces: down')],
      [screw(), hex()],
      [screw(', place: clamp'), 'hex: {on: shock, controls: ride_height, counts: mm, place: clamp}'],
    ]
    for (const both of apart) for (const name of ['screw', 'hex']) assert.deepEqual(words(name, ...both), [], both.join())
  })

  it('each of three is told of the other two', () => {
    const three = [screw(', place: cap, inside: hex'), hex(', place: cap'), 'knob: {label: Knob, on: shock, controls: preload, counts: turns, place: cap}']
    assert.equal(words('screw', ...three).length, 2)
    assert.match(words('screw', ...three).join(), /inside ‘High speed’.*‘Knob’ is in the same place/)
  })
})

describe('what an adjuster says it sits inside of', () => {
  const problems = (...adjusters: string[]) => messagesOf('adjuster-contradiction', text(...adjusters))

  it('must be another one of this machine, that is turned, in the same leg, and not the other way round too', () => {
    assert.deepEqual(problems(screw(', inside: hexx'), hex()), ['Low speed: it sits inside ‘hexx’, but this machine has no adjuster of that name'])
    assert.deepEqual(problems(screw(', inside: screw')), ['Low speed: it cannot sit inside itself (`inside`)'])
    assert.deepEqual(problems(screw(', inside: hex, legs: [left]'), hex(', legs: [right]')), ['Low speed: it sits inside ‘High speed’, which is in the other leg'])
    assert.deepEqual(problems(screw(', inside: air'), 'air: {on: fork, controls: air_pressure, counts: psi}'), ['Low speed: only what is turned can sit inside another (`inside: air`)'])
    assert.equal(problems(screw(', inside: hex'), hex(', inside: screw')).length, 2)
    for (const name of ['__proto__', 'constructor']) assert.equal(problems(screw(`, inside: ${name}`)).length, 1)
  })

  it('does not keep its positions from being judged', () => {
    const codes = findingsOf(`${text(screw(', inside: nowhere, range: 20'))}entries: [{id: a, as_found: true, settings: {screw: 30}}]\n`).map(({ code }) => code)
    assert.deepEqual(codes, ['adjuster-contradiction', 'beyond-range'])
  })
})
