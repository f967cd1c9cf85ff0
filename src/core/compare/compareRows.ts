import { slotKey } from '../adjusters/adjuster'
import { settingRow as rowKey, type Notebook } from '../notebook/notebook'
import { rowsOf, type RowSource } from '../grid/rows'
import type { DisplayUnits } from '../notation/displayUnits'
import type { CompareGroup, CompareOptions, CompareRow } from './comparison'
import { otherRow } from './otherRow'
import { pairSlots, type SlotPair } from './pairSlots'
import { settingRow, type State } from './settingRow'

/** The rows of both sides in their groups, as in the grid; what the right side alone has stands behind what precedes it there. */
export function compareRows(left: State | undefined, right: State | undefined, how: Required<CompareOptions>): CompareGroup[] {
  const [a, b] = [groupsOf(left?.notebook, how.units), groupsOf(right?.notebook, how.units)]
  const pairs = pairSlots(left?.notebook, right?.notebook)
  const answers = new Map(pairs.flatMap(({ left: one, right: other }) => (one && other ? [[keyOf(other), keyOf(one)] as const] : [])))
  return merged([...a.keys()], [...b.keys()]).map((group) => {
    const label = (a.get(group) ?? b.get(group))![0]!.row.label
    const [here, there] = [a.get(group)?.slice(1) ?? [], b.get(group)?.slice(1) ?? []]
    const nameOf = ({ row }: RowSource) => answers.get(row.key) ?? row.key
    const keys = merged(here.map(({ row }) => row.key), there.map(nameOf))
    const source = (key: string) => here.find(({ row }) => row.key === key) ?? there.find((each) => nameOf(each) === key)
    return { key: group, label, rows: keys.flatMap((key) => rowFor(source(key)!, pairs, { left, right, how })) }
  }).filter(({ rows }) => rows.length > 0)
}

function rowFor(source: RowSource, pairs: readonly SlotPair[], { left, right, how }: { left: State | undefined; right: State | undefined; how: Required<CompareOptions> }): CompareRow[] {
  if (source.kind === 'group') return []
  if (source.kind !== 'setting') return [otherRow(source, left, right, how)]
  const { key } = source.row
  const pair = pairs.find((each) => (each.left ? keyOf(each.left) === key : keyOf(each.right!) === key))
  return pair ? [settingRow(pair, left, right, how.oneMachine)] : []
}

const keyOf = ({ adjuster, leg }: NonNullable<SlotPair['left']>) => rowKey(slotKey(adjuster.id, leg))

/** The rows by the key of their group, each list headed by the group's own row. */
function groupsOf(notebook: Notebook | undefined, units: DisplayUnits): Map<string, RowSource[]> {
  const groups = new Map<string, RowSource[]>()
  let at: RowSource[] = []
  for (const source of notebook ? rowsOf(notebook, units) : []) {
    if (source.kind === 'group') groups.set(source.row.key, at = [source])
    else at.push(source)
  }
  return groups
}

/** Two orders as one: the first as it is, and what only the second has behind its neighbour there. @example merged(['a', 'c'], ['a', 'b', 'c']) // a b c */
export function merged(first: readonly string[], second: readonly string[]): string[] {
  const all = [...first]
  second.forEach((key, at) => {
    if (!all.includes(key)) all.splice(at === 0 ? 0 : all.indexOf(second[at - 1]!) + 1, 0, key)
  })
  return all
}
