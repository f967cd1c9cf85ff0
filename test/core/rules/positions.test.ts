import assert from 'node:assert/strict'
import { findingsOf, fixedBy, messagesOf } from './check'

/** An adjuster as it is defined, with what an entry writes for it. */
function written(adjuster: string, position: string, more = ''): string {
  return `format: 1\nadjusters:\n  it: {${adjuster}}\nentries:\n  - {id: one, as_found: true, settings: {it: ${position}}${more}}\n`
}
const clicks = 'on: shock, controls: rebound, counts: clicks'
const told = (code: string, adjuster: string, position: string, more?: string) => messagesOf(code, written(adjuster, position, more))

describe('below-zero', () => {
  it('says from which end an adjuster is counted, where it has one', () => {
    assert.match(told('below-zero', clicks, '-2')[0]!, /below zero: it is counted up from fully closed$/)
    assert.match(told('below-zero', 'on: shock, controls: preload, counts: turns', '-2')[0]!, /below zero: it is counted up from fully open$/)
    assert.match(told('below-zero', 'on: tyres, controls: tyre_pressure, counts: bar', '-2')[0]!, /below zero$/)
  })

  it('lets heights, and the numbers of a dial that is counted from no end, lie on either side', () => {
    assert.deepEqual(told('below-zero', 'on: fork, controls: fork_height, counts: mm', '-2'), [])
    assert.deepEqual(told('below-zero', 'on: shock, controls: low_speed_compression, counts: dial', '-2'), [])
    assert.equal(told('below-zero', 'on: shock, controls: low_speed_compression, counts: dial, counted: out', '-2').length, 1)
  })

  it('has nothing against nought', () => {
    assert.deepEqual(told('below-zero', clicks, '0', ', ride: {front_travel_used: 0}, sag: {front: {extended: 0}}'), [])
  })
})

describe('beyond-range', () => {
  const ranged = `${clicks}, range: 20, range_is: measured`

  it('begins past the last click, not at it', () => {
    assert.deepEqual(told('beyond-range', ranged, '20'), [])
    assert.match(told('beyond-range', ranged, '21')[0]!, /21 is more than its measured range of 20 clicks/)
  })

  it('counts from the other end where that was counted from, to its own end and not past it', () => {
    assert.deepEqual(told('beyond-range', ranged, '20 in'), [])
    assert.equal(told('beyond-range', ranged, '21 in').length, 1)
    assert.deepEqual(told('beyond-range', ranged, '0 in'), [])
  })
})

describe('fraction-of-step', () => {
  const of = (adjuster: string, position: string) => told('fraction-of-step', adjuster, position)[0] ?? ''

  it('names the two places it lies between: clicks, numbers of a dial, or what the adjuster holds', () => {
    assert.match(of(clicks, '7.5'), /lies between two clicks;/)
    assert.match(of('on: shock, controls: low_speed_compression, counts: dial', '3.5'), /lies between two numbers;/)
    assert.match(of('on: fork, controls: preload, counts: rings', '3.5'), /lies between two rings;/)
    assert.match(of(`${clicks}, step: 0.5`, '3.25'), /lies between two places it holds, every 0\.5 clicks;/)
  })

  it('offers the place on either side, in steps of the adjuster', () => {
    const text = written(`${clicks}, step: 0.5`, '3.25')
    assert.deepEqual([0, 1].map((at) => fixedBy('fraction-of-step', text, at)), [text.replace('3.25', '3'), text.replace('3.25', '3.5')])
  })

  it('leaves what turns freely alone', () => {
    assert.equal(of('on: fork, controls: preload, counts: turns', '4.3'), '')
    assert.equal(of('on: tyres, controls: tyre_pressure, counts: bar', '2.35'), '')
  })
})

describe('left-at-stop', () => {
  const ranged = `${clicks}, range: 20`
  const of = (adjuster: string, position: string, asFound = true) =>
    findingsOf(written(adjuster, position).replace('as_found: true', `as_found: ${asFound}, reason: r`)).filter(({ code }) => code === 'left-at-stop').map(({ severity, message }) => `${severity}: ${message}`)

  it('says at which stop, and whether it was found or left there', () => {
    assert.match(of(ranged, '0')[0]!, /^info: .*was found fully closed: .*open it before riding/)
    assert.match(of(ranged, '0', false)[0]!, /^warning: .*is left fully closed: .*open it before riding/)
    assert.match(of(ranged, '20')[0]!, /^info: .*was found fully open: it hardly damps/)
    assert.match(of(ranged, '20', false)[0]!, /^info: .*is left fully open: it hardly damps/)
  })

  it('knows the far end only with the range, and nought from an end without', () => {
    assert.deepEqual(of(clicks, '20'), [])
    assert.match(of(clicks, '0 in')[0]!, /fully open/)
    assert.match(of(clicks, '0 out')[0]!, /fully closed/)
  })

  it('speaks of damping alone, and of no adjuster without ends', () => {
    assert.deepEqual(of('on: fork, controls: preload, counts: turns, range: 12', '0'), [])
    assert.deepEqual(of('on: shock, controls: rebound, counts: dial', '0'), [])
    assert.deepEqual(of('on: shock, controls: rebound, counts: dial', '0 out'), [])
  })

  it('lets a steering damper be open, not closed', () => {
    const damper = 'on: chassis, controls: steering_damper, counts: clicks, range: 24'
    assert.deepEqual(of(damper, '24'), [])
    assert.equal(of(damper, '0').length, 1)
  })
})

describe('wrong-end', () => {
  const ranged = `${clicks}, range: 20`

  it('says both ends and what the position is from the adjuster’s own', () => {
    assert.match(told('wrong-end', ranged, '3 in')[0]!, /is counted out from fully closed, and ‘3 in’ is counted in from fully open: that is 17 clicks out$/)
    assert.match(told('wrong-end', clicks, '3 in')[0]!, /with its `range` this could be converted$/)
  })

  it('converts as far as the adjuster’s own end, and offers nothing past it', () => {
    assert.match(told('wrong-end', ranged, '20 in')[0]!, /: that is 0 clicks out$/)
    assert.match(told('wrong-end', ranged, '21 in')[0]!, /is counted in from fully open$/)
  })

  it('takes a stop that is named in words for that place, where the range says where it is', () => {
    assert.deepEqual(told('wrong-end', ranged, 'fully open'), [])
    assert.equal(told('wrong-end', clicks, 'fully open').length, 1)
    assert.equal(told('wrong-end', ranged, '0 in').length, 1)
    assert.equal(told('wrong-end', 'on: shock, controls: high_speed_compression, counts: turns, range: 3', '½ turn in').length, 1)
  })

  it('leaves a count in another unit to the rule about units', () => {
    assert.deepEqual(told('wrong-end', ranged, '2 turns in'), [])
  })
})

describe('wrong-unit', () => {
  it('says which fact would let it be converted, where one would', () => {
    assert.match(told('wrong-unit', clicks, '2 turns out')[0]!, /counts in clicks?, not in turns?; with `[a-z_]+` on the adjuster it could be converted$/)
    assert.match(told('wrong-unit', clicks, '2 bar')[0]!, /counts in clicks?, not in bar$/)
  })
})
