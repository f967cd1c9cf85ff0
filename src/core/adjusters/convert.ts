import { fromBase, toBase, units, type Unit } from '../notation/units'
import type { End, Position } from '../notation/position'
import { phrase, say } from '../words/say'
import { naturalEnd, type Adjuster } from './adjuster'

/** A count in the adjuster's own unit and from its own end, or the facts that are missing to have it. */
export type Conversion = { count: number; missing?: undefined } | { count?: undefined; missing: string }

type Link = { from: string; to: string; ratio: (adjuster: Adjuster) => number | undefined; fact: string }

// One `from` is `ratio` times one `to`. Movement is counted in clicks, turns, rings or steps, and measured in mm.
const links: readonly Link[] = [
  { from: 'turn', to: 'click', ratio: (a) => a.clicksPerTurn, fact: 'clicks_per_turn' },
  { from: 'turn', to: 'length', ratio: (a) => a.mmPerTurn, fact: 'mm_per_turn' },
  { from: 'mark', to: 'length', ratio: (a) => a.mmPerRing, fact: 'mm_per_ring' },
  { from: 'click', to: 'length', ratio: (a) => a.mmPerClick, fact: 'mm_per_click' },
  { from: 'step', to: 'length', ratio: (a) => a.mmPerStep, fact: 'mm_per_step' },
]

/**
 * The ratio between two kinds of count on one adjuster: so many `to` for one `from`.
 * Looks for a way over the ratios the adjuster has; when there is none, names the facts of the shortest way.
 */
export function ratioBetween(from: string, to: string, adjuster: Adjuster): { ratio: number } | { missing: string } {
  const known = walk(from, to, (link) => link.ratio(adjuster))
  if (known) return { ratio: known.ratio }
  const possible = walk(from, to, (link) => link.ratio(adjuster) ?? 1)
  if (!possible) return { missing: say`a ${say(from)} cannot be turned into a ${say(to)}` }
  const facts = possible.links.filter((link) => link.ratio(adjuster) === undefined).map((link) => link.fact)
  return { missing: facts.join(say(' and ')) }
}

/** The facts that a conversion names as missing; none where it lacks something else. */
export function factsIn(missing: string): string[] {
  const facts = missing.split(say(' and '))
  return facts.every((fact) => /^[a-z_]+$/.test(fact)) ? facts : []
}

interface Way {
  at: string
  ratio: number
  links: Link[]
}

/** Breadth first over the links, so that the shortest way is found. */
function walk(from: string, to: string, ratioOf: (link: Link) => number | undefined): Way | undefined {
  const ways: Way[] = [{ at: from, ratio: 1, links: [] }]
  const seen = new Set([from])
  for (let way = ways.shift(); way; way = ways.shift()) {
    if (way.at === to) return way
    for (const link of links) {
      const onward = link.from === way.at ? link.to : link.to === way.at ? link.from : undefined
      const ratio = ratioOf(link)
      if (onward === undefined || seen.has(onward) || ratio === undefined || ratio <= 0) continue
      seen.add(onward)
      ways.push({ at: onward, ratio: way.ratio * (onward === link.to ? ratio : 1 / ratio), links: [...way.links, link] })
    }
  }
  return undefined
}

/**
 * An amount of movement in another unit of the same adjuster: turns, flats, clicks, rings, steps or mm.
 *
 * @example convertAmount(4, flats, turns, adjuster) // { count: 0.667 } always: six flats to a turn
 */
export function convertAmount(amount: number, from: Unit, to: Unit, adjuster: Adjuster): Conversion {
  if (from === to) return { count: amount }
  if (from.dimension === to.dimension) return { count: fromBase(toBase(amount, from), to) }
  const between = ratioBetween(from.dimension, to.dimension, adjuster)
  if ('missing' in between) return { missing: between.missing }
  return { count: fromBase(toBase(amount, from) * between.ratio, to) }
}

/**
 * The end a position is counted from on this adjuster: as written, or the adjuster's own. Only a count of another kind
 * has a natural end of its own: turns of preload go in, where the rings of the same adjuster show out. An adjuster
 * that its notebook counts against the custom is counted so in every unit.
 */
export function endOf(position: Position, adjuster: Adjuster): End | undefined {
  if (position.end !== undefined) return position.end
  const unit = position.unit ?? adjuster.counts
  if (adjuster.end === undefined || unit.dimension === adjuster.counts.dimension) return adjuster.end
  const againstCustom = adjuster.end !== naturalEnd(adjuster.control, adjuster.counts)
  return againstCustom ? adjuster.end : naturalEnd(adjuster.control, unit)
}

/**
 * A written position as a count in the adjuster's own unit and from its own end.
 *
 * @example ownCount({ amount: 4, unit: flats, end: 'open' }, preloadInTurns) // { count: 0.667 }
 */
export function ownCount(position: Position, adjuster: Adjuster): Conversion {
  const end = endOf(position, adjuster)
  if (end !== undefined && adjuster.end === undefined) return { missing: say`an end to count from: ${adjuster.label} has none` }
  const unit = position.unit ?? adjuster.counts
  const converted = convertAmount(position.amount, unit, adjuster.counts, adjuster)
  if (converted.count === undefined) return converted
  if (!sharesZero(unit, adjuster)) return { missing: scaleBegins }
  return end === undefined || end === adjuster.end ? converted : fromOtherEnd(converted.count, adjuster)
}

function fromOtherEnd(count: number, adjuster: Adjuster): Conversion {
  return adjuster.range === undefined ? { missing: 'range' } : { count: adjuster.range - count }
}

const scaleBegins = phrase('where its scale begins')

/**
 * Whether nought of this unit is nought of the adjuster's own. Two counts from an end share it, and so do engraved
 * lines and mm. A set length, a step or a dial number begins anywhere: step 1 is no measured distance from anything.
 */
function sharesZero(unit: Unit, adjuster: Adjuster): boolean {
  if (adjuster.end !== undefined || unit.dimension === adjuster.counts.dimension) return true
  return [unit, adjuster.counts].every((each) => each.dimension === 'length' || each.dimension === 'mark')
}

/** The adjuster's own count as a full position, ready to print. */
export function ownPosition(count: number, adjuster: Adjuster): Position {
  return adjuster.end === undefined ? { amount: count, unit: adjuster.counts } : { amount: count, unit: adjuster.counts, end: adjuster.end }
}

/** A count in another unit or from the other end; used to show every notation that an adjuster's ratios allow. */
export function inNotation(count: number, adjuster: Adjuster, unit: Unit, end: End | undefined): Conversion {
  if (end !== undefined && adjuster.end === undefined) return { missing: say`an end to count from: ${adjuster.label} has none` }
  const fromEnd = end === undefined || end === adjuster.end ? { count } : fromOtherEnd(count, adjuster)
  if (fromEnd.count === undefined) return fromEnd
  const converted = convertAmount(fromEnd.count, adjuster.counts, unit, adjuster)
  return converted.count === undefined || sharesZero(unit, adjuster) ? converted : { missing: scaleBegins }
}

/** The unit with this symbol; only for symbols that stand in the table. */
export function unitNamed(symbol: string): Unit {
  return units.find((unit) => unit.symbol === symbol)!
}
