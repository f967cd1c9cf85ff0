import assert from 'node:assert/strict'
import { findingsOf, fixedBy, messagesOf } from './check'

const machine = (facts: string, entries = '') => `format: 1\nmachine: {${facts}}\n${entries}`
const told = (code: string, facts: string, entries?: string) => messagesOf(code, machine(facts, entries))

describe('impossible-figure', () => {
  const code = 'impossible-figure'

  it('looks at every figure that only stands above zero, and names it', () => {
    const figures: [facts: string, name: RegExp][] = [
      ['front: {spring_rate: {left: 0}}', /^the spring rate of the left leg cannot be 0 N\/mm: it is more than zero$/],
      ['front: {air: {seal_diameter: 0}}', /^the seal diameter of the fork/], ['front: {air: {bore: 0}}', /^the bore of the fork/], ['front: {air: {oil_level: 0}}', /^the oil level of the fork/],
      ['rear: {travel: 0}', /^the travel of the rear/], ['geometry: {rear_radius: 0}', /^the rear tyre radius/], ['mass_height: 0', /^the height of the centre of mass/],
    ]
    for (const [facts, name] of figures) assert.match(told(code, facts)[0] ?? '', name, facts)
  })

  it('begins at 90° of rake, and knows no side', () => {
    const rake = (degrees: number) => told(code, `geometry: {rake: ${degrees}}`).length
    assert.deepEqual([89.9, 90, -89.9, -90].map(rake), [0, 1, 0, 1])
  })

  it('wants a coil wider than two wires', () => {
    const coil = (wire: number, outer: number) => told(code, `rear: {spring: {wire: ${wire}, outer_diameter: ${outer}}}`)
    assert.deepEqual(coil(10, 20.1), [])
    assert.match(coil(10, 20)[0]!, /^the outer diameter of the rear spring cannot be 20 mm: it is more than twice its wire$/)
    assert.deepEqual([told(code, 'rear: {spring: {wire: 10}}'), told(code, 'rear: {spring: {outer_diameter: 20}}')], [[], []])
  })

  it('tells a wire or a coil that is nothing once, as that', () => {
    const coil = (wire: number, outer: number) => told(code, `rear: {spring: {wire: ${wire}, outer_diameter: ${outer}}}`).map((message) => message.replace(/ cannot.*: /, ': '))
    assert.deepEqual(coil(10, 0), ['the outer diameter of the rear spring: it is more than zero'])
    assert.deepEqual(coil(0, 0), ['the wire of the rear spring: it is more than zero', 'the outer diameter of the rear spring: it is more than zero'])
    assert.deepEqual(coil(0, -1).length, 2)
  })

  it('wants the rear lifted by less than the wheelbase, where that is one', () => {
    const lift = (mm: number, wheelbase: number) => told(code, `geometry: {wheelbase: ${wheelbase}}, axle_loads: {bike: {lift: ${mm}}}`).filter((message) => /less than the wheelbase/.test(message)).length
    assert.deepEqual([lift(1399, 1400), lift(1400, 1400), lift(1400, 0), lift(1400, -1)], [0, 1, 0, 0])
  })

  it('points at the weighing of an entry in the grid', () => {
    const text = machine('name: Tern 650', 'entries: [{id: a, as_found: true, axle_loads: {rider: {rear: 0}}}, {id: b}]\n')
    assert.deepEqual(findingsOf(text).filter((finding) => finding.code === code).map(({ place }) => place), [{ entry: 'a', row: 'axle_loads.rider.rear' }])
  })
})

describe('unusual-steering', () => {
  it('asks whether a rake was told from the horizontal only where it would then be one', () => {
    assert.match(told('unusual-steering', 'geometry: {rake: 66}')[0]!, /if it was told from the horizontal, it is 24°$/)
    assert.match(told('unusual-steering', 'geometry: {rake: 80}')[0]!, /\)$/)
  })

  it('leaves what cannot be at all to another rule', () => {
    assert.deepEqual(told('unusual-steering', 'geometry: {rake: 90}'), [])
    assert.equal(told('unusual-steering', 'geometry: {rake: 89}').length, 1)
  })
})

describe('unusable-window', () => {
  const code = 'unusable-window'
  const window = (ends: string) => machine(`front: {travel: 120, targets: {rider_sag: ${ends}}}`)

  it('says what is wrong with it, from its first end to its second', () => {
    const text = window('[35, 30]')
    const [{ message, range }] = findingsOf(text).filter((finding) => finding.code === code) as [ReturnType<typeof findingsOf>[number]]
    assert.match(message, /runs from more to less/)
    assert.equal(text.slice(range.start, range.end), '35, 30')
    assert.match(messagesOf(code, window('[8 %, 12]'))[0]!, /in mm, or both in %/)
  })

  it('swaps the two ends', () => {
    assert.equal(fixedBy(code, window('[35, 30]')), window('[30, 35]'))
  })

  it('takes one that begins where it ends, and says nothing of what is no window', () => {
    for (const ends of ['[30, 30]', '[30]', '30', '{0: 35, 1: 30}', '[thirty, 20]', '[30, twenty]']) assert.deepEqual(messagesOf(code, window(ends)), [], ends)
  })
})

