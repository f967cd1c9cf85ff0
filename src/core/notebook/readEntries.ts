import { slotKey, type Adjuster, type Leg } from '../adjusters/adjuster'
import { readPosition } from '../notation/position'
import { Content, type Difference } from './content'
import { anotherParent, handedDown } from './handedDown'
import { LinkedEntry, type Said } from './linkedEntry'
import type { Entry, Setting, Stranger, Written } from './notebook'
import { nodeAt, originOf, pairOf, scalarAt, type MapNode, type Pair, type ScalarNode, type TreeNode } from './tree'

/** An entry on its way to be linked to the one it comes from. */
interface Draft {
  said: Said
  key: string
  index: number
  parent?: Draft
  /** What became of it. */
  linked?: LinkedEntry
}

/**
 * The entries of a notebook, each linked to the one it comes from and with every position it stands in resolved. Those
 * of an `earlier` version with the same facts about the machine are known again by what they say.
 */
export function readEntries(root: MapNode | undefined, adjusters: ReadonlyMap<string, Adjuster>, earlier: readonly Entry[] = []): Entry[] {
  const list = nodeAt(root, ['entries'])
  if (list?.kind !== 'list') return []
  const before = earlier as readonly LinkedEntry[]
  const byNode = later(() => new Map(before.map((entry) => [entry.node, entry])))
  const drafts: Draft[] = []
  for (const item of list.items) {
    if (item.kind !== 'map') continue
    const index = drafts.length
    // Where as many stand as before, one that is not in its place is nearly always another.
    const known = before[index]?.node === item ? before[index] : before.length === list.items.length ? undefined : byNode().get(item)
    drafts.push({ said: known?.said ?? readEntry(item, adjusters), key: '', index })
  }
  nameKeys(drafts)
  linkParents(drafts)
  settle(ancestorsFirst(drafts), before)
  return drafts.map(({ linked }) => linked!)
}

/** Made when first asked for: in most versions of a text nearly every entry is where it was, and no table of them is wanted. */
function later<Value>(make: () => Value): () => Value {
  let made: { value: Value } | undefined
  return () => (made ??= { value: make() }).value
}

/**
 * Links each entry, after the one it comes from. An earlier entry that is the same in everything takes its place; one that
 * says the same hands on its `content`, less what looked at anything that differs in what it inherits.
 */
function settle(ancestorsFirst: readonly Draft[], earlier: readonly LinkedEntry[]): void {
  const byKey = later(() => new Map(earlier.map((entry) => [entry.key, entry])))
  const passed = new Map<LinkedEntry, Passed>()
  const passedBy = (entry: LinkedEntry) => passed.get(entry) ?? (earlier[entry.index] === entry ? { before: entry, down: undefined } : undefined)
  for (const draft of ancestorsFirst) {
    const parent = draft.parent?.linked
    const there = earlier[draft.index]
    if (there && there.node === draft.said.node && there.key === draft.key && LinkedEntry.parentOf(there) === parent) {
      draft.linked = there
      continue
    }
    const before = there?.key === draft.key ? there : byKey().get(draft.key)
    const inherited = before && inheritedBy(before, parent, parent && passedBy(parent))
    const saysTheSame = before && originOf(before.node) === originOf(draft.said.node)
    const content = saysTheSame ? before.content : new Content()
    const entry = new LinkedEntry(draft.said, draft.key, draft.index, parent, content)
    if (inherited && saysTheSame) content.forget(inherited)
    if (before) passed.set(entry, { before, down: handedDown(entry, before, inherited) })
    draft.linked = entry
  }
}

/** The earlier version of an entry, and what differs for those that come from it. */
interface Passed {
  before: LinkedEntry
  down: Difference | undefined
}

function inheritedBy(before: LinkedEntry, parent: LinkedEntry | undefined, passed: Passed | undefined): Difference | undefined {
  const from = LinkedEntry.parentOf(before)
  if (!parent && !from) return undefined
  return passed && passed.before === from ? passed.down : anotherParent(parent, from)
}

function readEntry(node: MapNode, adjusters: ReadonlyMap<string, Adjuster>): Said {
  const located = (key: string): Written | undefined => {
    const found = scalarAt(node, [key])
    return found && { value: found.text, range: found.range, node: found }
  }
  const id = located('id')
  const date = located('date')
  const from = located('from')
  const reason = located('reason')
  return {
    node, range: id?.range ?? node.pairs[0]?.key.range ?? node.range,
    ...(id ? { id } : {}), ...(date ? { date } : {}), ...(from ? { from } : {}), ...(reason ? { reason } : {}),
    asFound: scalarAt(node, ['as_found'])?.value === true,
    baseline: scalarAt(node, ['baseline'])?.value === true,
    ...readSettings(pairOf(node, 'settings')?.value, adjusters),
  }
}

