import { slotKey, type Adjuster, type Leg } from '../adjusters/adjuster'
import type { Place } from '../finding'
import { findField } from './fields'
import { settingRow, type Entry } from './notebook'
import type { TreeNode } from './tree'

/** What a path is looked up in. */
export interface Places {
  root: TreeNode
  entries: readonly Entry[]
  adjusters: ReadonlyMap<string, Adjuster>
}

/**
 * The cell of the grid that a path of keys and list indices leads into: an entry and, where it is in one, a row. Absent
 * outside of the entries.
 *
 * @example placeOfPath(['entries', '0', 'settings', 'shock_rebound'], places) // { entry: 'as-found', row: 'settings/shock_rebound' }
 */
export function placeOfPath([section, item, ...path]: readonly string[], { root, entries, adjusters }: Places): Place | undefined {
  const list = section === 'entries' && root.kind === 'map' ? root.pairs.find(({ key }) => key.text === 'entries')?.value : undefined
  const node = list?.kind === 'list' ? list.items[Number(item)] : undefined
  const entry = node && entries.find((each) => each.node === node)
  if (!entry) return undefined
  const row = path[0] === 'settings' ? rowOfSetting(path[1], path[2], adjusters) : rowOfField(path)
  return { entry: entry.key, ...(row === undefined ? {} : { row }) }
}

function rowOfSetting(name: string | undefined, leg: string | undefined, adjusters: ReadonlyMap<string, Adjuster>): string | undefined {
  if (name === undefined) return undefined
  const legs: readonly Leg[] = adjusters.get(name)?.legs ?? []
  // What is written for a pair as a whole is marked in the first of its rows.
  return settingRow(slotKey(name, legs.find((each) => each === leg) ?? legs[0]))
}

const halves: Record<string, string> = { 0: 'lifted', 1: 'pushed' }

/** A sag reading may be one length, a list of two or a group; a wrong one of whatever kind is marked in its first row. */
function rowOfField(path: readonly string[]): string | undefined {
  const key = path.map((step, at) => (at === path.length - 1 ? halves[step] ?? step : step)).join('.')
  return [key, `${key}.lifted`].find((each) => findField(each))
}
