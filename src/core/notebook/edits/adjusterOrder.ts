import { applyChanges, lineEndOf, lineStart, type TextChange } from '../../text'
import { say } from '../../words/say'
import type { Notebook } from '../notebook'
import { readNotebook } from '../readNotebook'
import { holdsShared, pairOf, type MapNode, type Pair, type TreeNode } from '../tree'
import { carriedDown, carriedUp, gapAbove, leadOf, type Item } from './carry'
import { composeChanges } from './composeChanges'
import { deeperEnd, indentOf, isPlainKey, keepsBlankLines, pairEnd } from './layout'
import { Refusal, refuseShared } from './refusal'
import { asProse, setPath } from './setPath'

/**
 * Puts an adjuster before the one above it that sits in the same place, fork or shock or elsewhere, or behind the one below. Those of
 * other places that stand between are gone over: rows are shown by place, and nothing would have moved.
 */
export function moveAdjuster(notebook: Notebook, id: string, toward: 'up' | 'down'): TextChange[] {
  const { text, adjusters } = notebook
  const map = mapOf(notebook)
  const at = map.pairs.findIndex(({ key }) => key.text === id)
  const adjuster = adjusters.get(id)
  if (!adjuster || at < 0) throw new Refusal(say('there is no such adjuster any more'))
  const isBeside = ({ key }: Pair) => adjusters.get(key.text)?.on === adjuster.on
  const beside = map.pairs.flatMap((pair, index) => (isBeside(pair) ? [index] : []))
  const to = beside[beside.indexOf(at) + (toward === 'up' ? -1 : 1)]
  if (to === undefined) throw new Refusal(toward === 'up' ? say`${adjuster.label} is the first of its place already` : say`${adjuster.label} is the last of its place already`)
  const items = map.pairs.slice(Math.min(at, to), Math.max(at, to) + 1).map((pair) => itemOf(text, pair))
  if (items.some(({ ownsBlanks }) => ownsBlanks)) throw new Refusal(say('the text before this owns the blank lines below it; change it in the text'))
  const changes = toward === 'up' ? carriedUp(text, items) : carriedDown(text, items)
  const wanted = [...adjusters.keys()]
  const [from, place] = [wanted.indexOf(id), wanted.indexOf(map.pairs[to]!.key.text)]
  wanted.splice(place, 0, ...wanted.splice(from, 1))
  return asMeant(notebook, changes, wanted)
}

/** Writes an adjuster once more below itself under a name of its own, for one that differs in little. It stands nowhere yet. */
export function duplicateAdjuster(notebook: Notebook, id: string): { id: string; changes: TextChange[] } {
  const { text, adjusters } = notebook
  const map = mapOf(notebook)
  const pair = pairOf(map, id)
  const adjuster = adjusters.get(id)
  if (!adjuster || !pair) throw new Refusal(say('there is no such adjuster any more'))
  const { start, end, ownsBlanks } = itemOf(text, pair)
  if (ownsBlanks) throw new Refusal(say('the text before this owns the blank lines below it; change it in the text'))
  const [copy, number] = freeName(map, id)
  const { range } = pair.key
  const copied: TextChange[] = [{ start: end, end, text: `${lineEndOf(text)}${text.slice(start, range.start)}${copy}${text.slice(range.end, end)}` }]
  const now = readNotebook(applyChanges(text, copied))
  // Rows are told apart by their labels.
  const label = pairOf(pair.value, 'label') ? setPath(now.text, now.root!, ['adjusters', copy, 'label'], `${adjuster.label} ${number}`, asProse) : []
  const wanted = [...adjusters.keys()]
  wanted.splice(wanted.indexOf(id) + 1, 0, copy)
  return { id: copy, changes: asMeant(notebook, label.length > 0 ? composeChanges(text.length, [copied, label]) : copied, wanted) }
}

function mapOf(notebook: Notebook): MapNode {
  const map = pairOf(notebook.root, 'adjusters')?.value
  if (map?.kind !== 'map' || map.flow) throw new Refusal(say('these adjusters are written in one line; change them in the text'))
  refuseShared(map)
  return map
}

function itemOf(text: string, { key, value }: Pair): Item {
  if (!isPlainKey(text, key)) throw new Refusal(say`\`${key.text}\` is written with an anchor, a tag or a \`?\`; change it in the text`)
  if (value.marked || holdsShared(value) || holdsAlias(value)) throw new Refusal(say('another place stands for a value in here; change it in the text'))
  const column = indentOf(text, key.range.start).length
  const start = lineStart(text, key.range.start)
  return { start, lead: leadOf(text, start, column), end: deeperEnd(text, pairEnd(text, { key, value }), column), ownsBlanks: keepsBlankLines(text, value), gap: gapAbove(text, start) }
}

function holdsAlias(node: TreeNode): boolean {
  if (node.alias) return true
  if (node.kind === 'map') return node.pairs.some(({ key, value }) => holdsAlias(key) || holdsAlias(value))
  return node.kind === 'list' && node.items.some(holdsAlias)
}

function freeName(map: MapNode, id: string): [name: string, number: number] {
  const base = id.replace(/_\d+$/, '')
  for (let number = 2; ; number++) if (!pairOf(map, `${base}_${number}`)) return [`${base}_${number}`, number]
}

/** The adjusters as they are read must be in the order that was meant, each defined as it was. */
function asMeant(notebook: Notebook, changes: TextChange[], wanted: readonly string[]): TextChange[] {
  const after = readNotebook(applyChanges(notebook.text, changes))
  const said = ({ text, root }: Notebook, id: string) => {
    const node = pairOf(pairOf(root, 'adjusters')?.value, id)?.value
    return node && text.slice(node.range.start, node.range.end).trimEnd()
  }
  const isMeant = !after.broken && [...after.adjusters.keys()].join('\n') === wanted.join('\n') && [...notebook.adjusters.keys()].every((id) => said(after, id) === said(notebook, id))
  if (!isMeant) throw new Refusal(say('the adjusters would be read differently then; change them in the text'))
  return changes
}
