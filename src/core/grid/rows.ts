import { slotKey, slotsOf, type Adjuster, type Slot } from '../adjusters/adjuster'
import { unitWords } from '../adjusters/unitWords'
import { fileUnits, shownUnit, type DisplayUnits } from '../notation/displayUnits'
import { fields, type Field } from '../notebook/fields'
import { settingRow, type Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import { computedRows } from './computed'
import type { Computed } from './computedRow'
import type { Row } from './view'

/** A row of the grid and what its cells are made from. */
export type RowSource =
  | { row: Row; kind: 'group' }
  | { row: Row; kind: 'setting'; slot: Slot; key: string }
  | { row: Row; kind: 'field'; field: Field }
  | { row: Row; kind: 'computed'; computed: Computed }

const assemblies = [['fork', phrase('Fork')], ['shock', phrase('Shock')], ['chassis', phrase('Chassis')], ['tyres', phrase('Tyres')]] as const
const fieldGroups = [['sag_front', phrase('Sag, front')], ['sag_rear', phrase('Sag, rear')], ['springs', phrase('Springs and air')], ['loads', phrase('Loads')], ['geometry', phrase('Geometry')], ['bounce', phrase('Bounce test')], ['day', phrase('The day')], ['change', phrase('The change')], ['ride', phrase('The ride')], ['log', phrase('From the log')]] as const

/** The rows of a notebook: its adjusters by where they sit, one row a leg, then what is measured, computed and told; computed ones in the units asked for. */
export function rowsOf(notebook: Notebook, units = fileUnits): RowSource[] {
  const adjusters = [...notebook.adjusters.values()]
  return [
    ...assemblies.flatMap(([on, label]) => group(on, label, adjusters.filter((adjuster) => adjuster.on === on).flatMap(slotsOf).map(settingSource))),
    ...fieldGroups.flatMap(([name, label]) => group(name, label, [
      ...fields.filter((field) => field.group === name).map(fieldSource),
      ...computedRows.filter((computed) => computed.group === name && (computed.wanted?.(notebook) ?? true)).map((computed) => computedSource(computed, units)),
    ])),
  ]
}

function group(name: string, label: string, rows: RowSource[]): RowSource[] {
  if (rows.length === 0) return []
  const row: Row = { key: `group/${name}`, kind: 'group', label: say(label), lines: 1, prose: false, figures: false }
  return [{ kind: 'group', row }, ...rows]
}

/** The row of a slot. */
export function settingSource(slot: Slot): Extract<RowSource, { kind: 'setting' }> {
  const { adjuster, leg } = slot
  const key = slotKey(adjuster.id, leg)
  const about = [adjuster.place && say`At the ${adjuster.place}.`, adjuster.tool && say`Tool: ${adjuster.tool}.`, adjuster.notes].filter(Boolean).join(' ')
  return {
    kind: 'setting', slot, key,
    row: {
      key: settingRow(key), kind: 'setting', label: adjuster.label, unit: countWords(adjuster), lines: 1, prose: false, figures: true,
      ...(leg ? { detail: say(leg) } : {}), ...(about ? { about } : {}),
    },
  }
}

/** What an adjuster's figures are in. @example 'clicks out', 'turns in', 'mm' */
export function countWords({ counts, end, control }: Adjuster): string {
  if (counts.dimension === 'mark' && control.name === 'preload') return say`${unitWords(counts)} showing`
  if (end === undefined) return unitWords(counts)
  // Turns have the longest name and a narrow place to stand in.
  if (counts.symbol === 'turns') return end === 'closed' ? say('turns out') : say('turns in')
  return end === 'closed' ? say`${unitWords(counts)} out` : say`${unitWords(counts)} in`
}

const unitOf = { length: 'mm', mass: 'kg', temperature: '°C', pressure: 'bar' } as Record<string, string>

function fieldSource(field: Field): RowSource {
  const unit = field.dimension && field.key !== 'conditions.altitude' ? unitOf[field.dimension] : field.key.endsWith('.seconds') ? 's' : undefined
  return {
    kind: 'field', field,
    row: {
      key: field.key, kind: 'field', label: say(field.label), lines: field.prose ? 3 : 1, prose: field.prose === true,
      figures: field.dimension !== undefined || field.bare === true,
      ...(field.detail ? { detail: say(field.detail) } : {}), ...(unit ? { unit } : {}), ...(field.choices ? { choices: [...field.choices] } : {}),
      ...(field.about ? { about: say(field.about) } : {}),
    },
  }
}

function computedSource(computed: Computed, units: DisplayUnits): RowSource {
  const { key, label, detail, about } = computed
  const unit = 'unit' in computed ? shownUnit(computed.unit, units) : ''
  return {
    kind: 'computed', computed,
    row: {
      key: `computed/${key}`, kind: 'computed', label: say(label), ...(detail ? { detail: say(detail) } : {}), ...(unit ? { unit } : {}), lines: 1, prose: false,
      figures: 'compute' in computed, about: say(about),
    },
  }
}
