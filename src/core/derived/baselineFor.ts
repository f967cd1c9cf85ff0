import { lookAlongTheLine } from '../notebook/content'
import type { Entry } from '../notebook/notebook'

/** An entry is made anew where the line it comes from is another, so that what was found along it holds for good. */
const known = new WeakMap<Entry, Entry | undefined>()

/** The last baseline before an entry, along the line it comes from. Asked of every entry of a season, it goes along the line once in all. */
export function baselineFor(entry: Entry): Entry | undefined {
  lookAlongTheLine()
  const passed: Entry[] = []
  let at: Entry | undefined = entry
  for (; at && !known.has(at); at = at.parent) passed.push(at)
  let baseline = at && known.get(at)
  for (const each of passed.reverse()) {
    if (each.parent?.baseline) baseline = each.parent
    known.set(each, baseline)
  }
  return baseline
}
