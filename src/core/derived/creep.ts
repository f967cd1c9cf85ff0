import { slotKey, slotsOf, type Adjuster, type Leg } from '../adjusters/adjuster'
import { movementWords } from '../adjusters/changeWords'
import { ownCount } from '../adjusters/convert'
import { isTurned } from '../adjusters/describeTurning'
import type { Entry, Notebook, Setting } from '../notebook/notebook'
import { phrase, say } from '../words/say'

/**
 * Where adjusters were found against where they were last left, over all as-found entries: one surprise may be a
 * curious hand, a detent that moves time and again is worn. Only for what is turned; air leaks by other laws.
 */

/** One time an adjuster was looked at again. */
export interface CreepCheck {
  /** The entry in which it was found, and the one that had left it. */
  foundIn: Entry
  leftIn: Entry
  /** In the adjuster's own count and from its own end. */
  left: number
  found: number
  /** Found less left. */
  by: number
}

/** `holds`: found where it was left, every time. `once`: moved one time. `keeps-moving`: moved more than once. */
export type CreepPattern = 'holds' | 'once' | 'keeps-moving'

/** The record of one adjuster, or of one leg's. */
export interface Creep {
  slot: string
  adjuster: Adjuster
  leg?: Leg
  /** Every check, oldest first; at least one. */
  checks: readonly CreepCheck[]
  /** Those of them that found it elsewhere. */
  moved: readonly CreepCheck[]
  pattern: CreepPattern
  /** True where it moved more than once, and always the same way. */
  oneWay: boolean
}

/** The record of every adjuster that was looked at again after it had been left, in the notebook's order. */
export function creepRecord(notebook: Notebook): Creep[] {
  return [...notebook.adjusters.values()].filter(isTurned).flatMap((adjuster) =>
    slotsOf(adjuster).flatMap(({ leg }) => creepOf(notebook, adjuster, leg) ?? []))
}

/** The record of one adjuster, or one leg's; `undefined` where it was never looked at again. */
export function creepOf(notebook: Notebook, adjuster: Adjuster, leg: Leg | undefined): Creep | undefined {
  const slot = slotKey(adjuster.id, leg)
  const checks = notebook.entries.flatMap((entry) => checkIn(entry, slot) ?? [])
  if (checks.length === 0) return undefined
  const moved = checks.filter(({ by }) => Math.abs(by) > sameCount)
  const pattern = moved.length === 0 ? 'holds' : moved.length === 1 ? 'once' : 'keeps-moving'
  const oneWay = moved.length > 1 && moved.every(({ by }) => by > 0 === moved[0]!.by > 0)
  return { slot, adjuster, ...(leg ? { leg } : {}), checks, moved, pattern, oneWay }
}

/** Counts that differ by less are the same position. */
const sameCount = 1e-6

function checkIn(entry: Entry, slot: string): CreepCheck | undefined {
  const setting = entry.asFound ? entry.settings.get(slot) : undefined
  const standing = setting && entry.inherited.get(slot)
  if (!setting || !standing) return undefined
  const [left, found] = [countOf(standing.setting), countOf(setting)]
  return left === undefined || found === undefined ? undefined : { foundIn: entry, leftIn: standing.setIn, left, found, by: found - left }
}

function countOf({ reading, adjuster }: Setting): number | undefined {
  return reading.value && ownCount(reading.value, adjuster).count
}

const suspects: Record<string, string> = {
  ball: phrase('Its ball detent is worn or dirty'), o_ring: phrase('Its O-ring is worn or dry'), friction: phrase('Friction alone does not hold it'),
  locknut: phrase('Its locknut works loose'), nothing: phrase('Nothing holds it'),
}

/**
 * The record as a sentence or two for people.
 *
 * @example 'Found elsewhere than it was left in 3 of 3 checks: 2 clicks out, 1 click out, 2 clicks out; always the same way. Its ball detent is worn or dirty: …'
 */
export function creepWords({ adjuster, checks, moved, pattern, oneWay }: Creep): string {
  const looked = checks.length === 1 ? say('once') : say`${checks.length} times`
  if (pattern === 'holds') return say`Looked at again ${looked}, and found where it was left.`
  const steps = moved.map(({ by }) => movementWords(adjuster, by)).join(', ')
  const found = say`Found elsewhere than it was left in ${moved.length} of ${checks.length} ${checks.length === 1 ? say('check') : say('checks')}: ${steps}`
  if (pattern === 'once') return `${found}.`
  const suspect = say(suspects[adjuster.heldBy ?? ''] ?? phrase('What holds it is worn'))
  const advice = say('have it seen to, and check where it stands before every ride until then')
  return say`${found}${oneWay ? say('; always the same way') : ''}. ${suspect}, or someone turns it: ${advice}.`
}
