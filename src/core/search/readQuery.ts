/** What is looked for: words that must all be there, positions to compare, ends of what was recorded. Plain data. */
export interface Query {
  /** As `fold` makes them. */
  words: string[]
  comparisons: Comparison[]
  extremes: Extreme[]
}

/** `fork_rebound >= 12 out`, as it was typed: what the position means is the adjuster's to say. */
export interface Comparison {
  adjuster: string
  sign: Sign
  position: string
}

export type Sign = '<' | '<=' | '=' | '>=' | '>'

/** `softest fork_rebound`: the entries at which it stood furthest that way of all that its notebook records. */
export interface Extreme {
  adjuster: string
  word: 'least' | 'most' | 'softest' | 'stiffest'
}

const comparison = /^([^<>=]+)(<=|>=|[<>=])([^<>=]+)$/
const extreme = /^(least|most|softest|stiffest)\s([^]+)$/i

/**
 * Reads what was typed into a search: parts set apart by `and`, a comma or a semicolon, each a comparison, an extreme
 * or words. Never fails: what is neither of the first two is words.
 *
 * @example readQuery('harsh and fork_rebound >= 12 out')
 */
export function readQuery(text: string): Query {
  const query: Query = { words: [], comparisons: [], extremes: [] }
  for (const part of text.replace(/\s+/g, ' ').replace(/≤/g, '<=').replace(/≥/g, '>=').split(/ and |[,;] /i).map((each) => each.trim())) {
    const compared = comparison.exec(part)
    const furthest = extreme.exec(part)
    if (compared) query.comparisons.push({ adjuster: compared[1]!.trim(), sign: compared[2] as Sign, position: compared[3]!.trim() })
    else if (furthest) query.extremes.push({ word: furthest[1]!.toLowerCase() as Extreme['word'], adjuster: furthest[2]!.trim() })
    else query.words.push(...fold(part).split(/\s+/).filter(Boolean))
  }
  return query
}

/** A text so that case, accents and the shape of its apostrophes do not matter. */
export function fold(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').replace(/[’‘`´]/g, "'").toLowerCase()
}
