import { settle, type Three } from './threeWay'

/** Which version of a list something is in. */
export interface Whereabouts {
  inBase: boolean
  inOurs: boolean
  inTheirs: boolean
}

/**
 * The keys of a merged list in their order: as on the side that put what both have in another order, else as on ours.
 * What they added stands behind what it follows on their side, and behind what we added there. Additions of both at one
 * place are sorted by their days, where each side's are in order by itself.
 *
 * @param days the day of a key, as a text that sorts
 */
export function orderKeys(keys: Three<readonly string[]>, days: (key: string) => string | undefined): string[] {
  const sets = { base: new Set(keys.base), ours: new Set(keys.ours), theirs: new Set(keys.theirs) }
  const common = (side: readonly string[]) => side.filter((key) => sets.base.has(key) && sets.ours.has(key) && sets.theirs.has(key))
  const follows = settle({ base: common(keys.base).join('\n'), ours: common(keys.ours).join('\n'), theirs: common(keys.theirs).join('\n') })
  const isTheirs = follows !== undefined && follows.value === common(keys.theirs).join('\n') && follows.value !== common(keys.ours).join('\n')
  const [lead, other, inOther] = isTheirs ? [keys.theirs, keys.ours, sets.ours] : [keys.ours, keys.theirs, sets.theirs]
  const order = [...lead]
  const placed = new Set(lead)
  let before: string | undefined
  for (const key of other) {
    if (!placed.has(key)) {
      let at = before === undefined ? 0 : order.indexOf(before) + 1
      while (at < order.length && !inOther.has(order[at]!) && !sets.base.has(order[at]!)) at++
      order.splice(at, 0, key)
      placed.add(key)
    }
    before = key
  }
  return sortedRuns(order, (key) => (sets.base.has(key) || (sets.ours.has(key) && sets.theirs.has(key)) ? undefined : sets.ours.has(key) ? 'ours' : 'theirs'), days)
}

/** Sorts each run of one-sided additions by day, without moving those of one side among themselves. */
function sortedRuns(order: readonly string[], sideOf: (key: string) => 'ours' | 'theirs' | undefined, days: (key: string) => string | undefined): string[] {
  const sorted: string[] = []
  for (let at = 0; at < order.length;) {
    let end = at
    while (end < order.length && sideOf(order[end]!) !== undefined) end++
    if (end === at) sorted.push(order[at++]!)
    else {
      const run = order.slice(at, end)
      sorted.push(...zipByDay(run.filter((key) => sideOf(key) === 'ours'), run.filter((key) => sideOf(key) === 'theirs'), days) ?? run)
      at = end
    }
  }
  return sorted
}

function zipByDay(ours: string[], theirs: string[], days: (key: string) => string | undefined): string[] | undefined {
  const isRising = (keys: readonly string[]) => keys.every((key, at) => days(key) !== undefined && (at === 0 || days(keys[at - 1]!)! <= days(key)!))
  if (!isRising(ours) || !isRising(theirs)) return undefined
  const zipped: string[] = []
  while (ours.length > 0 || theirs.length > 0) {
    const isOurs = theirs.length === 0 || (ours.length > 0 && days(ours[0]!)! <= days(theirs[0]!)!)
    zipped.push((isOurs ? ours : theirs).shift()!)
  }
  return zipped
}
