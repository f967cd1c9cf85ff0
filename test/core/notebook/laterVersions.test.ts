import assert from 'node:assert/strict'
import fc from 'fast-check'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { unwatched } from '../../../src/core/notebook/content'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import type { EntryRule } from '../../../src/core/rules/rule'
import { rules } from '../../../src/core/rules'

const head = `format: 1
machine:
  name: Tern 650
  use: track
  front: {travel: 120, spring_rate: 9.5, air: {bore: 40}}
  rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
rider: {kitted_mass: 84}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  fork_height: {on: fork, legs: [left, right], controls: fork_height, counts: mm}
  fork_air: {on: fork, controls: air_pressure, counts: bar}
  shock_preload: {on: shock, controls: preload, counts: mm}
entries:
`

/** What may be said of an entry, line by line; each line is drawn or left out. */
const lines: readonly (readonly string[])[] = [
  ['from: e0', 'from: e1', 'from: e2', 'from: nowhere', 'from: e4'],
  ['date: 2026-04-18', 'date: 2026-04-19', 'date: 2026-04-17'],
  ['as_found: true', 'as_found: false'],
  ['baseline: true'],
  ['settings: {fork_rebound: 3 out}', 'settings: {fork_rebound: {left: 3 out, right: 4 out}}', 'settings: {fork_height: 5}', 'settings: {fork_air: 1.1, shock_preload: 9}', 'settings: {fork_height: 7, fork_air: 1.3}', 'settings: {shock_preload: 12, fork_rebound: 30 out}'],
  ['tyres: {front_radius: 298}', 'tyres: {rear_radius: 312}'],
  ['conditions: {air: 12}', 'conditions: {air: 31, altitude: 900 m}'],
  ['sag: {front: {extended: 152, bike: 128, rider: 118}, rear: {extended: 560, bike: 550, rider: 530}}', 'sag: {front: {extended: 152, bike: 130, rider: 115}}'],
  ['reason: because', 'reason: for another one'],
  ['ride: {front_travel_used: 120, felt: good}', 'ride: {felt: bad}'],
]
const said = fc.tuple(...lines.map((choices) => fc.option(fc.nat(choices.length - 1), { freq: 1, nil: undefined })))
type Said = (number | undefined)[]

function written(entries: readonly { id: string; said: Said }[]): string {
  return head + entries.map(({ id, said }) => `  - id: ${id}\n${said.flatMap((choice, at) => (choice === undefined ? [] : [`    ${lines[at]![choice]}\n`])).join('')}`).join('')
}

type Step = { at: number } & ({ kind: 'say'; line: number; choice: number | undefined } | { kind: 'remove' } | { kind: 'insert'; said: Said } | { kind: 'swap' } | { kind: 'rename' })
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 6, arbitrary: fc.record({ kind: fc.constant('say' as const), at: fc.nat(5), line: fc.nat(lines.length - 1), choice: fc.option(fc.nat(5), { nil: undefined }) }) },
  fc.record({ kind: fc.constant('insert' as const), at: fc.nat(5), said }),
  fc.record({ kind: fc.constantFrom('remove' as const, 'swap' as const, 'rename' as const), at: fc.nat(5) }),
)

let fresh = 0

function changed(entries: { id: string; said: Said }[], step: Step): { id: string; said: Said }[] {
  const at = step.at % Math.max(1, entries.length)
  switch (step.kind) {
    case 'say': {
      const choice = step.choice === undefined ? undefined : step.choice % lines[step.line]!.length
      return entries.map((entry, index) => (index === at ? { ...entry, said: entry.said.map((each, line) => (line === step.line ? choice : each)) } : entry))
    }
    case 'remove': return entries.length < 2 ? entries : entries.filter((_, index) => index !== at)
    case 'insert': return [...entries.slice(0, at), { id: `n${++fresh}`, said: step.said }, ...entries.slice(at)]
    case 'swap': return at === 0 ? entries : [...entries.slice(0, at - 1), entries[at]!, entries[at - 1]!, ...entries.slice(at + 1)]
    case 'rename': return entries.map((entry, index) => (index === at ? { ...entry, id: `r${++fresh}` } : entry))
  }
}

describe('a later version of a text', () => {
  it('is found and shown as if it were read anew, whatever was changed up its line of entries', function () {
    this.timeout(60_000)
    fc.assert(fc.property(fc.array(said, { minLength: 6, maxLength: 6 }), fc.array(step, { minLength: 1, maxLength: 5 }), fc.nat(2), (first, steps, quickly) => {
      let entries = first.map((each, at) => ({ id: `e${at}`, said: each as Said }))
      let before: Notebook | undefined
      for (const [at, each] of [undefined, ...steps].entries()) {
        if (each) entries = changed(entries, each)
        const text = written(entries)
        const [next, anew] = [readNotebook(text, before), readNotebook(text)]
        // What is kept of a check that nobody watched must not be believed later either.
        const findings = at % 3 === quickly ? unwatched(() => checkNotebook(next)) : checkNotebook(next)
        assert.deepEqual(findings, checkNotebook(anew), text)
        assert.deepEqual(buildGrid(next, findings), buildGrid(anew, checkNotebook(anew)), text)
        before = next
      }
    }), { numRuns: 30 * Number(process.env['DETENT_RUNS'] ?? 1), ...(process.env['DETENT_SEED'] ? { seed: Number(process.env['DETENT_SEED']) } : {}) })
  })

  const long = (first: string) => `${head}  - id: first\n    settings: {fork_rebound: 3 out, fork_height: 5}\n    ride: {felt: ${first}}\n${Array.from({ length: 40 }, (_, at) => `  - id: e${at}\n    settings: {shock_preload: ${at}}\n`).join('')}`

  /** How often each of two rules was asked: one that looks at the rebound carried, one that looks at the entry alone. */
  function asked(text: string, later: string): [carried: number, alone: number] {
    let counts: [number, number] = [0, 0]
    const template = rules.find((rule): rule is EntryRule => 'checkEntry' in rule)!
    const carried: EntryRule = { ...template, code: 'carried', checkEntry: (entry) => (counts[0]++, entry.state.get('fork_rebound/left'), []) }
    const alone: EntryRule = { ...template, code: 'alone', checkEntry: (entry) => (counts[1]++, entry.settings.size > 9 ? [] : []) }
    const before = readNotebook(text)
    checkNotebook(before, undefined, [carried, alone])
    counts = [0, 0]
    checkNotebook(readNotebook(later, before), undefined, [carried, alone])
    return counts
  }

  it('asks of the changed entry alone where it hands nothing else down', () => {
    assert.deepEqual(asked(long('good'), long('better')), [1, 1])
  })

  it('asks of those that carry a changed position only what looks at it', () => {
    assert.deepEqual(asked(long('good'), long('good').replace('3 out', '4 out')), [41, 1])
    assert.deepEqual(asked(long('good'), long('good').replace('fork_height: 5', 'fork_height: 6')), [1, 1])
  })
})
