import type { Entry } from '../notebook/notebook'

/** An entry is made anew where the line it comes from is another, so that what was found along it holds for good. */
const known = new WeakMap<Entry, { baseline: Entry | undefined }>()

/** The last baseline before an entry, along the line it comes from. Asked of every entry of a season, it goes along the line once in all. */
export function baselineFor(entry: Entry): Entry | undefined {
  const passed: Entry[] = []
  let baseline: Entry | undefined
  for (let at: Entry | undefined = entry; at; ) {
    const parent: Entry | undefined = at.parent
    const answer = known.get(at)
    if (answer) {
      baseline = answer.baseline
      break
    }
    passed.push(at)
    baseline = parent?.baseline ? parent : undefined
    at = baseline ? undefined : parent
  }
  for (const each of passed) known.set(each, { baseline })
  return baseline
}
