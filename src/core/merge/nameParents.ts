import { Refusal } from '../notebook/edits/refusal'
import { asProse, setPath } from '../notebook/edits/setPath'
import type { Entry, Notebook } from '../notebook/notebook'
import { applyChanges, type TextChange } from '../text'
import type { Block, Inside } from './block'
import { orderOf } from './mergeBlocks'
import { mapThree, settle, type Three } from './threeWay'

/** A version of a notebook, read and cut into blocks. */
export interface Version {
  notebook: Notebook
  inside: Inside
}

/** Both sides with what had to be said in them, and the entries of which it could not be said, by their keys. */
export interface Named {
  ours: string
  theirs: string
  disputed: ReadonlySet<string>
}

/** What is to be written on either side. */
interface Changes {
  ours: TextChange[]
  theirs: TextChange[]
}

interface Side {
  text: string
  blocks: readonly Block[]
  entries: ReadonlyMap<string, Entry>
  keys: ReadonlyMap<Entry, string>
}

/**
 * An entry that does not say what it comes from comes from the one above it. Where the merge puts another one there,
 * what it came from so far is written into it as `from`, on the side that has it: so it stands as it stood.
 */
export function nameParents(versions: Three<Version>): Named {
  const sides = mapThree(versions, sideOf)
  const order = orderOf(mapThree(sides, ({ blocks }) => blocks)).filter((key) => staysIn(sides, key))
  const changes = new Map<string, Changes>()
  const disputed = new Set<string>()
  order.forEach((key, at) => {
    const above = order[at - 1]
    const parent = parentOf(sides, key)
    if (parent === 'written' || (parent !== 'unsure' && parent.key === above)) return
    const isThere = parent !== 'unsure' && (parent.key === undefined || order.includes(parent.key))
    const written = isThere ? writeParent(sides, key, parent.key, above) : undefined
    if (written) changes.set(key, written)
    else disputed.add(isAdded(sides, key) ? key : (above ?? key))
  })
  // Where one of several additions is in dispute, all of them are shown as they were written.
  for (const run of runsOf(order, (key) => isAdded(sides, key))) if (run.some((key) => disputed.has(key))) run.forEach((key) => disputed.add(key))
  const apply = (side: 'ours' | 'theirs') => applyChanges(sides[side].text, [...changes].flatMap(([key, each]) => (disputed.has(key) ? [] : each[side])))
  return { ours: apply('ours'), theirs: apply('theirs'), disputed }
}

/** The stretches of neighbours that hold to a condition. */
function runsOf(order: readonly string[], holds: (key: string) => boolean): string[][] {
  const runs: string[][] = [[]]
  for (const key of order) {
    if (holds(key)) runs.at(-1)!.push(key)
    else runs.push([])
  }
  return runs
}

function sideOf({ notebook, inside }: Version): Side {
  const blocks = inside.blocks.find(({ key }) => key === 'entries')?.inside?.blocks ?? []
  const byNode = new Map(notebook.entries.map((entry) => [entry.node, entry]))
  const pairs = blocks.flatMap(({ key, node }): [string, Entry][] => {
    const entry = node.kind === 'map' ? byNode.get(node) : undefined
    return entry ? [[key, entry]] : []
  })
  return { text: notebook.text, blocks, entries: new Map(pairs), keys: new Map(pairs.map(([key, entry]) => [entry, key])) }
}

/** Whether the merged list has this entry: it is there on both sides, or one side added it, or changed what the other took out. */
function staysIn({ base, ours, theirs }: Three<Side>, key: string): boolean {
  if (ours.entries.has(key) && theirs.entries.has(key)) return true
  if (!base.entries.has(key)) return true
  const words = (side: Side) => side.blocks.find((block) => block.key === key)?.text
  return words(ours.entries.has(key) ? ours : theirs) !== words(base)
}

function isAdded({ base, ours, theirs }: Three<Side>, key: string): boolean {
  return !base.entries.has(key) && !(ours.entries.has(key) && theirs.entries.has(key))
}

/** What the merged entry must come from, unless it says so itself. */
function parentOf(sides: Three<Side>, key: string): 'written' | 'unsure' | { key: string | undefined } {
  const holders = [sides.ours, sides.theirs].filter(({ entries }) => entries.has(key))
  const [first, second] = holders
  if (!first) return 'written'
  const comes = (side: Side) => {
    const entry = side.entries.get(key)
    return { isWritten: entry?.from !== undefined, key: entry?.parent && side.keys.get(entry.parent) }
  }
  if (!second) return comes(first).isWritten ? 'written' : { key: comes(first).key }
  const [ours, theirs] = [comes(sides.ours), comes(sides.theirs)]
  const base = sides.base.entries.has(key) ? comes(sides.base) : ours
  const written = settle({ base: base.isWritten, ours: ours.isWritten, theirs: theirs.isWritten })
  if (written?.value) return 'written'
  const parent = settle({ base: base.key, ours: ours.key, theirs: theirs.key })
  return parent ? { key: parent.value } : 'unsure'
}

/** Writes `from` into an entry wherever it stands; `undefined` where it cannot be written, or there is nothing to name. */
function writeParent(sides: Three<Side>, key: string, parent: string | undefined, above: string | undefined): Changes | undefined {
  const id = [sides.ours, sides.theirs].map((side) => (parent === undefined ? undefined : side.entries.get(parent)?.id?.value)).find((each) => each !== undefined)
  if (id === undefined) return parent === undefined && setsAll(sides, key, above) ? { ours: [], theirs: [] } : undefined
  try {
    const write = (side: Side) => {
      const entry = side.entries.get(key)
      return entry && !entry.from ? setPath(side.text, entry.node, ['from'], id, asProse) : []
    }
    return { ours: write(sides.ours), theirs: write(sides.theirs) }
  } catch (error) {
    if (error instanceof Refusal) return undefined
    throw error
  }
}

/** Whether an entry that came from none sets all that stands in the one that is now above it: then it stands as it stood. */
function setsAll({ ours, theirs }: Three<Side>, key: string, above: string | undefined): boolean {
  if (above === undefined) return true
  const entry = ours.entries.get(key) ?? theirs.entries.get(key)
  const before = ours.entries.get(above) ?? theirs.entries.get(above)
  return entry !== undefined && before !== undefined && [...before.state.keys()].every((slot) => entry.settings.has(slot))
}
