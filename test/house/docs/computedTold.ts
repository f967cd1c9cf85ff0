import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { isMissing, type Outcome, type Result, type WorkingInput } from '../../../src/core/compute/working/result'
import { computedRows } from '../../../src/core/grid/computed'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { edgeCalls, type Call } from './edgeCalls'

export const computedToldPath = 'test/fixtures/computed.told.txt'

const folders = ['samples', 'test/fixtures/rules']

/**
 * What is worked out in our own notebooks, with its working, and what each calculation answers to numbers at its edges: to
 * be looked at where it changes. Whether it is right is told by the checks against sources, beside the calculations.
 */
export function computedTold(): string {
  return [...ofNotebooks(), ...edgeCalls.map((each) => `${answersOf(each).join('\n')}\n`)].join('\n')
}

/** As it is, then with each number that was given at nought, below it, and none at all; what is the same as before is not told again. */
function answersOf({ name, facts, of }: Call): string[] {
  const answer = (changed: object, told = short) => JSON.stringify(of({ ...facts, ...changed } as never), told) ?? 'nothing'
  const usual = answer({})
  const numbers = Object.entries(facts).flatMap(([key, value]) => (typeof value === 'number' ? [[key, value] as const] : []))
  return [`${name}: ${answer({}, withWorking)}`, ...numbers.flatMap(([key, value]) => [0, -value, NaN].flatMap((put) => {
    const now = answer({ [key]: put })
    return now === usual ? [] : [`  ${key} ${put}: ${now}`]
  }))]
}

/** The working with no more of its inputs than their names: the facts say the rest. Numbers without their last digits. */
function withWorking(key: string, value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? Number(value.toPrecision(9)) : String(value)
  if (key === 'inputs') return (value as WorkingInput[]).map(({ name }) => name)
  return key === 'source' ? undefined : value
}

const short = (key: string, value: unknown): unknown => (key === 'working' ? undefined : withWorking(key, value))

/** By row the first of each sort of answer. */
function ofNotebooks(): string[] {
  const told = new Set<string>()
  return folders.flatMap((folder) => readdirSync(folder).filter((name) => name.endsWith('.setup.yaml')).sort().map((name) => join(folder, name))).flatMap((file) => {
    const lines = linesOf(readNotebook(readFileSync(file, 'utf8')), told)
    return lines.length === 0 ? [] : [`${[file.replaceAll('\\', '/'), ...lines].join('\n')}\n`]
  })
}

function linesOf(notebook: Notebook, told: Set<string>): string[] {
  return notebook.entries.flatMap((entry) => computedRows.flatMap((row) => {
    if (!('compute' in row)) return []
    const outcome = row.compute(notebook, entry)
    const sort = `${row.key}: ${sortOf(outcome)}`
    if (told.has(sort)) return []
    told.add(sort)
    return [`  ${entry.key}, ${row.key}: ${isMissing(outcome) ? `needs ${outcome.missing.join(' | ')}` : ''}`, ...(isMissing(outcome) ? [] : workingOf(outcome))]
  }))
}

/** Answers of one sort are made of the same things; the numbers differ. */
function sortOf(outcome: Outcome): string {
  return isMissing(outcome) ? outcome.missing.join(' | ') : JSON.stringify([outcome.working.inputs.map(({ symbol }) => symbol), outcome.working.assumptions.map((each) => each.replace(/[\d.−]+/g, '#')), outcome.u === undefined])
}

const number = (value: number): string => String(Number(value.toPrecision(9)))

function workingOf({ value, u, unit, working: { formula, inputs, assumptions, source } }: Result): string[] {
  const input = ({ symbol, name, value: of, unit: in_, u: unsure, contribution }: WorkingInput) => `    ${symbol} = ${number(of)} ${in_}${unsure === undefined ? '' : ` ± ${number(unsure)}`}${contribution === undefined ? '' : ` (${number(contribution)})`}: ${name}`
  return [`    ${number(value)} ${unit}${u === undefined ? '' : ` ± ${number(u)}`}; ${formula} (${source})`, ...inputs.map(input), ...assumptions.map((each) => `    taken for granted: ${each}`)]
}
