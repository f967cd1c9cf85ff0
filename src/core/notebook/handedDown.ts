import type { Difference } from './content'
import { LinkedEntry } from './linkedEntry'
import type { Setting, Standing } from './notebook'
import type { MapNode, TreeNode } from './tree'

/** What of an entry no other looks at, but for one that is compared with it as a baseline. Positions are told one by one. */
const keptToItself = new Set(['settings', 'sag', 'bounce', 'ride', 'reason', 'verdict', 'remarks', 'session', 'as_found'])

/** What differs for those that come from an entry, which is another one than before or inherits something else. */
export function handedDown(now: LinkedEntry, before: LinkedEntry, inherited: Difference | undefined): Difference | undefined {
  const isSame = now.content === before.content
  const slots = new Set<string>()
  for (const slot of inherited?.slots ?? []) if (!now.settings.has(slot)) slots.add(slot)
  if (!isSame) {
    for (const slot of new Set([...now.settings.keys(), ...before.settings.keys()])) {
      if (now.key !== before.key || !sameSetting(now.settings.get(slot), before.settings.get(slot))) slots.add(slot)
    }
  }
  // A baseline is compared with as a whole.
  const asBaseline = (now.baseline || before.baseline) && (!isSame || inherited !== undefined)
  const line = inherited?.line === true || asBaseline || (!isSame && (now.key !== before.key || !sameFacts(now.node, before.node)))
  return slots.size > 0 || line ? { slots, line } : undefined
}

/** What differs for an entry that comes from another one than before. */
export function anotherParent(now: LinkedEntry | undefined, before: LinkedEntry | undefined): Difference {
  const [these, those] = [now, before].map((entry) => (entry ? LinkedEntry.standingsOf(entry) : new Map<string, Standing>()))
  const slots = [...new Set([...these!.keys(), ...those!.keys()])].filter((slot) => {
    const [here, there] = [these!.get(slot), those!.get(slot)]
    return here?.setIn.key !== there?.setIn.key || !sameSetting(here?.setting, there?.setting)
  })
  return { slots: new Set(slots), line: true }
}

function sameSetting(a: Setting | undefined, b: Setting | undefined): boolean {
  return a === b || (a !== undefined && b !== undefined && a.node.text === b.node.text && a.shared === b.shared)
}

function sameFacts(a: MapNode, b: MapNode): boolean {
  const facts = (node: MapNode) => node.pairs.filter(({ key }) => !keptToItself.has(key.text))
  const [these, those] = [facts(a), facts(b)]
  return these.length === those.length && these.every(({ key, value }, at) => key.text === those[at]!.key.text && sameWords(value, those[at]!.value))
}

function sameWords(a: TreeNode, b: TreeNode): boolean {
  if (a.kind === 'scalar') return b.kind === 'scalar' && a.text === b.text && a.value === b.value
  if (a.kind === 'list') return b.kind === 'list' && a.items.length === b.items.length && a.items.every((item, at) => sameWords(item, b.items[at]!))
  return b.kind === 'map' && a.pairs.length === b.pairs.length && a.pairs.every(({ key, value }, at) => key.text === b.pairs[at]!.key.text && sameWords(value, b.pairs[at]!.value))
}
