import assert from 'node:assert/strict'
import { messagesOf } from './check'

function crept(adjuster: string, left: string, found: string): string[] {
  return messagesOf('adjuster-crept', `format: 1
adjusters:
  it: {${adjuster}}
entries:
  - {id: set, settings: {it: ${left}}}
  - {id: found, as_found: true, settings: {it: ${found}}}
`)
}
const clicks = 'on: shock, controls: rebound, counts: clicks, range: 20'
const pair = `${clicks}, legs: [left, right]`

describe('adjuster-crept', () => {
  it('says how far and which way, in the adjuster’s own count', () => {
    assert.match(crept(clicks, '3 out', '5 out')[0]!, /found at 5 out, but left at 3 out in set; that is 2 clicks further out/)
    assert.match(crept(clicks, '5', '4 clicks out')[0]!, /1 click further in/)
    assert.match(crept('on: shock, controls: preload, counts: turns', '3', '2 1/2 in')[0]!, /0.5 turns further out/)
    assert.match(crept('on: shock, controls: preload, counts: steps', '3', '4')[0]!, /1 step higher/)
  })

  it('compares positions, not how they are written', () => {
    assert.deepEqual(crept(clicks, '3 out', '17 in'), [])
    assert.deepEqual(crept('on: shock, controls: preload, counts: turns', '1 1/2', '9 flats in'), [])
  })

  it('says once what both legs did alike', () => {
    const [message, ...more] = crept(pair, '3', '5')
    assert.match(message!, /It, both legs: found at 5/)
    assert.deepEqual(more, [])
  })

  it('tells legs apart that crept differently', () => {
    assert.deepEqual(crept(pair, '3', '{left: 5, right: 3}').map((message) => message.slice(0, 12)), ['It, left leg'])
    assert.equal(crept(pair, '{left: 3, right: 4}', '5').length, 2)
    assert.deepEqual(crept(pair, '3', '{left: 5, right: 6}').map((message) => message.slice(0, 13)), ['It, left leg:', 'It, right leg'])
  })

  it('names what to look at: what holds it, a valve, the clamps, or who changed it', () => {
    assert.match(crept(`${clicks}, held_by: ball`, '3', '4')[0]!, /Check its ball detent\.$/)
    assert.match(crept(`${clicks}, held_by: o_ring, condition: worn`, '3', '4')[0]!, /Check its O-ring, noted as worn\.$/)
    assert.match(crept('on: tyres, controls: tyre_pressure, counts: bar', '2.3', '2.1')[0]!, /check the valve/)
    assert.match(crept('on: fork, controls: fork_height, counts: mm', '5', '6')[0]!, /pinch bolts/)
    assert.match(crept('on: fork, controls: spring_rate, counts: N/mm', '9', '9.5')[0]!, /Someone changed it/)
  })
})
