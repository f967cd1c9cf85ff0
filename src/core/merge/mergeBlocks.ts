import { isNothing } from '../notebook/edits/layout'
import type { Block, Inside } from './block'
import { mergeFlow } from './mergeFlow'
import { mergeLines } from './mergeLines'
import { orderKeys } from './orderKeys'
import type { Piece } from './piece'
import { settle, type Three } from './threeWay'

/** A block in each version that has it. */
type Blocks = Three<Block | undefined>

/** What both sides have, and the base too unless both added it. */
interface Both<T> {
  base: T | undefined
  ours: T
  theirs: T
}

/** Merges what maps or lists hold, block by block. `base` is absent where both sides added the whole. */
export function mergeInsides(insides: Both<Inside>, name: string, disputed: ReadonlySet<string>): Piece[] {
  const { base, ours, theirs } = insides
  return [
    ...mergeText({ base: base?.head, ours: ours.head, theirs: theirs.head }, `both sides changed ${name || 'the beginning'}`),
    ...mergeAll({ base: base?.blocks ?? [], ours: ours.blocks, theirs: theirs.blocks }, disputed),
    ...mergeLead({ base: base?.tail ?? '', ours: ours.tail, theirs: theirs.tail }, `both sides changed the comments below ${name || 'the rest'}`),
  ]
}

function mergeAll(lists: Three<readonly Block[]>, disputed: ReadonlySet<string>): Piece[] {
  const versions = versionsOf(lists)
  const pieces: Piece[] = []
  let run: Blocks[] = []
  const endRun = () => {
    pieces.push(...mergeRun(run, disputed))
    run = []
  }
  for (const key of orderOf(lists)) {
    const blocks = versions.get(key)!
    const isAddition = !blocks.base && !(blocks.ours && blocks.theirs)
    if (isAddition) run.push(blocks)
    else {
      endRun()
      pieces.push(...mergeBlock(blocks, disputed))
    }
  }
  endRun()
  return pieces
}

/** The keys of a merged list in order, with those that one side took out. */
export function orderOf({ base, ours, theirs }: Three<readonly Block[]>): string[] {
  const keysOf = (blocks: readonly Block[]) => blocks.map(({ key }) => key)
  const days = new Map([...ours, ...theirs].map(({ key, date }) => [key, date]))
  return orderKeys({ base: keysOf(base), ours: keysOf(ours), theirs: keysOf(theirs) }, (key) => days.get(key))
}

function versionsOf(lists: Three<readonly Block[]>): Map<string, Blocks> {
  const versions = new Map<string, Blocks>()
  for (const side of ['base', 'ours', 'theirs'] as const) {
    for (const block of lists[side]) versions.set(block.key, { base: undefined, ours: undefined, theirs: undefined, ...versions.get(block.key), [side]: block })
  }
  return versions
}

/** Things that one side or the other added at the same place: all stay, unless what they come from is in dispute. */
function mergeRun(run: readonly Blocks[], disputed: ReadonlySet<string>): Piece[] {
  const added = (side: 'ours' | 'theirs') => run.flatMap((blocks) => (blocks[side] ? [whole(blocks[side])] : []))
  if (!run.some(({ ours, theirs }) => disputed.has((ours ?? theirs)!.key))) return run.map(({ ours, theirs }) => whole((ours ?? theirs)!))
  const names = run.map(({ ours, theirs }) => (ours ?? theirs)!.name).join(', ')
  return [{ ours: added('ours').join(''), theirs: added('theirs').join(''), about: `${names}: say with \`from\` what each comes from` }]
}

function mergeBlock(blocks: Blocks, disputed: ReadonlySet<string>): Piece[] {
  const { base, ours, theirs } = blocks
  if (ours && theirs) {
    const lead = mergeLead({ base: base?.lead ?? '', ours: ours.lead, theirs: theirs.lead }, `both sides changed the comments above ${ours.name}`)
    return [...lead, ...mergeBody({ base, ours, theirs }, disputed)]
  }
  const left = ours ?? theirs
  if (!left || !base || isSame(left, base)) return []
  return [{ ours: ours ? whole(ours) : '', theirs: theirs ? whole(theirs) : '', about: `one side took out ${left.name}, which the other changed` }]
}

function whole({ lead, text }: Block): string {
  return lead + text
}

function isSame(block: Block, base: Block): boolean {
  return block.text === base.text && block.lead.trim() === base.lead.trim()
}

function mergeBody(blocks: Both<Block>, disputed: ReadonlySet<string>): Piece[] {
  const { base, ours, theirs } = blocks
  const settled = base ? settle({ base: base.text, ours: ours.text, theirs: theirs.text }) : ours.text === theirs.text ? { value: ours.text } : undefined
  if (settled) return [settled.value]
  if (!base && ours.isItem) return [{ ours: ours.text, theirs: theirs.text, about: `both sides added ${ours.name}, each with something else in it` }]
  const parts = insidesOf(blocks)
  if (parts) return mergeInsides(parts, ours.name, disputed)
  const flow = mergeFlow(blocks)
  if (flow.text !== undefined) return [flow.text]
  const what = flow.disputed.length > 0 ? `${flow.disputed.join(', ')} in ${ours.name}` : ours.name
  return mergeText({ base: base?.text, ours: ours.text, theirs: theirs.text }, `both sides ${base ? 'changed' : 'set'} ${what}`)
}

/** The insides of all three, where they can be merged part by part. What was empty in the base held nothing. */
function insidesOf({ base, ours, theirs }: Both<Block>): { base: Inside | undefined; ours: Inside; theirs: Inside } | undefined {
  const [mine, yours] = [ours.inside, theirs.inside]
  if (!mine || !yours || mine.kind !== yours.kind) return undefined
  const before = base && (base.inside ?? (isEmpty(base) ? { kind: mine.kind, head: base.text, blocks: [], tail: '' } : undefined))
  if (base && before?.kind !== mine.kind) return undefined
  // The first key of an item stands behind its dash; where another one comes to stand there, lines are all there is.
  const firsts = [before, mine, yours].map((inside) => (inside?.head === '' ? inside.blocks[0]?.key : undefined)).filter((key) => key !== undefined)
  return ours.isItem && new Set(firsts).size > 1 ? undefined : { base: before, ours: mine, theirs: yours }
}

function isEmpty({ node }: Block): boolean {
  return isNothing(node) || (node.kind === 'map' && node.pairs.length === 0) || (node.kind === 'list' && node.items.length === 0)
}

function mergeText({ base, ours, theirs }: Both<string>, about: string): Piece[] {
  if (base !== undefined) return mergeLines({ base, ours, theirs }, about)
  return [ours === theirs ? ours : { ours, theirs, about }]
}

/** Comments are merged by lines; how many blank lines stand somewhere is worth no dispute. */
function mergeLead(leads: Three<string>, about: string): Piece[] {
  const settled = settle(leads)
  if (settled) return [settled.value]
  if (leads.ours.trim() === '' && leads.theirs.trim() === '') return [leads.ours.length >= leads.theirs.length ? leads.ours : leads.theirs]
  return mergeLines(leads, about)
}
