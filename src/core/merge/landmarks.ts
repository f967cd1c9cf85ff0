import type { Three } from './threeWay'

/** Where a line stands that each of three texts has just once; they come in the same order in all of them. */
export function landmarks(lines: Three<readonly string[]>): Three<number>[] {
  const [ours, theirs] = [singles(lines.ours), singles(lines.theirs)]
  const common = [...singles(lines.base)].flatMap(([line, base]) => {
    const [one, other] = [ours.get(line), theirs.get(line)]
    return one === undefined || other === undefined ? [] : [{ base, ours: one, theirs: other }]
  })
  return longestRising(longestRising(common, ({ ours: at }) => at), ({ theirs: at }) => at)
}

/** The lines that stand once, in their order, and where. */
function singles(lines: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>()
  for (const line of lines) counts.set(line, (counts.get(line) ?? 0) + 1)
  return new Map(lines.flatMap((line, at): [string, number][] => (counts.get(line) === 1 ? [[line, at]] : [])))
}

/** The longest sequence whose numbers rise: what is left out was moved. */
function longestRising<T>(items: readonly T[], numberOf: (item: T) => number): T[] {
  const before = new Map<number, number>()
  /** For each length the item that ends the sequence of that length with the smallest number. */
  const ends: number[] = []
  items.forEach((item, at) => {
    let low = 0
    for (let high = ends.length; low < high;) {
      const middle = (low + high) >> 1
      if (numberOf(items[ends[middle]!]!) < numberOf(item)) low = middle + 1
      else high = middle
    }
    if (low > 0) before.set(at, ends[low - 1]!)
    ends[low] = at
  })
  const sequence: T[] = []
  for (let at = ends.at(-1); at !== undefined; at = before.get(at)) sequence.push(items[at]!)
  return sequence.reverse()
}
