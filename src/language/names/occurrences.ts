import type { Notebook } from '../../core/notebook/notebook'
import { nodeAt, pairOf, type Pair, type ScalarNode, type TreeNode } from '../../core/notebook/tree'
import type { Range } from '../../core/text'

/** A place where an adjuster or an entry is named. */
export interface Occurrence {
  of: 'adjuster' | 'entry'
  name: string
  role: 'definition' | 'reference'
  /** The name alone: of `fork_rebound/left` the part before the stroke, of a quoted one what the quotes hold. */
  range: Range
  /** The scalar it stands in, and what else that says before and behind the name. */
  node: ScalarNode
  before: string
  behind: string
}

const known = new WeakMap<Notebook, readonly Occurrence[]>()

/** Every place of a notebook that names an adjuster or an entry. What stands behind an alias is left to its anchor. */
export function occurrencesIn(notebook: Notebook): readonly Occurrence[] {
  const found = known.get(notebook) ?? collect(notebook)
  known.set(notebook, found)
  return found
}

/** The name that an offset stands in or right behind. */
export function occurrenceAt(notebook: Notebook, offset: number): Occurrence | undefined {
  return occurrencesIn(notebook).find(({ range }) => range.start <= offset && offset <= range.end)
}

/** Every place that names the same thing. */
export function sameName(notebook: Notebook, { of, name }: Occurrence): Occurrence[] {
  return occurrencesIn(notebook).filter((each) => each.of === of && each.name === name)
}

function collect({ text, root }: Notebook): Occurrence[] {
  const section = nodeAt(root, ['adjusters'])
  const names = new Set(keysOf(section).map((key) => key.text))
  const place = (of: Occurrence['of'], role: Occurrence['role'], node: ScalarNode | undefined, parts = whole): Occurrence[] => {
    if (!node || node.alias || node.text === '') return []
    const { before, name, behind } = parts(node.text)
    return [{ of, role, name, node, before, behind, range: partOf(text, node, before.length, name.length) }]
  }
  const subject = (node: ScalarNode | undefined) => (node && names.has(subjectParts(node.text).name) ? place('adjuster', 'reference', node, subjectParts) : [])
  return [
    ...keysOf(section).flatMap((key) => place('adjuster', 'definition', key)),
    ...pairsOf(section).flatMap(({ value }) => (value.alias ? [] : place('adjuster', 'reference', scalar(value, 'inside')))),
    ...itemsOf(nodeAt(root, ['entries'])).flatMap((entry) => [
      ...place('entry', 'definition', scalar(entry, 'id')),
      ...place('entry', 'reference', scalar(entry, 'from')),
      ...keysOf(pairOf(entry, 'settings')?.value).flatMap((key) => place('adjuster', 'reference', key)),
      ...keysOf(pairOf(entry, 'remarks')?.value).flatMap(subject),
    ]),
    ...itemsOf(nodeAt(root, ['accepted'])).flatMap((accepted) => [...place('entry', 'reference', scalar(accepted, 'entry')), ...subject(scalar(accepted, 'about'))]),
  ]
}

function pairsOf(node: TreeNode | undefined): Pair[] {
  return node?.kind === 'map' && !node.alias ? node.pairs : []
}

function keysOf(node: TreeNode | undefined): ScalarNode[] {
  return pairsOf(node).map(({ key }) => key)
}

function itemsOf(node: TreeNode | undefined): TreeNode[] {
  return node?.kind === 'list' && !node.alias ? node.items.filter((item) => !item.alias) : []
}

function scalar(map: TreeNode, key: string): ScalarNode | undefined {
  const found = pairOf(map, key)?.value
  return found?.kind === 'scalar' && found.style !== 'empty' ? found : undefined
}

function whole(text: string): { before: string; name: string; behind: string } {
  return { before: '', name: text, behind: '' }
}

/** What a remark or an acceptance is about: `fork_rebound`, `fork_rebound/left`, or the grid's `settings/fork_rebound`. */
function subjectParts(text: string): { before: string; name: string; behind: string } {
  const [, before, name, behind] = /^(settings\/)?([^/]*)((?:\/.*)?)$/s.exec(text)!
  return { before: before ?? '', name: name!, behind: behind! }
}

/** A part of what a scalar says, as a range of the text; the whole scalar where it is written with escapes. */
function partOf(text: string, { range, style, text: said }: ScalarNode, from: number, length: number): Range {
  const quotes = style === 'single' || style === 'double' ? 1 : 0
  const isPlain = text.slice(range.start + quotes, range.end - quotes) === said
  return isPlain ? { start: range.start + quotes + from, end: range.start + quotes + from + length } : range
}
