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

/** Of two in one place the one in order came first: what came behind it and stood before it is among the others. */
function merged(inOrder: readonly Finding[], others: readonly Finding[]): Finding[] {
  const all: Finding[] = []
  let at = 0
  for (const other of others) {
    while (at < inOrder.length && compare(inOrder[at]!, other) <= 0) all.push(inOrder[at++]!)
    all.push(other)
  }
  while (at < inOrder.length) all.push(inOrder[at++]!)
  return all
}

function compare(a: Finding, b: Finding): number {
  return a.range.start - b.range.start || a.range.end - b.range.end
}