describe('leverage-not-rising', () => {
  const rows = (...table: string[]) => told('leverage-not-rising', `rear: {leverage: [${table.join(', ')}]}`)

  it('says which row does not rise from which, in wheel or in shock travel', () => {
    assert.match(rows('[0, 0]', '[40, 18]', '[30, 20]')[0]!, /^leverage: \[30, 20\] does not rise from \[40, 18\];/)
    assert.match(rows('[0, 0]', '[40, 18]', '[50, 17]')[0]!, /^leverage: \[50, 17\] does not rise from \[40, 18\];/)
  })

  it('does not take standing still for rising', () => {
    assert.match(rows('[0, 0]', '[40, 18]', '[40, 20]')[0]!, /\[40, 20\] does not rise/)
    assert.match(rows('[0, 0]', '[40, 18]', '[50, 18]')[0]!, /\[50, 18\] does not rise/)
  })

  it('needs two rows, and figures', () => {
    assert.deepEqual([rows('[0, 0]'), rows(), rows('[0, 0]', '[40, eighteen]', '[30, 17]'), rows('[0, 0]', '[40]'), told('leverage-not-rising', 'rear: {leverage: 2}')], [[], [], [], [], []])
    assert.equal(rows('[10, 10]', '[5, 20]').length, 1)
  })
})

describe('rider-adds-nothing', () => {
  const code = 'rider-adds-nothing'
  const loads = (bike: number, rider: number) => `axle_loads: {bike: {rear: ${bike}}, rider: {rear: ${rider}}}`

  it('says both loads, and speaks where they are alike too', () => {
    assert.match(told(code, loads(90, 80))[0]!, /^Rear: 80 kg with the rider aboard is not more than 90 kg without/)
    assert.deepEqual([told(code, loads(90, 90)).length, told(code, loads(90, 90.1)).length], [1, 0])
  })

  it('compares what an entry weighs with what the machine has of the other', () => {
    const entry = (weighed: string) => `entries: [{id: a, as_found: true, axle_loads: {${weighed}}}]\n`
    assert.match(told(code, loads(90, 120), entry('rider: {rear: 90}'))[0]!, /^Rear: 90 kg .* 90 kg without/)
    assert.deepEqual(told(code, loads(90, 120), entry('rider: {rear: 91}')), [])
    assert.match(told(code, loads(90, 120), entry('bike: {rear: 130}'))[0]!, /^Rear: 120 kg .* 130 kg without/)
    assert.deepEqual(told(code, 'name: Tern 650', entry('bike: {rear: 130}')), [])
    assert.deepEqual(told(code, 'name: Tern 650', entry('rider: {rear: 130}')), [])
    assert.equal(told(code, loads(90, 80), entry('bike: {front: 90}')).length, 1)
    assert.equal(told(code, loads(90, 80), 'entries: [{id: a, as_found: true}]\n').length, 1)
  })
})

describe('no-room-for-air', () => {
  const fork = 'front: {travel: 120, air: {seal_diameter: 43, bore: 38, oil_level: LEVEL, spring_volume: 45}}'
  const text = (level: number, more = '') => machine(fork.replace('LEVEL', String(level)), more)

  it('points at the level of the machine once, however many entries it holds for', () => {
    const both = text(20, 'entries: [{id: a, as_found: true}, {id: b, as_found: true}]\n')
    const found = findingsOf(both).filter(({ code }) => code === 'no-room-for-air')
    assert.deepEqual(found.map(({ range, place }) => [both.slice(range.start, range.end), place]), [['20', undefined]])
  })

  it('points at the entry that set the level, and at its cell', () => {
    const set = text(130, 'adjusters: {a_tyre: {on: tyres, controls: tyre_pressure, counts: bar}, oil: {on: fork, controls: oil_level, counts: mm}, height: {on: fork, controls: fork_height, counts: mm}}\nentries: [{id: a, as_found: true, settings: {a_tyre: 2.3, height: 5, oil: 30}}, {id: b, as_found: true}]\n')
    const found = findingsOf(set).filter(({ code }) => code === 'no-room-for-air')
    assert.deepEqual(found.map(({ range, place }) => [set.slice(range.start, range.end), place]), [['30', { entry: 'a', row: 'settings/oil' }]])
  })
})