function readSettings(node: TreeNode | undefined, adjusters: ReadonlyMap<string, Adjuster>) {
  const settings = new Map<string, Setting>()
  const strangers: Stranger[] = []
  for (const pair of node?.kind === 'map' ? node.pairs : []) {
    const adjuster = adjusters.get(pair.key.text)
    if (!adjuster) strangers.push({ name: pair.key.text, key: pair.key })
    else if (pair.value.kind === 'scalar') addWhole(pair.value, adjuster, settings)
    else if (pair.value.kind === 'map') for (const leg of pair.value.pairs) addLeg(leg, adjuster, settings, strangers)
  }
  return { settings, strangers }
}

function addWhole(node: ScalarNode, adjuster: Adjuster, settings: Map<string, Setting>): void {
  if (node.style === 'empty' || node.value === null) return
  const reading = readFor(node, adjuster)
  const legs: (Leg | undefined)[] = adjuster.legs.length === 0 ? [undefined] : [...adjuster.legs]
  for (const leg of legs) settings.set(slotKey(adjuster.id, leg), { adjuster, ...(leg ? { leg } : {}), node, reading, shared: legs.length > 1 })
}

function addLeg(pair: Pair, adjuster: Adjuster, settings: Map<string, Setting>, strangers: Stranger[]): void {
  const leg = adjuster.legs.find((each) => each === pair.key.text)
  if (!leg) {
    strangers.push({ name: adjuster.id, leg: pair.key.text, adjuster, key: pair.key })
    return
  }
  if (pair.value.kind !== 'scalar' || pair.value.style === 'empty' || pair.value.value === null) return
  settings.set(slotKey(adjuster.id, leg), { adjuster, leg, node: pair.value, reading: readFor(pair.value, adjuster), shared: false })
}

/** `in` is an inch only for what is measured and has no ends. */
function readFor(node: ScalarNode, adjuster: Adjuster): Setting['reading'] {
  return readPosition(node.text, adjuster.control.counted === undefined)
}

/** An id such as `#3` would be taken for a place in the list, so it is no key. */
const placeLike = /^#\d+$/

function nameKeys(entries: readonly Draft[]): void {
  const ids = new Set<string>()
  const twice = new Set<string>()
  for (const { said: { id } } of entries) if (id) (ids.has(id.value) ? twice : ids).add(id.value)
  for (const entry of entries) {
    const { id } = entry.said
    const isKey = id && !twice.has(id.value) && !placeLike.test(id.value)
    entry.key = isKey ? id.value : `#${entry.index + 1}`
  }
}

function linkParents(entries: readonly Draft[]): void {
  const byId = later(() => firstOfEachId(entries))
  for (const entry of entries) {
    const parent = entry.said.from ? byId().get(entry.said.from.value) : entries[entry.index - 1]
    if (parent && parent !== entry) entry.parent = parent
  }
  if (!areInOrder(entries)) breakLoops(entries)
}

function firstOfEachId(entries: readonly Draft[]): Map<string, Draft> {
  const byId = new Map<string, Draft>()
  for (const entry of entries) if (entry.said.id && !byId.has(entry.said.id.value)) byId.set(entry.said.id.value, entry)
  return byId
}

/** Whether each stands below the one it comes from, as in nearly every notebook: then nothing leads in a circle. */
function areInOrder(entries: readonly Draft[]): boolean {
  return entries.every(({ parent, index }) => !parent || parent.index < index)
}

/** Where following parents leads in a circle, the first of them in the file that names its parent loses it. */
function breakLoops(entries: readonly Draft[]): void {
  const settled = new Set<Draft>()
  for (const entry of entries) {
    if (settled.has(entry)) continue
    const path = new Set<Draft>()
    let at: Draft | undefined = entry
    for (; at && !settled.has(at) && !path.has(at); at = at.parent) path.add(at)
    if (at && path.has(at)) {
      const loop = [...path].slice([...path].indexOf(at)).filter((each) => each.said.from)
      delete loop.reduce((first, each) => (each.index < first.index ? each : first)).parent
    }
    path.forEach((each) => settled.add(each))
  }
}

/** Every entry after the one it comes from, which may stand later in the file. */
function ancestorsFirst(entries: readonly Draft[]): readonly Draft[] {
  if (areInOrder(entries)) return entries
  const done = new Set<Draft>()
  const ordered: Draft[] = []
  for (const entry of entries) {
    const waiting: Draft[] = []
    for (let at: Draft | undefined = entry; at && !done.has(at); at = at.parent) {
      waiting.push(at)
      done.add(at)
    }
    ordered.push(...waiting.reverse())
  }
  return ordered
}
