import assert from 'node:assert/strict'
import { codesOf, findingsOf, fixedBy, source } from './check'

const twoAdjusters = source`
  format: 1
  adjusters:
    fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks}
    fork_compression: {on: fork, legs: [left, right], controls: compression, counts: clicks}
  entries:
    - id: one
      as_found: true
      settings: {fork_rebound: {left: 3, right: 6}, fork_compression: {left: 5, right: 4}}
    - id: two
      as_found: true
      settings: {fork_rebound: {left: 3, right: 6}}
`
const accepting = (...lines: string[]) => codesOf(`${twoAdjusters}accepted:\n${lines.map((line) => `  - {${line}}\n`).join('')}`)
const differ = 'legs-differ'

describe('an accepted finding', () => {
  it('is not reported any more, wherever it is found', () => {
    assert.deepEqual(codesOf(twoAdjusters), [differ, differ, differ])
    assert.deepEqual(accepting('finding: legs-differ, reason: known'), [])
  })

  it('can be accepted in one entry only', () => {
    assert.deepEqual(accepting('finding: legs-differ, entry: one, reason: known'), [differ])
  })

  it('can be accepted about one adjuster only, or one leg of it', () => {
    assert.deepEqual(accepting('finding: legs-differ, about: fork_compression, reason: known'), [differ, differ])
    assert.deepEqual(accepting('finding: legs-differ, about: fork_compression/right, reason: known'), [differ, differ])
  })

  it('is not taken for an adjuster whose name only begins alike', () => {
    assert.deepEqual(accepting('finding: legs-differ, about: fork, reason: known'), [differ, differ, differ, 'accepted-for-nothing'])
  })

  it('needs a reason: without one it is reported, and so is the want of a reason', () => {
    assert.deepEqual(accepting('finding: legs-differ'), [differ, differ, differ, 'accepted-without-reason'])
    assert.deepEqual(accepting("finding: legs-differ, reason: ' '"), [differ, differ, differ, 'accepted-without-reason'])
  })

  it('may be accepted twice over', () => {
    assert.deepEqual(accepting('finding: legs-differ, reason: known', 'finding: legs-differ, entry: two, reason: known'), [])
  })

  it('can be about a sag reading, by its end or by its length', () => {
    const text = 'format: 1\nentries:\n  - id: 1\n    sag: {front: {extended: 152, bike: [120, 128]}}\naccepted:\n  - {finding: sag-lengths-swapped, entry: 1, about: ABOUT, reason: known}\n'
    for (const about of ['sag.front', 'sag.front.bike', 'sag.front.bike.pushed']) assert.deepEqual(codesOf(text.replace('ABOUT', about)), [], about)
    assert.deepEqual(codesOf(text.replace('ABOUT', 'sag.rear')), ['sag-lengths-swapped', 'accepted-for-nothing'])
  })
})

describe('an acceptance that accepts nothing', () => {
  const idle = `${twoAdjusters}accepted: [{finding: no-reason, entry: two, reason: known}]\n`

  it('is told, with what it was about', () => {
    const last = findingsOf(idle).at(-1)!
    assert.equal(last.code, 'accepted-for-nothing')
    assert.equal(last.severity, 'info')
    assert.match(last.message, /‘no-reason’ is not found in two any more/)
  })

  it('is not told while its own rule is off, for nobody knows what that would find', () => {
    assert.ok(!codesOf(`${idle}rules: {no-reason: off}\n`).includes('accepted-for-nothing'))
    assert.ok(!codesOf(idle, new Map([['no-reason', 'off']])).includes('accepted-for-nothing'))
  })

  it('is taken out by its fix, with the list where it was the only one', () => {
    assert.equal(fixedBy('accepted-for-nothing', idle), twoAdjusters)
    const two = `${twoAdjusters}accepted:\n  - finding: legs-differ\n    reason: known # long ago\n  - finding: no-reason # once\n    reason: known\nnotes: end\n`
    assert.equal(fixedBy('accepted-for-nothing', two), two.replace('  - finding: no-reason # once\n    reason: known\n', ''))
  })

  it('can be silenced and made louder like any other', () => {
    assert.ok(!codesOf(`${idle}rules: {accepted-for-nothing: off}\n`).includes('accepted-for-nothing'))
    assert.equal(findingsOf(`${idle}rules: {accepted-for-nothing: error}\n`).find(({ code }) => code === 'accepted-for-nothing')?.severity, 'error')
  })

  it('is told with the entry, and with what it is about, where either is named', () => {
    const words = (rest: string) => findingsOf(`${twoAdjusters}accepted: [{finding: no-reason${rest}, reason: known}]\n`).at(-1)!.message
    assert.deepEqual(['', ', entry: two', ', about: fork_rebound', ', entry: two, about: fork_rebound'].map(words), ['here', 'in two', 'about fork_rebound', 'in two about fork_rebound']
      .map((where) => `‘no-reason’ is not found ${where} any more: take this acceptance out`))
  })

  it('has no fix where others stand on its line, or the list is used elsewhere too', () => {
    const acceptance = '{finding: no-reason, reason: known}'
    for (const list of [`[${acceptance}, ${acceptance}]`, `&list\n  - ${acceptance}\nmore: *list`]) {
      const idle = findingsOf(`${twoAdjusters}accepted: ${list}\n`).find(({ code }) => code === 'accepted-for-nothing')!
      assert.equal(idle.fixes, undefined, list)
    }
  })
})

describe('a finding about the machine', () => {
  it('is in no entry and about no adjuster, so that no acceptance for one covers it', () => {
    for (const rest of ['entry: two', 'about: fork_rebound']) {
      assert.ok(codesOf(`${twoAdjusters}machine: {front: {travel: 0}}\naccepted: [{finding: impossible-figure, ${rest}, reason: known}]\n`).includes('impossible-figure'), rest)
    }
  })
})
