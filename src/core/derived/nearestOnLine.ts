import { knownOf, recall } from '../notebook/content'
import type { Entry } from '../notebook/notebook'

/**
 * A fact that holds until another entry of the line says otherwise: what this entry says, or the nearest before it. Each entry
 * keeps its answer, so that a season in one file is walked once and not once for every entry. For plain values alone: an entry
 * of an older version of the text must not come back by it.
 */
export function nearestOnLine<Value extends string | number | boolean>(said: (entry: Entry) => Value | undefined): (entry: Entry) => Value | undefined {
  const key = { nearestOnLine: said }
  return (entry) => {
    const passed: Entry[] = []
    let at: Entry | undefined = entry
    let value: Value | undefined
    while (at) {
      const known = knownOf<Value | undefined>(at, key)
      value = known ? known.value : said(at)
      if (known) break
      passed.push(at)
      if (value !== undefined) break
      at = at.parent
    }
    // From the top down, and not by each asking its parent: a line may be longer than a stack is deep.
    for (const each of passed.reverse()) {
      const above: Value | undefined = value
      value = recall(each, key, undefined, () => said(each) ?? (each.parent && above))
    }
    return value
  }
}
