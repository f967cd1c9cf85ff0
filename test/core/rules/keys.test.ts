import assert from 'node:assert/strict'
import { codesOf, findingsOf, messagesOf } from './check'

const ride = (written: string, more = '') => `format: 1\n${more}entries:\n  - {id: one, as_found: true, ride: ${written}}\n`
const keyFindings = (text: string) => findingsOf(text).filter(({ code }) => code === 'unknown-key')
const cut = (written: string) => keyFindings(ride(written)).map(({ message, fixes = [] }) => `${/cuts the sentence/.test(message) ? 'cut' : 'unknown'}${fixes.length > 0 ? ', fixed' : ''}`)

describe('unknown-key', () => {
  it('takes what follows a comma for the rest of a sentence only where it can be one', () => {
    assert.deepEqual(cut('{felt: better, but lazy}'), ['cut, fixed'])
    assert.deepEqual(cut('{felt: better, "but lazy"}'), ['unknown'])
    assert.deepEqual(cut('{felt: better, but lazy: {a: 1}}'), ['unknown'])
    assert.deepEqual(cut('{felt: better, but: lazy}'), ['unknown'])
    assert.deepEqual(cut('{but lazy, felt: better}'), ['unknown'])
    assert.deepEqual(keyFindings('format: 1\nentries:\n  - id: one\n    as_found: true\n    ride:\n      felt: better\n      but lazy:\n').map(({ message }) => message), ['‘but lazy’ is no key of the format here, so nothing is done with it'])
  })

  it('puts quotes around nothing but plain words', () => {
    assert.deepEqual(cut('{felt: "better", but lazy}'), ['cut'])
    assert.deepEqual(cut('{felt: [better], but lazy}'), ['cut'])
  })

  it('looks at adjusters whatever they are called, and at no key of an entry twice', () => {
    assert.deepEqual(keyFindings('format: 1\nadjusters:\n  entries: {on: shock, controls: rebound, counts: clicks, colour: red}\n').length, 1)
    assert.deepEqual(keyFindings(ride('{felt: good, weather: wet}')).length, 1)
  })
})

describe('unknown-parent', () => {
  it('speaks of an entry without a name as well', () => {
    assert.deepEqual(messagesOf('unknown-parent', 'format: 1\nentries:\n  - {id: one, as_found: true}\n  - {from: run-9, reason: back}\n'), ['no entry is called ‘run-9’, so nothing is carried into this one'])
  })
})

describe('unknown-rule', () => {
  it('has nothing to say of a code that is yet to be written', () => {
    assert.deepEqual(messagesOf('unknown-rule', 'format: 1\nrules:\n  "": off\n'), [])
    assert.equal(messagesOf('unknown-rule', 'format: 1\nrules:\n  legs-difer: off\n').length, 1)
  })
})

describe('unreadable-value', () => {
  it('takes no number that is none', () => {
    assert.equal(messagesOf('unreadable-value', 'format: 1\nmachine: {front: {travel: .inf}}\n').length, 1)
  })

  it('gives an example where there is one', () => {
    const told = (machine: string) => messagesOf('unreadable-value', `format: 1\nmachine: ${machine}\n`)[0]!
    assert.match(told('{front: {travel: long}}'), /write it like 128 or 5 in$/)
    assert.doesNotMatch(told('{front: {air: {spring_volume: much}}}'), /write it like/)
  })
})

describe('unusual-steering', () => {
  const told = (rake: string) => messagesOf('unusual-steering', `format: 1\nmachine: {geometry: {rake: ${rake}}}\n`)

  it('asks whether it was told from the horizontal only where that would be usual', () => {
    assert.match(told('66')[0]!, /if it was told from the horizontal, it is 24°$/)
    assert.doesNotMatch(told('15')[0]!, /horizontal/)
  })

  it('leaves to others what no angle can be', () => {
    for (const rake of ['90', '120', '-90']) assert.deepEqual(told(rake), [], rake)
    assert.equal(told('89').length, 1)
  })
})

describe('unusable-window', () => {
  it('says nothing of a window that is half written', () => {
    for (const window of ['30', '[30]', '[30, ]', '{from: 40, to: 30}', '[[40, 30]]', '[40, soft]']) assert.ok(!codesOf(`format: 1\nmachine: {front: {targets: {rider_sag: ${window}}}}\n`).includes('unusable-window'), window)
    assert.deepEqual(messagesOf('unusable-window', 'format: 1\nmachine: {front: {targets: {rider_sag: [40, 30]}}}\n').length, 1)
  })
})

describe('changes that rules count', () => {
  const changed = (first: string, second: string, facts = '') => codesOf(`format: 1\nadjusters:\n  a: {on: shock, controls: rebound, counts: clicks${facts}}\n  b: {on: shock, controls: compression, counts: clicks}\nentries:\n  - {id: one, as_found: true, settings: {a: ${first}, b: 4 out}}\n  - {id: two, reason: try, settings: {a: ${second}, b: 5 out}}\n`).includes('several-changes')

  it('are those between positions that can be read', () => {
    assert.ok(changed('3 out', '4 out'))
    assert.ok(!changed('about three', '4 out'))
    assert.ok(!changed('3 out', 'four or so'))
  })

  it('are not made of facts that contradict one another', () => {
    assert.ok(changed('1 turn out', '5 out', ', clicks_per_turn: 4, mm_per_click: 0.25'))
    assert.ok(!changed('1 turn out', '5 out', ', clicks_per_turn: 4, mm_per_click: 0.25, mm_per_turn: 1.5'))
    assert.ok(changed('4 out', '5 out', ', clicks_per_turn: 4, mm_per_click: 0.25, mm_per_turn: 1.5'))
  })
})

describe('what is written elsewhere as well', () => {
  it('is not taken out with an acceptance that accepts nothing', () => {
    const fixes = (text: string) => findingsOf(text).filter(({ code }) => code === 'accepted-for-nothing').map((finding) => finding.fixes?.length ?? 0)
    const own = '  - {finding: no-reason, reason: x}\n  - {finding: several-changes, reason: y}\n'
    assert.deepEqual(fixes(`format: 1\naccepted:\n${own}`), [1, 1])
    assert.deepEqual(fixes(`format: 1\nmine: &x\n${own}accepted: *x\n`), [0, 0])
    assert.deepEqual(fixes(`format: 1\naccepted: &x\n${own}mine: *x\n`), [0, 0])
    assert.deepEqual(fixes(`format: 1\naccepted:\n${own.replace('{', '&x {')}mine: *x\n`), [0, 0])
  })
})

describe('below-zero', () => {
  it('looks at an entry that has one group of readings and no other', () => {
    assert.equal(messagesOf('below-zero', 'format: 1\nentries:\n  - {id: one, as_found: true, ride: {front_travel_used: -3}}\n').length, 1)
  })
})

describe('no-room-for-air', () => {
  it('speaks of the machine’s oil level where the adjuster counts something else', () => {
    const text = 'format: 1\nmachine:\n  front:\n    travel: 120\n    air: {seal_diameter: 43, bore: 38, oil_level: 20, spring_volume: 45}\nadjusters:\n  fork_oil: {on: fork, controls: oil_level, counts: steps}\nentries:\n  - {id: a, as_found: true, settings: {fork_oil: 3}}\n'
    const found = findingsOf(text).find(({ code }) => code === 'no-room-for-air')!
    assert.deepEqual([text.slice(found.range.start, found.range.end), found.place?.row], ['20', undefined])
  })
})
