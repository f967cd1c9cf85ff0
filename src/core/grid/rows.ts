import { slotKey, slotsOf, type Adjuster, type Slot } from '../adjusters/adjuster'
import { fileUnits, shownUnit, type DisplayUnits } from '../notation/displayUnits'
import { fields, type Field } from '../notebook/fields'
import { settingRow, type Notebook } from '../notebook/notebook'
import { computedRows } from './computed'
import type { Computed } from './computedRow'
import type { Row } from './view'

/** A row of the grid and what its cells are made from. */
export type RowSource =
  | { row: Row; kind: 'group' }
  | { row: Row; kind: 'setting'; slot: Slot; key: string }
  | { row: Row; kind: 'field'; field: Field }
  | { row: Row; kind: 'computed'; computed: Computed }

const assemblies = [['fork', 'Fork'], ['shock', 'Shock'], ['chassis', 'Chassis'], ['tyres', 'Tyres']] as const
const fieldGroups = [['sag_front', 'Sag, front'], ['sag_rear', 'Sag, rear'], ['springs', 'Springs and air'], ['loads', 'Loads'], ['geometry', 'Geometry'], ['bounce', 'Bounce test'], ['day', 'The day'], ['change', 'The change'], ['ride', 'The ride']] as const

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
  const row: Row = { key: `group/${name}`, kind: 'group', label, lines: 1, prose: false, figures: false }
  return [{ kind: 'group', row }, ...rows]
}

/** The row of a slot. */
export function settingSource(slot: Slot): Extract<RowSource, { kind: 'setting' }> {
  const { adjuster, leg } = slot
  const key = slotKey(adjuster.id, leg)
  const about = [adjuster.place && `At the ${adjuster.place}.`, adjuster.tool && `Tool: ${adjuster.tool}.`, adjuster.notes].filter(Boolean).join(' ')
  return {
    kind: 'setting', slot, key,
    row: {
      key: settingRow(key), kind: 'setting', label: adjuster.label, unit: countWords(adjuster), lines: 1, prose: false, figures: true,
      ...(leg ? { detail: leg } : {}), ...(about ? { about } : {}),
    },
  }
}

/** What an adjuster's figures are in. @example 'clicks out', 'turns in', 'mm' */
export function countWords({ counts, end, control }: Adjuster): string {
  if (counts.dimension === 'mark' && control.name === 'preload') return `${counts.symbol} showing`
  return end === undefined ? counts.symbol : `${counts.symbol} ${end === 'closed' ? 'out' : 'in'}`
}

const unitOf = { length: 'mm', mass: 'kg', temperature: '°C', pressure: 'bar' } as Record<string, string>

function fieldSource(field: Field): RowSource {
  const unit = field.dimension && field.key !== 'conditions.altitude' ? unitOf[field.dimension] : field.key.endsWith('.seconds') ? 's' : undefined
  return {
    kind: 'field', field,
    row: {
      key: field.key, kind: 'field', label: field.label, lines: field.prose ? 3 : 1, prose: field.prose === true,
      figures: field.dimension !== undefined || field.bare === true,
      ...(field.detail ? { detail: field.detail } : {}), ...(unit ? { unit } : {}), ...(field.choices ? { choices: [...field.choices] } : {}),
      ...(field.about ? { about: field.about } : {}),
    },
  }
}

function computedSource(computed: Computed, units: DisplayUnits): RowSource {
  const { key, label, detail, about } = computed
  const unit = 'unit' in computed ? shownUnit(computed.unit, units) : ''
  return {
    kind: 'computed', computed,
    row: {
      key: `computed/${key}`, kind: 'computed', label, ...(detail ? { detail } : {}), ...(unit ? { unit } : {}), lines: 1, prose: false,
      figures: 'compute' in computed, about,
    },
  }
}
