import { slotKey, type Adjuster, type Leg } from '../adjusters/adjuster'
import { readPosition } from '../notation/position'
import type { Entry, Setting, Standing, Stranger, Written } from './notebook'
import { nodeAt, originOf, pairOf, scalarAt, type MapNode, type Pair, type ScalarNode, type TreeNode } from './tree'

type Draft = { -readonly [K in keyof Entry]: Entry[K] }

/**
 * The entries of a notebook, each linked to the one it comes from and with every position it stands in resolved. Those
 * of an `earlier` version with the same facts about the machine are known again by what they say.
 */
export function readEntries(root: MapNode | undefined, adjusters: ReadonlyMap<string, Adjuster>, earlier: readonly Entry[] = []): Entry[] {
  const list = nodeAt(root, ['entries'])
  if (list?.kind !== 'list') return []
  const before = new Map(earlier.map((entry) => [entry.node, entry]))
  const drafts: Draft[] = []
  list.items.forEach((item) => {
    if (item.kind !== 'map') return
    const known = before.get(item)
    drafts.push(known ? draftOf(known, drafts.length) : readEntry(item, drafts.length, adjusters))
  })
  nameKeys(drafts)
  linkParents(drafts)
  const settled = settle(ancestorsFirst(drafts), earlier)
  return drafts.map((draft) => settled.get(draft)!)
}

/** An entry that stands where it stood, with all that depends on others still to be found. */
function draftOf(known: Entry, index: number): Draft {
  const draft: Draft = { ...known, content: {}, key: '', index, state: new Map() }
  delete draft.parent
  return draft
}

/**
 * Gives each entry, after the one it comes from, its state. An earlier entry that is the same in everything takes its
 * place; one that stands elsewhere but says the same and comes from the same hands on its `content`.
 */
function settle(ancestorsFirst: readonly Draft[], earlier: readonly Entry[]): Map<Entry, Entry> {
  const before = new Map(earlier.map((entry) => [originOf(entry.node), entry]))
  const settled = new Map<Entry, Entry>()
  for (const draft of ancestorsFirst) {
    const parent = draft.parent && settled.get(draft.parent)
    const known = before.get(originOf(draft.node))
    const isSame = known?.key === draft.key && known.parent?.content === parent?.content
    if (isSame && known.node === draft.node && known.index === draft.index && known.parent === parent) {
      settled.set(draft, known)
      continue
    }
    if (parent) draft.parent = parent
    draft.state = stateOf(draft)
    if (isSame) draft.content = known.content
    settled.set(draft, draft)
  }
  return settled
}

function readEntry(node: MapNode, index: number, adjusters: ReadonlyMap<string, Adjuster>): Draft {
  const located = (key: string): Written | undefined => {
    const found = scalarAt(node, [key])
    return found && { value: found.text, range: found.range, node: found }
  }
  const id = located('id')
  const date = located('date')
  const from = located('from')
  const reason = located('reason')
  return {
    content: {}, key: '', index, node,
    range: id?.range ?? node.pairs[0]?.key.range ?? node.range,
    ...(id ? { id } : {}), ...(date ? { date } : {}), ...(from ? { from } : {}), ...(reason ? { reason } : {}),
    asFound: scalarAt(node, ['as_found'])?.value === true,
    baseline: scalarAt(node, ['baseline'])?.value === true,
    ...readSettings(pairOf(node, 'settings')?.value, adjusters),
    state: new Map(),
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

function nameKeys(entries: Draft[]): void {
  const counts = new Map<string, number>()
  for (const { id } of entries) if (id) counts.set(id.value, (counts.get(id.value) ?? 0) + 1)
  for (const entry of entries) {
    const isKey = entry.id && counts.get(entry.id.value) === 1 && !placeLike.test(entry.id.value)
    entry.key = isKey ? entry.id!.value : `#${entry.index + 1}`
  }
}

function linkParents(entries: Draft[]): void {
  const byId = new Map<string, Draft>()
  for (const entry of entries) if (entry.id && !byId.has(entry.id.value)) byId.set(entry.id.value, entry)
  for (const entry of entries) {
    const parent = entry.from ? byId.get(entry.from.value) : entries[entry.index - 1]
    if (parent && parent !== entry) entry.parent = parent
  }
  breakLoops(entries)
}

/** Where following parents leads in a circle, the first of them in the file that names its parent loses it. */
function breakLoops(entries: readonly Draft[]): void {
  const settled = new Set<Entry>()
  for (const entry of entries) {
    const path = new Set<Draft>()
    let at: Draft | undefined = entry
    for (; at && !settled.has(at) && !path.has(at); at = at.parent) path.add(at)
    if (at && path.has(at)) {
      const loop = [...path].slice([...path].indexOf(at)).filter((each) => each.from)
      delete loop.reduce((first, each) => (each.index < first.index ? each : first)).parent
    }
    path.forEach((each) => settled.add(each))
  }
}

/** Every entry after the one it comes from, which may stand later in the file. */
function ancestorsFirst(entries: readonly Draft[]): Draft[] {
  const done = new Set<Entry>()
  return entries.flatMap((entry) => {
    const waiting: Draft[] = []
    for (let at: Draft | undefined = entry; at && !done.has(at); at = at.parent as Draft | undefined) {
      waiting.push(at)
      done.add(at)
    }
    return waiting.reverse()
  })
}

function stateOf(entry: Entry): ReadonlyMap<string, Standing> {
  if (entry.parent && entry.settings.size === 0) return entry.parent.state
  const state = new Map(entry.parent?.state)
  for (const [slot, setting] of entry.settings) state.set(slot, { setting, setIn: entry })
  return state
}
