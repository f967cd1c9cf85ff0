import assert from 'node:assert/strict'
import { findingsOf, fixedBy, messagesOf } from './check'

const entry = (rest: string) => `format: 1\nentries:\n  - {id: a, as_found: true, ${rest}}\n`
const told = (text: string) => messagesOf('unreadable-value', text)

describe('unreadable-value', () => {
  it('calls a cell by its label and a fact of the machine by its keys', () => {
    assert.match(told(entry('ride: {front_tyre_hot: high}'))[0]!, /^[A-Z][^`]*: ‘high’ cannot be read: /)
    assert.match(told('format: 1\nmachine: {front: {spring_rate: {left: soft}}}\n')[0]!, /^`machine\.front\.spring_rate\.left`: ‘soft’ cannot be read: /)
    assert.match(told('format: 1\nrider: {kitted_mass: heavy}\n')[0]!, /^`rider\.kitted_mass`: /)
    assert.match(told(entry('axle_loads: {bike: {front: heavy}}'))[0]!, /: ‘heavy’ cannot be read: /)
  })

  it('shows how such a value is written, an altitude in metres', () => {
    assert.match(told(entry('conditions: {air: mild}'))[0]!, /; write it like 21 or 70 °F$/)
    assert.match(told(entry('conditions: {altitude: high}'))[0]!, /; write it like 650 m$/)
    assert.match(told(entry('ride: {front_tyre_hot: high}'))[0]!, /; write it like 2\.3 or 33 psi$/)
    assert.match(told(entry('sag: {front: {extended: long}}'))[0]!, /; write it like 128 or 5 in$/)
    assert.match(told('format: 1\nmachine: {geometry: {rake: steep}}\n')[0]!, /; write it like 24\.5$/)
  })

  it('points at the cell in the grid, and at none for the machine', () => {
    const placeOf = (text: string) => findingsOf(text).find(({ code }) => code === 'unreadable-value')?.place
    assert.deepEqual(placeOf(entry('ride: {front_tyre_hot: high}')), { entry: 'a', row: 'ride.front_tyre_hot' })
    assert.deepEqual(placeOf(entry('sag: {rear: {bike: [low, 530]}}')), { entry: 'a', row: 'sag.rear.bike.lifted' })
    assert.equal(placeOf('format: 1\nmachine: {geometry: {rake: steep}}\n'), undefined)
  })

  it('reads bare numbers, and waits for what is not written yet', () => {
    assert.deepEqual(told(entry('sag: {front: {extended: 150, bike: null}}, conditions: {air: }')), [])
  })

  it('writes a comma as a point where that is what was meant', () => {
    assert.equal(fixedBy('unreadable-value', entry('ride: {front_tyre_hot: "2,4"}')), entry('ride: {front_tyre_hot: 2.4}'))
  })
})
