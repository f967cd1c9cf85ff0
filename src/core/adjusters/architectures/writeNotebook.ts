import { say } from '../../words/say'
import { answerTo, type Answers, type Architecture, type Facts, type NewAdjuster } from './architecture'

/** What a new notebook is made from, beside the architecture. */
export interface NewNotebook {
  /** The machine's name, as a person gives it. */
  name?: string
  /** The day it was found so, `YYYY-MM-DD`, with a time if wanted. */
  date: string
  /** The usual cautions, put at the top. */
  cautions: readonly string[]
  answers?: Answers
}

/**
 * The text of a notebook to type into: cautions, the machine, its adjusters, and one entry for what is found on it.
 * The entry has no settings yet, so that every cell of the grid stands empty. Lines end in `\n`.
 */
export function writeNotebook(architecture: Architecture, { name = '', date, cautions, answers = {} }: NewNotebook): string {
  const adjusters = architecture.adjusters(answerTo(architecture.asks, answers))
  const lines = [
    ...cautions.flatMap((caution) => comment(say(caution))),
    '',
    'format: 1',
    '',
    ...machineLines(name, architecture),
    '',
    ...comment(say('Begun from a usual arrangement: correct what is different on this machine. Count each adjuster once from end to end and note it as `range`, with `range_is: measured`.')),
    'adjusters:',
    ...adjusters.flatMap(adjusterLines),
    '',
    ...comment(say('Where everything stood as it came, before anything was set. Type it into the grid.')),
    'entries:',
    '  - id: as-found',
    `    date: ${/^\d{4}-\d\d-\d\d( \d\d:\d\d)?$/.test(date) ? date : quoted(date)}`,
    '    as_found: true',
  ]
  return `${lines.join('\n')}\n`
}

/** What is worth knowing of a machine, named where it goes, to be filled in when it is known. */
function machineLines(name: string, { machine = [] }: Architecture): string[] {
  return [
    'machine:',
    `  name: ${nameText(name.trim() || say('My machine'))}`,
    ...machine.map((line) => `  ${line}`),
    ...comment(say('For sag, add `use` (road, track, motocross, enduro, adventure or touring), and under `front` and `rear` the `travel` in mm and the `spring_rate` in N/mm; at the rear the `motion_ratio` too.'), '  '),
  ]
}

function adjusterLines([id, facts]: NewAdjuster): string[] {
  return [`  ${id}:`, ...Object.entries(facts).map(([key, value]) => `    ${key}: ${factText(prose.has(key) && typeof value === 'string' ? say(value) : value)}`)]
}

/** What is said of an adjuster in words, and not in those of the format. */
const prose = new Set(['label', 'place', 'tool', 'notes'])

/** The facts of architectures are plain words; only lists need brackets. */
function factText(value: Facts[keyof Facts]): string {
  return typeof value === 'object' ? `[${value.join(', ')}]` : String(value)
}

/** Plain where every YAML reader, old ones too, takes it for this very name; quoted otherwise. */
function nameText(name: string): string {
  const plain = /^[\p{L}][\p{L}\p{N} .()'’/-]*$/u.test(name) && !/ $|^(null|true|false|yes|no|on|off|y|n)$/i.test(name)
  return plain ? name : quoted(name)
}

/** Double quotes, with everything escaped that is not printed or would end a line. */
function quoted(text: string): string {
  return JSON.stringify(text).replace(/[\u007f-\u00a0\u2028\u2029\ufeff]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

const longestLine = 110

/** A sentence as comment lines of a readable length. */
function comment(sentence: string, indent = ''): string[] {
  const lines: string[] = []
  let line = `${indent}#`
  for (const word of sentence.split(/\s+/)) {
    if (line.length + 1 + word.length > longestLine && line !== `${indent}#`) {
      lines.push(line)
      line = `${indent}#  `
    }
    line += ` ${word}`
  }
  return [...lines, line]
}
