import type { Finding } from '../finding'

/**
 * A number for each finding that is the same in the next version of a text, wherever it stands then and whatever else is found:
 * it is made of its rule and its cell. Several of one rule about one cell are told apart by their order.
 */
export function findingIds(findings: readonly Finding[]): number[] {
  const taken = new Set<number>()
  /** Where to look on for a number, so that thousands of one sort are not counted through again for each. */
  const next = new Map<number, number>()
  return findings.map((finding) => {
    const first = hashOf(finding)
    let id = first
    if (taken.has(first)) {
      id = next.get(first) ?? first
      while (taken.has(id)) id = (id + 1) >>> 0
      next.set(first, (id + 1) >>> 0)
    }
    taken.add(id)
    return id
  })
}

const hashes = new WeakMap<Finding, number>()

function hashOf(finding: Finding): number {
  const known = hashes.get(finding)
  if (known !== undefined) return known
  const { code, place } = finding
  const value = hash(`${code}\n${place?.entry ?? ''}\n${place?.row ?? ''}`)
  hashes.set(finding, value)
  return value
}

/** FNV-1a: short texts of few letters, well spread over 32 bits. */
function hash(text: string): number {
  let value = 0x811c9dc5
  for (let at = 0; at < text.length; at++) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193)
  return value >>> 0
}
