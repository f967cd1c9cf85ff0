import { diff3Merge } from 'node-diff3'
import type { Piece } from './piece'
import { settle, type Three } from './threeWay'

/** Merges texts line by line. Lines that both sides changed, or that stand side by side and were changed by one each, clash. */
export function mergeLines(texts: Three<string>, about: string): Piece[] {
  const settled = settle(texts)
  if (settled) return [settled.value]
  const regions = diff3Merge(linesOf(texts.ours), linesOf(texts.base), linesOf(texts.theirs), { excludeFalseConflicts: true })
  return regions.map(({ ok, conflict }): Piece => (conflict ? { ours: conflict.a.join(''), theirs: conflict.b.join(''), about } : (ok ?? []).join('')))
}

/** Lines with their ends. */
function linesOf(text: string): string[] {
  return text.match(/[^\n]*\n|[^\n]+$/g) ?? []
}
