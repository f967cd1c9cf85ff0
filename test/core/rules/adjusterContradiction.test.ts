import assert from 'node:assert/strict'
import { findingsOf } from './check'

/** Ten entries that set an adjuster to what would give a finding each, were its definition believed. */
function used(definition: string, uses: string): string {
  const entries = Array.from({ length: 10 }, (_, at) => `  - {id: run-${at}, as_found: true, settings: {x: ${uses}}}\n`)
  return `format: 1\nadjusters:\n  x: {${definition}}\nentries:\n${entries.join('')}`
}

const contradictions: Record<string, readonly [definition: string, uses: string, message: RegExp]> = {
  'a damper counted in bar': ['on: fork, controls: rebound, counts: bar', '3 clicks out', /rebound damping cannot be counted in bar/],
  'a damper in bar, used as such': ['on: fork, controls: rebound, counts: bar', '3 bar', /cannot be counted in bar/],
  'a pressure counted in clicks': ['on: tyres, controls: tyre_pressure, counts: clicks', '2.1 bar', /tyre pressure, cold cannot be counted in clicks/],
  'a pressure in clicks with a range': ['on: tyres, controls: tyre_pressure, counts: clicks, range: 4', '7.5', /cannot be counted in clicks/],
  'a spring rate in mm': ['on: fork, legs: [left, right], controls: spring_rate, counts: mm', '{left: 9.5 N/mm, right: 9.5 N/mm}', /cannot be counted in mm/],
  'a fork height in turns': ['on: fork, legs: [left, right], controls: fork_height, counts: turns', '{left: 5 mm, right: 5 mm}', /cannot be counted in turns/],
  'an end and a scale of its own': ['on: shock, controls: preload, counts: steps, counted: in, higher_is: less, range: 7', '9 out', /either counted from an end \(`counted`\) or has a scale of its own/],
  'a height counted from an end': ['on: fork, controls: fork_height, counts: mm, counted: out, range: 10', '12 mm in', /measured and has no end to count from/],
  'a pressure counted from an end': ['on: fork, controls: air_pressure, counts: psi, counted: in', '120 psi out', /measured and has no end to count from/],
  'a pressure of which more is less': ['on: tyres, controls: tyre_pressure, counts: bar, higher_is: less', '3 clicks', /a higher figure in bar is more tyre pressure/],
  'oil of which more is a larger gap': ['on: fork, controls: oil_level, counts: ml, higher_is: more', '110 mm', /a higher figure in ml is a smaller air gap, so more oil/],
  'a step beyond its range': ['on: shock, controls: rebound, counts: clicks, step: 30, range: 20', '7 out', /smallest `step` of 30 is more than its whole `range` of 20 clicks/],
  'ratios that disagree': ['on: shock, controls: preload, counts: clicks, mm_per_turn: 1.5, mm_per_click: 0.25, clicks_per_turn: 4', '2 turns in', /4 clicks of 0\.25 mm make 1 mm a turn/],
  'ratios that disagree, between the legs': ['on: fork, legs: [left, right], controls: preload, counts: turns, mm_per_turn: 1.5, mm_per_click: 0.25, clicks_per_turn: 4', '{left: 4 clicks in, right: 1.5 mm in}', /make 1 mm a turn/],
}

/** Definitions that the schema refuses; its word stands where they are defined, too. */
const misshapen: Record<string, readonly [definition: string, uses: string]> = {
  'nothing that it controls': ['on: fork, counts: clicks', '30 in'],
  'a unit that there is not': ['on: fork, controls: rebound, counts: clunks', '3 clunks'],
  'a control that there is not': ['on: fork, controls: bounciness, counts: clicks', '3 in'],
  'a leg that there is not': ['on: fork, legs: [middle], controls: rebound, counts: clicks', '{left: 3 out, right: 3 out}'],
  'no legs at all': ['on: fork, legs: [], controls: rebound, counts: clicks', '{left: 3 out, right: 3 out}'],
  'a range of nothing': ['on: fork, controls: rebound, counts: clicks, range: 0', '3 out'],
}

describe('an adjuster that contradicts itself', () => {
  for (const [what, [definition, uses, message]] of Object.entries(contradictions)) {
    it(`has one finding where it is defined and none at its uses: ${what}`, () => {
      const text = used(definition, uses)
      const findings = findingsOf(text)
      assert.deepEqual(findings.map(({ code, severity }) => [code, severity]), [['adjuster-contradiction', 'error']])
      assert.equal(text.slice(findings[0]!.range.start, findings[0]!.range.end), 'x')
      assert.match(findings[0]!.message, message)
    })
  }

  for (const [what, [definition, uses]] of Object.entries(misshapen)) {
    it(`has one finding as well for what is misshapen: ${what}`, () => {
      const text = used(definition, uses)
      const findings = findingsOf(text)
      assert.deepEqual(findings.map(({ code }) => code), ['wrong-shape'])
      assert.ok(findings[0]!.range.end < text.indexOf('entries:'))
    })
  }

  it('would have many at its uses, were it believed', () => {
    const believed = used('on: shock, controls: preload, counts: clicks, mm_per_turn: 1, mm_per_click: 0.25, clicks_per_turn: 4', '2 turns in')
    assert.equal(findingsOf(believed).filter(({ code }) => code === 'wrong-unit').length, 10)
  })

  it('is still told of legs that plainly differ, for that is no matter of its definition', () => {
    const text = used('on: fork, legs: [left, right], controls: fork_height, counts: mm, step: 30, range: 20', '{left: 5 mm, right: 7 mm}')
    const codes = findingsOf(text).map(({ code }) => code)
    assert.deepEqual(codes, ['adjuster-contradiction', ...Array.from({ length: 10 }, () => 'fork-height-uneven')])
  })
})

describe('an adjuster that does not contradict itself', () => {
  const fine = [
    'on: shock, controls: ride_height, counts: mm, higher_is: less', 'on: shock, controls: ride_height, counts: turns, counted: out', 'on: fork, controls: oil_level, counts: ml, higher_is: less',
    'on: tyres, controls: tyre_pressure, counts: psi, higher_is: more', 'on: shock, controls: rebound, counts: dial, counted: in', 'on: shock, controls: preload, counts: mm, higher_is: less',
    'on: shock, controls: rebound, counts: clicks, step: 20, range: 20', 'on: shock, controls: preload, counts: clicks, mm_per_turn: 1.5, mm_per_click: 0.37, clicks_per_turn: 4',
  ]
  for (const definition of fine) it(`is not told of: ${definition}`, () => assert.deepEqual(findingsOf(`format: 1\nadjusters:\n  x: {${definition}}\n`), []))
})
