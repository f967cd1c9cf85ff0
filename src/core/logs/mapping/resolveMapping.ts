import { nearest } from '../../nearest'
import { isMissing } from '../../compute/working/result'
import { say } from '../../words/say'
import type { Dialect } from '../reading/dialect'
import { lengthOf } from './lengthOf'
import type { ChannelMapping, ColumnName, EndFacts, EndName, LoggerMapping } from './mapping'
import { toWheel, type ToWheel } from './toWheel'

/** A position's channel, ready to be read: mm = factor · reading + shift, then through the leverage where it has one. */
export interface Channel {
  column: number
  name: string
  factor: number
  shift: number
  toWheel?: ToWheel
  travelMm?: number
}

export interface Resolved {
  time?: { column: number; name: string; clock: boolean; perS: number }
  rateHz?: number
  ends: Partial<Record<EndName, Channel>>
  brake?: { column: number; name: string; unit?: string; on?: number }
  lap?: { column: number; name: string }
}

const perSecond = { s: 1, ms: 1e-3, us: 1e-6, clock: 1 } as const

/** Puts a mapping to the columns there are; or everything that is wrong with it, a sentence each. */
export function resolveMapping(mapping: LoggerMapping, { columns }: Pick<Dialect, 'columns'>, facts: Partial<Record<EndName, EndFacts>>): Resolved | { problems: string[] } {
  const problems: string[] = []
  const names = columns.map(({ name }) => name)
  const taken = new Map<number, string>()
  const place = (what: string, column: ColumnName) => {
    const found = findColumn(names, column)
    if (found < 0) problems.push(noColumn(what, column, names))
    else if (taken.has(found)) problems.push(say`${what}: the column ‘${names[found]!}’ is the ${taken.get(found)!} already`)
    taken.set(found, what)
    return { column: found, name: names[found] ?? String(column) }
  }
  const resolved: Resolved = { ends: {} }
  const { time, rateHz, brake, lap } = mapping
  if (time) resolved.time = { ...place('time', time.column), clock: time.unit === 'clock', perS: perSecond[time.unit ?? 's'] }
  else if (rateHz !== undefined && rateHz > 0) resolved.rateHz = rateHz
  else problems.push(say('nothing says when the samples were taken: name the column of the time, or the rate in Hz'))
  for (const end of ['front', 'rear'] as const) {
    const channel = mapping[end]
    if (!channel) continue
    const scaled = scaleOf(channel, facts[end] ?? {}, end)
    if ('problem' in scaled) problems.push(scaled.problem)
    else resolved.ends[end] = { ...place(end, channel.column), ...scaled }
  }
  if (!mapping.front && !mapping.rear) problems.push(say('no column is named for the front or the rear'))
  if (brake) {
    const found = place('brake', brake.column)
    const unit = columns[found.column]?.unit
    resolved.brake = { ...found, ...(unit === undefined ? {} : { unit }), ...(brake.on === undefined ? {} : { on: brake.on }) }
  }
  if (lap) resolved.lap = place('lap', lap.column)
  return problems.length > 0 ? { problems } : resolved
}

/** The place of a column, from 0: by its heading as written, its heading without case and unit, or its number; -1 for none. */
export function findColumn(names: readonly string[], wanted: ColumnName): number {
  const exact = names.indexOf(String(wanted))
  if (exact >= 0) return exact
  const plain = (name: string) => name.replace(/[[(][^\][()]*[\])]$/, '').trim().toLowerCase()
  const loose = names.findIndex((name) => plain(name) === plain(String(wanted)))
  if (loose >= 0) return loose
  const place = Number(wanted)
  return Number.isInteger(place) && place >= 1 && place <= names.length ? place - 1 : -1
}

function noColumn(what: string, column: ColumnName, names: readonly string[]): string {
  const meant = nearest(String(column), names)
  const shown = names.length > 12 ? say`${names.slice(0, 12).join(', ')} and ${names.length - 12} more` : names.join(', ')
  const hint = meant ? say`‘${meant}’ is near. There are` : say('there are')
  return say`${what}: there is no column ‘${column}’; ${hint} ${shown}`
}

function scaleOf({ unit = 'mm', scale, offset = 0, direction = 'compression', at = 'wheel' }: ChannelMapping, { travelMm, leverage }: EndFacts, end: EndName): Omit<Channel, 'column' | 'name'> | { problem: string } {
  const perUnit = scale ?? (unit === '%' ? travelMm && travelMm / 100 : lengthOf(unit))
  if (unit === '%' && perUnit === undefined) return { problem: say`${say(end)}: readings in % need the travel of the ${say(end)}` }
  if (perUnit === undefined) return { problem: say`${say(end)}: readings in ${unit} need a scale, mm for one ${unit}` }
  if (!(perUnit > 0) || !Number.isFinite(perUnit)) return { problem: say`${say(end)}: the scale must be above zero; a reading that falls as the suspension goes in has the direction extension` }
  const factor = direction === 'extension' ? -perUnit : perUnit
  // At the front the damper is the fork: it moves as the wheel does.
  const driven = at === 'damper' && end === 'rear' ? toWheel(leverage) : undefined
  if (isMissing(driven)) return { problem: say`${say(end)}: measured at the damper, which needs the ${driven.missing.join(say(' and the '))}` }
  return { factor, shift: offset === 0 ? 0 : -factor * offset, ...(driven ? { toWheel: driven } : {}), ...(travelMm !== undefined && travelMm > 0 ? { travelMm } : {}) }
}
