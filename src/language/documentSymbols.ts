import type { Adjuster } from '../core/adjusters/adjuster'
import { countWords } from '../core/grid/rows'
import { pairEnd } from '../core/notebook/edits/layout'
import type { Entry, Notebook } from '../core/notebook/notebook'
import { pairOf, scalarAt, type MapNode, type Pair, type TreeNode } from '../core/notebook/tree'
import type { Range } from '../core/text'
import { say } from '../core/words/say'

/** A line of the outline. `range` holds `name` and all below it; `children` lie inside of it. */
export interface NotebookSymbol {
  name: string
  detail: string
  kind: 'section' | 'adjuster' | 'entry' | 'setting'
  range: Range
  nameRange: Range
  children: NotebookSymbol[]
}

/** The outline of a notebook: its machine, its adjusters, and its entries with date and reason. */
export function documentSymbols(notebook: Notebook): NotebookSymbol[] {
  return (notebook.root?.pairs ?? []).flatMap((pair) => {
    const children = childrenOf(notebook, pair)
    const isGroup = pair.value.kind !== 'scalar'
    return isGroup ? [symbol(notebook, pair, { kind: 'section', detail: detailOf(pair, children), children })] : []
  })
}

function symbol({ text }: Notebook, pair: Pair, rest: Pick<NotebookSymbol, 'kind' | 'detail' | 'children'>): NotebookSymbol {
  const range = { start: pair.key.range.start, end: Math.max(pairEnd(text, pair), pair.key.range.end, ...rest.children.map((child) => child.range.end)) }
  return { name: named(pair.key.text), range, nameRange: pair.key.range, ...rest }
}

/** An editor wants a name on every line of its outline. */
function named(name: string): string {
  return name.trim() === '' ? '…' : name
}

function detailOf({ key, value }: Pair, children: readonly NotebookSymbol[]): string {
  if (key.text === 'adjusters' || key.text === 'entries') return String(children.length)
  return scalarAt(value, ['name'])?.text ?? ''
}

function childrenOf(notebook: Notebook, { key, value }: Pair): NotebookSymbol[] {
  if (value.alias) return []
  if (key.text === 'entries') return notebook.entries.filter(({ node }) => !node.alias && isInside(node, value)).map((entry) => entrySymbol(notebook, entry))
  const groups = pairsOf(value).filter((pair) => key.text === 'adjusters' || pair.value.kind !== 'scalar')
  return groups.map((pair) => {
    const adjuster = key.text === 'adjusters' ? notebook.adjusters.get(pair.key.text) : undefined
    return symbol(notebook, pair, { kind: key.text === 'adjusters' ? 'adjuster' : 'section', detail: adjuster ? adjusterDetail(adjuster) : '', children: [] })
  })
}

function pairsOf(node: TreeNode | undefined): readonly Pair[] {
  return node?.kind === 'map' && !node.alias ? node.pairs : []
}

function isInside(node: MapNode, list: TreeNode): boolean {
  return list.range.start <= node.range.start && node.range.end <= list.range.end
}

function adjusterDetail(adjuster: Adjuster): string {
  return [countWords(adjuster), adjuster.legs.length > 0 ? `${adjuster.on}, ${adjuster.legs.join(say(' and '))}` : adjuster.on].join(' · ')
}

function entrySymbol(notebook: Notebook, entry: Entry): NotebookSymbol {
  const { node, date, reason, asFound, baseline } = entry
  const children = pairsOf(pairOf(node, 'settings')?.value).map((pair) => symbol(notebook, pair, { kind: 'setting', detail: valueWords(notebook, pair), children: [] }))
  const words = [date?.value, asFound ? say('as found') : undefined, baseline ? say('baseline') : undefined, reason?.value]
  const end = Math.max(node.range.end, entry.range.end, ...children.map((child) => child.range.end))
  return {
    name: named(entry.key), kind: 'entry', nameRange: entry.range, children,
    detail: words.filter((each) => each !== undefined).join(' · ').replace(/\s+/g, ' '),
    range: { start: Math.min(node.range.start, entry.range.start), end },
  }
}

function valueWords({ text }: Notebook, { value }: Pair): string {
  return value.kind === 'scalar' ? value.text : text.slice(value.range.start, value.range.end).replace(/\s+/g, ' ')
}
