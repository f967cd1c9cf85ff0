import fc from 'fast-check'
import { architectures } from '../../../src/core/adjusters/architectures'
import type { Architecture } from '../../../src/core/adjusters/architectures/architecture'
import { writeNotebook } from '../../../src/core/adjusters/architectures/writeNotebook'
import { slotsOf, type Adjuster } from '../../../src/core/adjusters/adjuster'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { Choices } from '../grid/choices'

/** A machine of a kind with several random states, a to the last letter, each written in whatever notation its adjusters allow. */
export interface RandomMachine {
  key: string
  text: string
  notebook: Notebook
  /** What a failing test prints. */
  [fc.toStringMethod]: () => string
}

const tape = fc.array(fc.nat(9999), { minLength: 200, maxLength: 200 })

/** Machines of one architecture, whatever its questions are answered, with three states `a`, `b` and `c`. */
export function machinesOf(architecture: Architecture): fc.Arbitrary<RandomMachine> {
  return tape.map((numbers) => randomMachine(architecture, new Choices(numbers)))
}

/** How often a property is tried, and from where; `DETENT_RUNS=20` and `DETENT_SEED=1` as in the other random tests. */
export const trials = (count: number) => ({ numRuns: count * Number(process.env['DETENT_RUNS'] ?? 1), seed: Number(process.env['DETENT_SEED'] ?? 20260418), endOnFailure: true })

export { architectures }

function randomMachine(architecture: Architecture, choices: Choices): RandomMachine {
  const answers = Object.fromEntries(architecture.asks.map(({ key, choices: ways }) => [key, choices.of(ways).value]))
  const bare = writeNotebook(architecture, { name: 'Tern 650', date: '2026-04-18', cautions: [], answers })
  const facts = bare.replace(/( {4}counts: )(.*)\n/g, (line, _head, unit: string) => line + factsFor(unit, choices))
  const { adjusters } = readNotebook(facts)
  const states = ['a', 'b', 'c'].map((id) => [`  - id: ${id}`, '    date: 2026-04-18', ...settingsOf([...adjusters.values()], choices)])
  const text = `${facts.slice(0, facts.indexOf('entries:'))}entries:\n${states.flat().join('\n')}\n`
  return { key: architecture.key, text, notebook: readNotebook(text), [fc.toStringMethod]: () => text.slice(text.indexOf('adjusters:')) }
}

/** Range, ratios and the like, as a notebook may have noted them or not; and which way it closes. */
function factsFor(unit: string, choices: Choices): string {
  const lines: string[] = []
  if (['clicks', 'turns', 'steps'].includes(unit) && !choices.once(4)) lines.push(`range: ${7 + choices.below(20)}`)
  if (unit === 'clicks' && choices.once(2)) lines.push(`clicks_per_turn: ${choices.of([4, 6, 8, 12])}`)
  if (unit === 'mm' && choices.once(2)) lines.push('mm_per_turn: 1.5')
  if (unit !== 'mm' && choices.once(4)) lines.push('closes: anticlockwise')
  return lines.map((line) => `    ${line}\n`).join('')
}

function settingsOf(adjusters: readonly Adjuster[], choices: Choices): string[] {
  const lines = adjusters.map((adjuster) => {
    const [first, ...others] = slotsOf(adjuster).map(({ leg }) => ({ leg, text: randomPosition(adjuster, choices) }))
    if (first!.leg === undefined || choices.once(2)) return `      ${adjuster.id}: ${first!.text}`
    return `      ${adjuster.id}: {${[first!, ...others].map(({ leg, text }) => `${leg}: ${text}`).join(', ')}}`
  })
  return ['    settings:', ...lines]
}

/** A place where the adjuster can stand, from either end and in any unit that it can be told in. */
function randomPosition(adjuster: Adjuster, choices: Choices): string {
  const { counts, range, clicksPerTurn, end } = adjuster
  const top = range ?? 7
  const count = counts.dimension === 'step' ? 1 + choices.below(top) : counts.dimension === 'click' ? choices.below(top + 1) : choices.below(top * 4 + 1) / 4
  if (end === undefined) return counts.symbol === 'bar' && choices.once(3) ? `${count} bar` : `${count}`
  const out = end === 'closed' ? 'out' : 'in'
  const kinds = [`${count}`, `${count} ${out}`, `${count} ${counts.symbol} ${out}`]
  if (range !== undefined) kinds.push(`${range - count} ${counts.symbol} ${out === 'out' ? 'in' : 'out'}`)
  if (counts.symbol === 'turns') kinds.push(`${count * 6} flats ${out}`)
  if (clicksPerTurn !== undefined) kinds.push(`${count / clicksPerTurn} turns ${out}`)
  return choices.of(kinds)
}
