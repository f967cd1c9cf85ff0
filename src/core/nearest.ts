/** Edit distance of two words that counts a swap of neighbours as one (optimal string alignment). */
function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min(row[j - 1]! + 1, rows[i - 1]![j]! + 1, rows[i - 1]![j - 1]! + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, rows[i - 2]![j - 2]! + 1)
      row.push(best)
    }
    rows.push(row)
  }
  return rows[a.length]![b.length]!
}

/**
 * The name that was probably meant, or `undefined` when none is near: at most a third of the word may differ.
 *
 * @example nearest('fork_rebond', ['fork_rebound', 'shock_rebound']) // 'fork_rebound'
 */
export function nearest(word: string, names: Iterable<string>): string | undefined {
  // What is written as a block ends with its line.
  const meant = word.trim().toLowerCase()
  if (meant === '' || meant.length > 80) return undefined
  const limit = Math.max(1, Math.floor(meant.length / 3))
  let best: string | undefined
  let least = limit + 1
  for (const name of names) {
    if (Math.abs(name.length - meant.length) > limit) continue
    const far = distance(meant, name.toLowerCase())
    if (far < least) {
      least = far
      best = name
    }
  }
  return best
}
