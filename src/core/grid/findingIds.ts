import type { Finding } from '../finding'

/** The numbers of findings, in their order. */
export interface Ids {
  ids: number[]
  taken: Set<number>
  /** Numbers that more than one finding asked for, or that were looked at to find another: who leaves or comes there changes more than its own. */
  crowded: Set<number>
}

/**
 * A number for each finding that is the same in the next version of a text, wherever it stands then and whatever else is found:
 * it is made of its rule and its cell. Several of one rule about one cell are told apart by their order.
 */
export function findingIds(findings: readonly Finding[]): number[] {
  return numberFindings(findings).ids
}

/** The same, for whoever goes on from there. */
export function numberFindings(findings: readonly Finding[]): Ids {
  const taken = new Set<number>()
  const crowded = new Set<number>()
  /** Where to look on for a number, so that thousands of one sort are not counted through again for each. */
  const next = new Map<number, number>()
  const ids = findings.map((finding) => {
    const first = firstId(finding)
    let id = first
    if (taken.has(first)) {
      crowded.add(first)
      id = next.get(first) ?? first
      while (taken.has(id)) crowded.add(id = (id + 1) >>> 0)
      next.set(first, (id + 1) >>> 0)
    }
    taken.add(id)
    return id
  })
  return { ids, taken, crowded }
}

const hashes = new WeakMap<Finding, number>()

/** The number of a finding where no other has it. */
export function firstId(finding: Finding): number {
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
