import type { Dimension } from '../notation/units'
import type { Quantity } from '../notation/quantity'
import type { Range } from '../text'
import type { Entry } from './notebook'
import { readOnce } from './readOnce'
import { nodeAt, scalarAt, type ScalarNode } from './tree'

/**
 * What an entry can hold besides settings: one row a field, in the order of the grid. A new column of the notebook is
 * a row here, its property in the schema and a sample.
 */
export interface Field {
  /** The grid's row key and the path in the entry; a sag reading ends in the half it is. */
  key: string
  group: 'sag_front' | 'sag_rear' | 'day' | 'change' | 'ride'
  label: string
  /** Quieter words behind the label. */
  detail?: string
  /** What a bare number is in; absent for words. */
  dimension?: Dimension
  /** Words that may run over several lines. */
  prose?: boolean
  choices?: readonly string[]
  about?: string
}

const lifted = 'after lifting and settling slowly'
const pushed = 'after pushing and rising slowly'

function sagFields(end: 'front' | 'rear'): Field[] {
  const group = `sag_${end}` as const
  const length = { group, dimension: 'length' } as const
  const how = end === 'rear' ? ' Measure straight up from the axle: a slanted line reads low.' : ''
  return [
    { ...length, key: `sag.${end}.extended`, label: 'Extended', detail: 'wheel off the ground', about: `Length with the wheel off the ground, fully extended.${how}` },
    { ...length, key: `sag.${end}.bike.lifted`, label: 'Bike alone', detail: lifted, about: `Bike on its wheels, no rider: lifted, then let settle slowly. If only one length is taken, it goes here.${how}` },
    { ...length, key: `sag.${end}.bike.pushed`, label: 'Bike alone', detail: pushed, about: `Bike on its wheels, no rider: pushed down, then let rise slowly.${how}` },
    { ...length, key: `sag.${end}.rider.lifted`, label: 'Rider aboard', detail: lifted, about: `Rider aboard in riding position: lifted, then let settle slowly. If only one length is taken, it goes here.${how}` },
    { ...length, key: `sag.${end}.rider.pushed`, label: 'Rider aboard', detail: pushed, about: `Rider aboard in riding position: pushed down, then let rise slowly.${how}` },
  ]
}

export const fields: readonly Field[] = [
  ...sagFields('front'),
  ...sagFields('rear'),
  { key: 'conditions.air', group: 'day', label: 'Air', dimension: 'temperature' },
  { key: 'conditions.ground', group: 'day', label: 'Ground', dimension: 'temperature' },
  { key: 'conditions.weather', group: 'day', label: 'Weather' },
  { key: 'reason', group: 'change', label: 'Reason', prose: true, about: 'Why this was changed.' },
  { key: 'ride.laps', group: 'ride', label: 'Laps' },
  { key: 'ride.front_travel_used', group: 'ride', label: 'Travel used', detail: 'front', dimension: 'length', about: 'Deepest point the fork reached, from the cable tie or the log.' },
  { key: 'ride.rear_travel_used', group: 'ride', label: 'Travel used', detail: 'rear', dimension: 'length', about: 'Deepest point of the rear wheel, from the cable tie or the log.' },
  { key: 'ride.front_tyre_hot', group: 'ride', label: 'Tyre, hot', detail: 'front', dimension: 'pressure' },
  { key: 'ride.rear_tyre_hot', group: 'ride', label: 'Tyre, hot', detail: 'rear', dimension: 'pressure' },
  { key: 'ride.felt', group: 'ride', label: 'Feel', prose: true, about: 'What it felt like, in the rider’s words.' },
  { key: 'ride.log', group: 'ride', label: 'Log file' },
  { key: 'verdict', group: 'ride', label: 'Verdict', choices: ['keep', 'go back', 'try again'] },
  { key: 'notes', group: 'ride', label: 'Notes', prose: true },
]

const byKey = new Map(fields.map((field) => [field.key, field]))

export function findField(key: string): Field | undefined {
  return byKey.get(key)
}

/** A field's path in the entry; `half` says which length of a sag reading it is. */
export function pathOf(key: string): { path: string[]; half?: 'lifted' | 'pushed' } {
  const path = key.split('.')
  const last = path.at(-1)
  return last === 'lifted' || last === 'pushed' ? { path: path.slice(0, -1), half: last } : { path }
}

/** The scalar a field stands in, whichever way a sag reading is written. */
export function fieldNode(entry: Entry, key: string): ScalarNode | undefined {
  const { path, half } = pathOf(key)
  if (half === undefined) return scalarAt(entry.node, path)
  const node = nodeAt(entry.node, path)
  if (node?.kind === 'map') return scalarAt(node, [half])
  if (node?.kind === 'list') return scalarAt(node, [half === 'lifted' ? 0 : 1])
  return half === 'lifted' ? scalarAt(entry.node, path) : undefined
}

/** A measured value with its place: in the base unit of its dimension (mm, bar, °C). Unreadable ones are absent. */
export interface Measured {
  base: number
  quantity: Quantity
  range: Range
  node: ScalarNode
  key: string
}

/** The value of a measured field; `undefined` where it is missing or cannot be read. */
export function measured(entry: Entry, key: string): Measured | undefined {
  const node = fieldNode(entry, key)
  const dimension = findField(key)?.dimension
  if (!node || !dimension) return undefined
  const reading = readOnce(node, [dimension])
  return reading.value && { base: reading.value.base, quantity: reading.value, range: node.range, node, key }
}
