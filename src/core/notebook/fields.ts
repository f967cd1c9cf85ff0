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
  group: 'sag_front' | 'sag_rear' | 'loads' | 'geometry' | 'bounce' | 'day' | 'change' | 'ride'
  label: string
  /** Quieter words behind the label. */
  detail?: string
  /** What a bare number is in; absent for words. */
  dimension?: Dimension
  /** A number without a unit. */
  bare?: boolean
  /** A list of such figures, and the key it takes where its path holds a group. */
  list?: { key: string }
  /** Words that may run over several lines. */
  prose?: boolean
  choices?: readonly string[]
  about?: string
}

const lifted = 'after lifting'
const pushed = 'after pushing'

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

function loadFields(load: 'bike' | 'rider'): Field[] {
  const who = load === 'bike' ? 'bike alone, as ridden' : 'rider aboard, kitted'
  return (['front', 'rear'] as const).map((end): Field => ({
    key: `axle_loads.${load}.${end}`, group: 'loads', dimension: 'mass', label: `Weight, ${end}`, detail: load === 'bike' ? 'bike alone' : 'rider aboard',
    about: `What the scale under the ${end} wheel reads, ${who}. For this entry alone, where it differs from the machine’s.`,
  }))
}

function bounceFields(end: 'front' | 'rear'): Field[] {
  return [
    { key: `bounce.${end}`, group: 'bounce', dimension: 'length', list: { key: 'heights' }, label: 'Swings', detail: end,
      about: 'Push the end down once and let go: heights of the swings about its rest, the push first, each on the other side. Written one after the other, such as 40, 14, 5.' },
    { key: `bounce.${end}.seconds`, group: 'bounce', bare: true, label: 'Swings, time', detail: `${end}, first to last`,
      about: 'Seconds from the first height to the last, from a film or a log, where they were timed. It gives the frequency.' },
  ]
}

function tyreField(end: 'front' | 'rear'): Field {
  return { key: `tyres.${end}_radius`, group: 'geometry', dimension: 'length', label: 'Tyre radius', detail: end,
    about: `Outer radius of the ${end} tyre that came on here, where it differs from the one before. It holds until another comes on.` }
}

export const fields: readonly Field[] = [
  ...sagFields('front'),
  ...sagFields('rear'),
  ...loadFields('bike'), ...loadFields('rider'),
  tyreField('front'), tyreField('rear'),
  ...bounceFields('front'), ...bounceFields('rear'),
  { key: 'session', group: 'day', label: 'Session', about: 'Where in the weekend or the season this was.' },
  { key: 'conditions.air', group: 'day', label: 'Air', dimension: 'temperature' },
  { key: 'conditions.ground', group: 'day', label: 'Ground', dimension: 'temperature' },
  { key: 'conditions.altitude', group: 'day', label: 'Altitude', dimension: 'length', about: 'Height above the sea, with its unit, such as 650 m: pressures are computed with its air.' },
  { key: 'conditions.weather', group: 'day', label: 'Weather' },
  { key: 'reason', group: 'change', label: 'Reason', prose: true, about: 'Why this was changed.' },
  { key: 'ride.laps', group: 'ride', bare: true, label: 'Laps' },
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
export function pathOf(key: string): FieldPath {
  return paths.get(key) ?? splitPath(key)
}

interface FieldPath {
  path: readonly string[]
  half?: 'lifted' | 'pushed'
}

const paths = new Map(fields.map(({ key }) => [key, splitPath(key)]))

function splitPath(key: string): FieldPath {
  const path = key.split('.')
  const last = path.at(-1)
  return last === 'lifted' || last === 'pushed' ? { path: path.slice(0, -1), half: last } : { path }
}

/** Where the list of a field stands: under its own path, or in the group that stands there. */
export function listPathOf(entry: Entry, { key, list }: Field): readonly string[] {
  const { path } = pathOf(key)
  return list && nodeAt(entry.node, path)?.kind === 'map' ? [...path, list.key] : path
}

/** The scalars a field stands in: one, or the items of its list. */
export function fieldNodes(entry: Entry, field: Field): ScalarNode[] {
  const node = field.list ? nodeAt(entry.node, listPathOf(entry, field)) : fieldNode(entry, field.key)
  const items = node?.kind === 'list' ? node.items : node ? [node] : []
  return items.flatMap((item) => (item.kind === 'scalar' && item.style !== 'empty' && item.value !== null ? [item] : []))
}

/** The scalar a field stands in, whichever way a sag reading is written. */
export function fieldNode(entry: Pick<Entry, 'node'>, key: string): ScalarNode | undefined {
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
export function measured(entry: Pick<Entry, 'node'>, key: string): Measured | undefined {
  const node = fieldNode(entry, key)
  const dimension = findField(key)?.dimension
  if (!node || !dimension) return undefined
  const reading = readOnce(node, [dimension])
  return reading.value && { base: reading.value.base, quantity: reading.value, range: node.range, node, key }
}
