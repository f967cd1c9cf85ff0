import assert from 'node:assert/strict'
import { codesOf, findingsOf, fixedBy, messagesOf } from './check'

const code = 'unknown-adjuster'
const head = `format: 1
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
`
const set = (...settings: string[]) => `${head}entries:\n  - id: run-1\n    date: 2026-04-18\n    settings:\n${settings.map((each) => `      ${each}\n`).join('')}`
const titles = (text: string) => findingsOf(text).filter((finding) => finding.code === code).map(({ fixes = [] }) => fixes.map(({ title }) => title))

describe('a setting of an adjuster that is not defined', () => {
  it('is defined by a fix where its name and the way it is written say all there is to say', () => {
    const text = set('shock_rebound: 7 clicks out')
    assert.deepEqual(titles(text).map((each) => each.length), [1])
    assert.match(titles(text)[0]![0]!, /^Define ‘shock_rebound’: .*rebound.*, in clicks$/)
    const fixed = fixedBy(code, text)
    assert.match(fixed, /^ {2}shock_rebound:.*on: shock.*controls: rebound.*counts: clicks/m)
    assert.ok(!codesOf(fixed).includes(code))
  })

  it('is not guessed where its end, what it controls or what it counts in is in doubt', () => {
    for (const setting of ['rebound: 3 clicks out', 'shock_thing: 3 clicks out', 'shock_rebound: 7', 'knob: 3', 'fork_compression: 3 clicks out']) {
      assert.deepEqual(titles(set(setting)), [[]], setting)
    }
  })

  it('is told how to be put right: by the name that was meant, or by a definition', () => {
    assert.match(messagesOf(code, set('fork_rebond: 3 out'))[0]!, /did you mean fork_rebound\?$/)
    assert.match(messagesOf(code, set('fork_rebond: 3 out', 'fork_rebound: 4 out'))[0]!, /define it under `adjusters` first$/)
    assert.equal(titles(set('fork_rebond: 3 out'))[0]!.length, 1)
  })

  it('is nobody’s business here where it is defined, though in the wrong way, nor where it is a leg that is wrong', () => {
    assert.deepEqual(messagesOf(code, set('knob: 3').replace('entries:', '  knob: {on: fork}\nentries:')), [])
    assert.deepEqual(messagesOf(code, set('fork_rebound: {lft: 3 out}')), [])
  })

  it('is defined by a fix among as many as a machine has, and no longer among more', () => {
    const others = (count: number) => set('shock_rebound: 7 clicks out', ...Array.from({ length: count }, (_, at) => `knob${at}: 3`))
    assert.equal(titles(others(99))[0]!.length, 1)
    assert.equal(titles(others(100))[0]!.length, 0)
  })

  it('is found where the notebook defines no adjusters at all', () => {
    assert.equal(messagesOf(code, set('shock_rebound: 7 clicks out').replace(/adjusters:\n.*\n/, '')).length, 1)
  })
})
