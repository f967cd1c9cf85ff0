/** Where `went` items of one list, from `at` on, make place for `came` of another, from `to` on. */
export interface Gap {
  at: number
  went: number
  to: number
  came: number
}

/** So far it is looked for where two lists are alike again. */
const farthest = 48
/** More that went or came are quicker looked at all at once. */
const most = 200

/** Where two lists of the same things differ, in their order; `undefined` where they do for long or in many places. @example differing([1, 2, 3], [1, 4, 3]) // [{ at: 1, went: 1, to: 1, came: 1 }] */
export function differing<Item>(before: readonly Item[], now: readonly Item[]): Gap[] | undefined {
  const gaps: Gap[] = []
  let together = 0
  for (let [at, to] = [0, 0]; at < before.length || to < now.length;) {
    if (at < before.length && to < now.length && before[at] === now[to]) {
      at++
      to++
      continue
    }
    const gap = gapAt(before, at, now, to)
    if (!gap || (together += gap.went + gap.came) > most) return undefined
    gaps.push(gap)
    at += gap.went
    to += gap.came
  }
  return gaps
}

/** What is in these places of a list that was. */
export function whatWent<Item>(before: readonly Item[], gaps: readonly Gap[]): Item[] {
  return gaps.flatMap(({ at, went }) => before.slice(at, at + went))
}

/** What is in these places of a list that is. */
export function whatCame<Item>(now: readonly Item[], gaps: readonly Gap[]): Item[] {
  return gaps.flatMap(({ to, came }) => now.slice(to, to + came))
}

/** The shortest after which they are alike again. */
function gapAt<Item>(before: readonly Item[], at: number, now: readonly Item[], to: number): Gap | undefined {
  for (let both = 1; both <= farthest; both++) {
    for (let went = Math.max(0, both - (now.length - to)); went <= Math.min(both, before.length - at); went++) {
      const [i, j] = [at + went, to + both - went]
      const isEnd = i === before.length && j === now.length
      if (isEnd || (i < before.length && j < now.length && before[i] === now[j])) return { at, went, to, came: both - went }
    }
  }
  return undefined
}
