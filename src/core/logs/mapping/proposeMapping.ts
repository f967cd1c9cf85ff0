import { say } from '../../words/say'
import { lengthOf } from './lengthOf'
import type { Column, Dialect } from '../reading/dialect'
import type { ChannelMapping, LoggerMapping, TimeUnit } from './mapping'

/** A mapping as a proposal: what was taken for what and why, and what only a person can know. */
export interface ProposedMapping {
  mapping: LoggerMapping
  because: string[]
  /** To be looked at before any number is believed. */
  unsure: string[]
}

/** The words that name a thing in headings, in the languages that loggers speak most. */
const words = {
  time: /^(?:t|time|times?tamp|elapsed(?: time)?|zeit|uhrzeit|temps|tempo|tiempo|log time|session time|clock)$/,
  front: /\b(?:fork|forks|front susp\w*|front|susp\w* f(?:ront)?|f susp\w*|gabel|vorn\w*|forcella|fourche|horquilla|avant|anteriore)\b/,
  rear: /\b(?:shock|rear susp\w*|rear|susp\w* r(?:ear)?|r susp\w*|federbein|heck|hinten|hinter\w*|mono(?:shock)?|ammo\w*|amorti\w*|arri[eè]re|posteriore|trasera)\b/,
  brake: /\b(?:brake|brk|bremse|bremsdruck|freno|frein)\b/,
  lap: /^(?:lap|laps|lap ?(?:no|number|nr|count)|runde|giro|tour|vuelta)$/,
  position: /susp|pot|travel|pos|fork|shock|gabel|federbein|weg|forcella|mono|fourche|amort|stroke/,
  other: /speed|vel|accel|acc\b|temp|\bforce\b|brake|brk|wheel|tyre|tire|pressure|abs|lambda|rpm|bremse/,
} as const

/**
 * Which column is what, from the headings and units and a look at the first numbers: for a person to confirm. `rows` are
 * some of the first rows, a number for every column, NaN where there is none.
 */
export function proposeMapping({ columns }: Pick<Dialect, 'columns'>, rows: readonly (readonly number[])[] = []): ProposedMapping {
  const proposal: ProposedMapping = { mapping: {}, because: [], unsure: [] }
  const taken = new Set<number>()
  const take = (at: number, what: string, why: string) => {
    taken.add(at)
    proposal.because.push(`${what}: ‘${columns[at]!.name}’, ${why}`)
    return columns[at]!.name
  }
  const time = findTime(columns, rows)
  if (time) proposal.mapping.time = { column: take(time.at, 'time', time.why), unit: time.unit }
  else proposal.unsure.push(say('no column rises steadily as time does: name the rate in Hz'))
  for (const end of ['front', 'rear'] as const) {
    const at = bestNamed(columns, words[end], taken)
    if (at < 0) continue
    const { channel, unsure } = channelFor(columns[at]!, end, rows.map((row) => row[at] ?? NaN))
    proposal.mapping[end] = { ...channel, column: take(at, end, say('by its heading')) }
    proposal.unsure.push(...unsure)
  }
  for (const [what, at] of [['brake', named(columns, words.brake, taken)], ['lap', named(columns, words.lap, taken)]] as const) {
    if (at >= 0) proposal.mapping[what] = { column: take(at, what, say('by its heading')) }
  }
  if (!proposal.mapping.front && !proposal.mapping.rear) proposal.unsure.push(say('no heading tells which column is the fork or the shock'))
  return proposal
}

function plain(name: string): string {
  return name.split(/[[(]/, 1)[0]!.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/[_\-.:/]+/g, ' ').trim().toLowerCase()
}

function named(columns: readonly Column[], pattern: RegExp, taken: ReadonlySet<number>): number {
  return columns.findIndex(({ name }, at) => !taken.has(at) && pattern.test(plain(name)))
}

/** Of several columns of an end, such as `Front speed` and `Front pot`, the one that speaks of a position. */
function bestNamed(columns: readonly Column[], pattern: RegExp, taken: ReadonlySet<number>): number {
  const score = ({ name, unit }: Column) => (words.position.test(plain(name)) ? 2 : 0) + (isPositionUnit(unit) ? 1 : 0) - (words.other.test(plain(name)) ? 3 : 0)
  const all = columns.flatMap((column, at) => (!taken.has(at) && pattern.test(plain(column.name)) && score(column) >= 0 ? [{ at, score: score(column) }] : []))
  return all.sort((a, b) => b.score - a.score)[0]?.at ?? -1
}

function isPositionUnit(unit: string | undefined): boolean {
  return unit !== undefined && (/^(?:%|m?v|volts?|counts?|adc|bits?)$/i.test(unit) || lengthOf(unit) !== undefined)
}

function findTime(columns: readonly Column[], rows: readonly (readonly number[])[]): { at: number; unit: TimeUnit; why: string } | undefined {
  const by = columns.findIndex(({ name }) => words.time.test(plain(name)))
  const at = by >= 0 ? by : columns.findIndex((_, column) => rows.length > 3 && rows.every((row, line) => line === 0 || row[column]! > rows[line - 1]![column]!))
  if (at < 0) return undefined
  const why = by >= 0 ? say('by its heading') : say('the first column that rises with every row')
  return { at, why, unit: timeUnitOf(columns[at]!, rows.map((row) => row[at] ?? NaN)) }
}

function timeUnitOf({ name, unit }: Column, values: readonly number[]): TimeUnit {
  const said = (unit ?? /_(ms|us|s)$/i.exec(name)?.[1] ?? '').toLowerCase()
  if (said === 'ms' || said === 'us' || said === 's') return said
  if (said === 'µs') return 'us'
  if (said.includes(':') || values.every(Number.isNaN)) return values.length > 0 || said !== '' ? 'clock' : 's'
  const steps = values.slice(1).map((value, row) => value - values[row]!).filter((step) => step > 0).sort((a, b) => a - b)
  // Nobody logs a suspension at less than one sample a second: whole steps are milliseconds.
  return (steps[steps.length >> 1] ?? 0) >= 1 ? 'ms' : 's'
}

function channelFor({ name, unit }: Column, end: 'front' | 'rear', values: readonly number[]): { channel: Omit<ChannelMapping, 'column'>; unsure: string[] } {
  const written = unit ?? /_(mm|cm|in|v|mv|pct)$/i.exec(name)?.[1]?.replace(/pct/i, '%')
  const damper = end === 'rear' && /shock|damper|mono|federbein|amm?o|pot\b/.test(plain(name)) ? [say('rear: it may be the shock’s own travel; say `at: damper` then, so that the leverage applies')] : []
  const known = values.filter((value) => !Number.isNaN(value))
  if (written === undefined) {
    const small = known.length > 0 && Math.max(...known) <= 5.5
    return { channel: small ? { unit: 'V' } : { unit: 'mm' }, unsure: [say`${say(end)}: no unit is written; ${small ? say('readings up to 5 look like volts, which need a scale in mm for one V') : say('mm is a guess')}`, ...damper] }
  }
  const length = written === '%' || lengthOf(written) !== undefined
  return { channel: { unit: written }, unsure: [...(length ? [] : [say`${say(end)}: readings in ${written} need a scale, mm for one ${written}, and the reading at full extension`]), ...damper] }
}
