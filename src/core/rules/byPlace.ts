import type { Finding } from '../finding'

/**
 * Findings in the order of the text; those of one place stay in the order they came in. Nearly all come in order, entry by
 * entry, so that only the others are sorted, and put between them.
 */
export function byPlace(findings: readonly Finding[]): Finding[] {
  const inOrder: Finding[] = []
  const others: Finding[] = []
  let last: Finding | undefined
  for (const finding of findings) {
    if (last && compare(last, finding) > 0) others.push(finding)
    else inOrder.push(last = finding)
  }
  return others.length === 0 ? inOrder : merged(inOrder, others.sort(compare))
}

/** The findings of all entries one behind the other, each entry's in order; and whether all of them are. */
export function oneAfterTheOther(lists: readonly (readonly Finding[])[]): { all: Finding[]; inOrder: boolean } {
  const all: Finding[] = []
  let inOrder = true
  for (const list of lists) {
    if (list.length === 0) continue
    const last = all[all.length - 1]
    if (last && compare(last, list[0]!) > 0) inOrder = false
    for (let at = 0; at < list.length; at++) all.push(list[at]!)
  }
  return { all, inOrder }
}

/** The same as `byPlace` of both, where the first are in order and many: no more of them is looked at than the places of the others. */
export function putAmong(inOrder: readonly Finding[], others: readonly Finding[]): Finding[] {
  return merged(inOrder, byPlace(others))
}

/** Of two in one place the one in order came first: what came behind it and stood before it is among the others. */
function merged(inOrder: readonly Finding[], others: readonly Finding[]): Finding[] {
  const all: Finding[] = []
  let at = 0
  for (const other of others) {
    for (const to = firstBehind(inOrder, other, at); at < to; at++) all.push(inOrder[at]!)
    all.push(other)
  }
  while (at < inOrder.length) all.push(inOrder[at++]!)
  return all
}

function firstBehind(findings: readonly Finding[], other: Finding, from: number): number {
  let [at, to] = [from, findings.length]
  while (at < to) {
    const middle = (at + to) >> 1
    if (compare(findings[middle]!, other) <= 0) at = middle + 1
    else to = middle
  }
  return at
}

function compare(a: Finding, b: Finding): number {
  return a.range.start - b.range.start || a.range.end - b.range.end
}
