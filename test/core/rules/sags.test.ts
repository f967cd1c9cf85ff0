import assert from 'node:assert/strict'
import { findingsOf, fixedBy, messagesOf } from './check'

/** A front of 120 mm with a window of 30 to 35 mm for the rider and 20 to 25 mm without, and what was measured of it. */
const notebook = (front: string, machine = 'travel: 120, ') =>
  `format: 1\nmachine: {use: track, front: {${machine}targets: {rider_sag: [30, 35], static_sag: [20, 25]}}}\nentries:\n  - {id: one, as_found: true, sag: {front: {${front}}}}\n`
const told = (code: string, front: string, machine?: string) => messagesOf(code, notebook(front, machine))

describe('the windows of sag', () => {
  it('say how far outside, and which way to go', () => {
    assert.match(told('rider-sag-window', 'extended: 150, rider: 122')[0]!, /^Front rider sag \(rider aboard\): 28 mm is 2 mm below the window of 30 to 35 mm .*Take preload or air off/)
    assert.match(told('rider-sag-window', 'extended: 150, rider: 112')[0]!, /^Front rider sag \(rider aboard\): 38 mm is 3 mm above the window of 30 to 35 mm .*Add preload or air/)
    assert.match(told('static-sag-window', 'extended: 150, bike: 132')[0]!, /^Front static sag \(bike alone\): 18 mm is 2 mm below the window of 20 to 25 mm .*a spring too soft/)
    assert.match(told('static-sag-window', 'extended: 150, bike: 122')[0]!, /^Front static sag \(bike alone\): 28 mm is 3 mm above the window of 20 to 25 mm .*a spring too stiff/)
  })

  it('count both of their ends as within', () => {
    assert.deepEqual([...told('rider-sag-window', 'extended: 150, rider: 120'), ...told('rider-sag-window', 'extended: 150, rider: 115')], [])
  })

  it('say of no sag at all that it is too little, and of one below zero or beyond the travel nothing', () => {
    assert.equal(told('rider-sag-window', 'extended: 150, rider: 150').length, 1)
    assert.equal(told('rider-sag-window', 'extended: 150, rider: 151').length, 0)
    assert.equal(told('rider-sag-window', 'extended: 150, rider: 30').length, 1)
    assert.equal(told('rider-sag-window', 'extended: 150, rider: 29').length, 0)
  })

  it('need no travel where the window is in mm', () => {
    assert.equal(told('rider-sag-window', 'extended: 150, rider: 112', '').length, 1)
  })

  it('point at the length read after lifting, and at the other where that is the only one', () => {
    const rowOf = (front: string) => findingsOf(notebook(front)).find(({ code }) => code === 'rider-sag-window')?.place?.row
    assert.equal(rowOf('extended: 150, rider: [112, 108]'), 'sag.front.rider.lifted')
    assert.equal(rowOf('extended: 150, rider: {pushed: 112}'), 'sag.front.rider.pushed')
  })
})

describe('sag-beyond-travel', () => {
  it('begins past the travel, and says both', () => {
    assert.deepEqual(told('sag-beyond-travel', 'extended: 150, rider: 30'), [])
    assert.match(told('sag-beyond-travel', 'extended: 150, rider: 29')[0]!, /^Front: a sag of 121 mm is more than its travel of 120 mm/)
  })
})

describe('rider-sag-below-static', () => {
  it('says both sags, and speaks only where the rider’s is the lesser', () => {
    assert.match(told('rider-sag-below-static', 'extended: 150, bike: 120, rider: 121')[0]!, /^Front: 29 mm of sag with the rider is less than 30 mm alone/)
    assert.deepEqual(told('rider-sag-below-static', 'extended: 150, bike: 120, rider: 120'), [])
  })

  it('needs both, and takes a reading that was only pushed', () => {
    assert.deepEqual([...told('rider-sag-below-static', 'extended: 150, bike: 120'), ...told('rider-sag-below-static', 'extended: 150, rider: 120')], [])
    assert.equal(told('rider-sag-below-static', 'extended: 150, bike: 120, rider: {pushed: 125}').length, 1)
    assert.deepEqual(told('rider-sag-below-static', 'extended: 150, bike: 120, rider: 160'), [])
  })
})

describe('the ends', () => {
  it('are told apart', () => {
    assert.match(messagesOf('sag-longer-than-extended', notebook('extended: 150').replace('sag: {front: {', 'sag: {rear: {bike: 151, '))[0]!, /^Rear: /)
  })
})

describe('sag-longer-than-extended', () => {
  const code = 'sag-longer-than-extended'

  it('says both lengths as they were written, and begins past the extended one', () => {
    assert.match(told(code, 'extended: 150, bike: 15.1 cm')[0]!, /^Front: 15\.1 cm loaded is longer than 150 mm extended/)
    assert.deepEqual(told(code, 'extended: 150, bike: 150'), [])
    assert.deepEqual(told(code, 'bike: 150, rider: 140'), [])
  })

  it('offers to swap only what then explains every length', () => {
    const text = notebook('extended: 120, bike: 150, rider: 110')
    assert.equal(fixedBy(code, text), notebook('extended: 150, bike: 120, rider: 110'))
    const both = notebook('extended: 120, bike: 150, rider: 140')
    assert.deepEqual(findingsOf(both).filter((finding) => finding.code === code).map(({ fixes = [] }) => fixes.length), [1, 0])
  })
})

describe('bottomed', () => {
  const used = (mm: number) => messagesOf('bottomed', `format: 1\nmachine: {front: {travel: 120}}\nentries:\n  - {id: one, as_found: true, ride: {front_travel_used: ${mm}}}\n`)[0]

  it('says how much was left, or how much more than there is was used', () => {
    assert.match(used(119)!, /^Front: the travel was used up \(1 mm left\); ./)
    assert.match(used(120)!, /\(0 mm left\)/)
    assert.match(used(123)!, /\(3 mm more than there is: the tie slipped, the stop gave, or the travel is noted wrong\)/)
  })
})

describe('swings-grow', () => {
  it('says of a swing of zero to leave it out, at that swing, and of the others to put them in order', () => {
    const bounce = (heights: string) => `format: 1\nentries:\n  - {id: one, as_found: true, bounce: {front: [${heights}]}}\n`
    const found = (heights: string) => findingsOf(bounce(heights)).filter(({ code }) => code === 'swings-grow').map(({ message, range }) => `${message.slice(0, 29)} at ${bounce(heights).slice(range.start, range.end)}`)
    assert.deepEqual(found('30, 12, 0'), ['Front: a swing of zero is no  at 0'])
    assert.deepEqual(found('10, 20, 40'), ['Front: these swings do not di at 10, 20, 40'])
    assert.deepEqual(found('40, 20, 10'), [])
  })
})
