import { diff3Merge } from 'node-diff3'
import type { Piece } from './piece'
import { landmarks } from './landmarks'
import { mapThree, settle, type Three } from './threeWay'

/**
 * Merges texts line by line. Lines that both sides changed, or that stand side by side and were changed by one each, clash.
 * It is done between lines that stand once in every text: a notebook says `settings:` a thousand times, and to weigh each
 * of them against each other would take very long.
 */
export function mergeLines(texts: Three<string>, about: string): Piece[] {
  const settled = settle(texts)
  if (settled) return [settled.value]
  const lines = mapThree(texts, linesOf)
  const pieces: Piece[] = []
  let from: Three<number> = { base: 0, ours: 0, theirs: 0 }
  for (const to of [...landmarks(lines), mapThree(lines, ({ length }) => length)]) {
    const between = { base: lines.base.slice(from.base, to.base), ours: lines.ours.slice(from.ours, to.ours), theirs: lines.theirs.slice(from.theirs, to.theirs) }
    pieces.push(...mergeStretch(between, about), lines.base[to.base] ?? '')
    from = mapThree(to, (at) => at + 1)
  }
  return pieces
}

function mergeStretch(lines: Three<string[]>, about: string): Piece[] {
  const settled = settle(mapThree(lines, (each) => each.join('')))
  if (settled) return [settled.value]
  const regions = diff3Merge(lines.ours, lines.base, lines.theirs, { excludeFalseConflicts: true })
  return regions.map(({ ok, conflict }): Piece => (conflict ? { ours: conflict.a.join(''), theirs: conflict.b.join(''), about } : (ok ?? []).join('')))
}

/** Lines with their ends. */
function linesOf(text: string): string[] {
  return text === '' ? [] : text.split(/(?<=\n)/)
}
