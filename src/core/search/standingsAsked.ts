import { standsAt } from '../adjusters/positionWords'
import { slotKey, slotsOf, type Adjuster, type Slot } from '../adjusters/adjuster'
import { meansOf } from '../adjusters/changeWords'
import { endOf, ownCount } from '../adjusters/convert'
import { readPosition } from '../notation/position'
import type { Entry, Notebook } from '../notebook/notebook'
import { countOf, isSame } from '../rules/standings'
import { say } from '../words/say'
import { findAdjusters } from './findAdjusters'
import type { Comparison, Extreme, Sign } from './readQuery'

/** Whether an entry stands as asked, as the words of its positions; and why that cannot be told, where it cannot. */
export interface Asked {
  /** How it stands there, where it stands as asked. */
  at(entry: Entry): string | undefined
  problem?: string
}

/** Entries at which an adjuster, in either leg, stands on the asked side of a position. */
export function comparing(notebook: Notebook, { adjuster: name, sign, position: typed }: Comparison): Asked {
  const limits = findAdjusters(notebook, name).map((adjuster) => ({ adjuster, limit: limitOn(adjuster, sign, typed) }))
  const known = limits.flatMap(({ adjuster, limit }) => (typeof limit === 'string' ? [] : [{ adjuster, ...limit }]))
  const problem = limits.map(({ limit }) => limit).find((limit) => typeof limit === 'string')
  return { at: (entry) => words(entry, known.flatMap(({ adjuster, holds }) => slotsOf(adjuster).filter((slot) => holds(countIn(entry, slot))))), ...(problem === undefined ? {} : { problem }) }
}

/** Entries at which an adjuster stood furthest one way of all that its notebook records. */
export function furthest(notebook: Notebook, { word, adjuster: name }: Extreme): Asked {
  const adjusters = findAdjusters(notebook, name)
  const unclear = word === 'softest' || word === 'stiffest' ? adjusters.find((adjuster) => !isSoftOrStiff(adjuster)) : undefined
  if (unclear) return { at: () => undefined, problem: say`‘${word}’ says nothing clear of ${unclear.label}: look for \`least ${unclear.id}\` or \`most ${unclear.id}\`` }
  const ends = new Map(adjusters.map((adjuster) => [adjuster, endOfRecord(notebook, adjuster, word === 'most' || word === 'stiffest')]))
  return { at: (entry) => words(entry, adjusters.flatMap((adjuster) => slotsOf(adjuster).filter((slot) => equals(countIn(entry, slot), ends.get(adjuster))))) }
}

/** Of preload and heights nobody can say which way is softer: preload leaves the spring as it is. */
function isSoftOrStiff({ control }: Adjuster): boolean {
  return control.damping === true || ['spring_rate', 'air_pressure', 'tyre_pressure'].includes(control.name)
}

function endOfRecord(notebook: Notebook, adjuster: Adjuster, wantsMost: boolean): number | undefined {
  const counts = notebook.entries.flatMap((entry) => slotsOf(adjuster).flatMap((slot) => countIn(entry, slot) ?? []))
  if (counts.length === 0) return undefined
  const risesToMore = meansOf(adjuster, 1) === 'more'
  return risesToMore === wantsMost ? Math.max(...counts) : Math.min(...counts)
}

/** A comparison in an adjuster's own count, or why there is none. Counted from the other end, more is less. */
function limitOn(adjuster: Adjuster, sign: Sign, typed: string): { holds: (count: number | undefined) => boolean } | string {
  const reading = readPosition(typed, adjuster.end === undefined)
  if (reading.value === undefined) return say`‘${typed}’ is no position: ${reading.problem}`
  const { count, missing } = ownCount(reading.value, adjuster)
  if (count === undefined) return say`‘${typed}’ is no count of ${adjuster.label}: it needs ${missing}`
  const end = endOf(reading.value, adjuster)
  const own = end === undefined || end === adjuster.end ? sign : mirrored[sign]
  return { holds: (at) => at !== undefined && tests[own](at, count) }
}

const mirrored: Record<Sign, Sign> = { '<': '>', '<=': '>=', '=': '=', '>=': '<=', '>': '<' }
const tests: Record<Sign, (at: number, limit: number) => boolean> = {
  '<': (at, limit) => at < limit && !isSame(at, limit),
  '<=': (at, limit) => at < limit || isSame(at, limit),
  '=': isSame,
  '>=': (at, limit) => at > limit || isSame(at, limit),
  '>': (at, limit) => at > limit && !isSame(at, limit),
}

const equals = (a: number | undefined, b: number | undefined) => a !== undefined && b !== undefined && isSame(a, b)

function countIn(entry: Entry, { adjuster, leg }: Slot): number | undefined {
  return countOf(entry.state.get(slotKey(adjuster.id, leg))?.setting)
}

/** 'Fork rebound 12 clicks out', one leg named where the other stands otherwise; where it was set, if not here. */
function words(entry: Entry, slots: readonly Slot[]): string | undefined {
  const told = slots.map((slot) => {
    const { adjuster, leg } = slot
    const both = leg !== undefined && slots.some((other) => other.adjuster === adjuster && other.leg !== leg && equals(countIn(entry, other), countIn(entry, slot)))
    const setIn = entry.state.get(slotKey(adjuster.id, leg))!.setIn
    const since = setIn === entry ? '' : say` (since ${setIn.key})`
    return `${adjuster.label}${leg && !both && adjuster.legs.length > 1 ? ` ${leg}` : ''} ${standsAt(countIn(entry, slot)!, adjuster)}${since}`
  })
  return told.length === 0 ? undefined : [...new Set(told)].join(', ')
}
