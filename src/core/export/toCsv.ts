import { derivedNames } from './exportDerived'
import type { Exported } from './exportNotebook'
import { rideNames } from './exportRide'

/**
 * The export as CSV (RFC 4180, with line feeds): a row an entry, the names of the JSON flattened by dots. The columns of
 * derived numbers are always all there; what is absent is an empty cell.
 */
export function toCsv({ entries }: Exported): string {
  const flat = entries.map((entry) => new Map(flatten(entry)))
  const settings = new Set(flat.flatMap((row) => [...row.keys()].filter((name) => name.startsWith('settings.'))))
  const columns = ['id', 'from', ...settings, ...derivedColumns, 'date', ...rideNames.map((name) => `ride.${name}`)]
  const rows = flat.map((row) => columns.map((column) => row.get(column)))
  return [columns, ...rows].map((row) => `${row.map(cell).join(',')}\n`).join('')
}

const derivedColumns = [
  ...['front', 'rear'].flatMap((end) => withUncertainty(`derived.${end}`, derivedNames.end)),
  ...withUncertainty('derived.geometry', derivedNames.geometry),
  ...['front', 'rear'].flatMap((end) => withUncertainty(`derived.bounce.${end}`, derivedNames.bounce)),
]

function withUncertainty(group: string, names: readonly string[]): string[] {
  return names.flatMap((name) => [`${group}.${name}`, `${group}.${name}_u`])
}

type Plain = string | number

function flatten(value: unknown, path: readonly string[] = []): [string, Plain][] {
  if (typeof value !== 'object' || value === null) return [[path.join('.'), value as Plain]]
  return Object.entries(value).flatMap(([key, below]) => flatten(below, [...path, key]))
}

/** Spreadsheet programs take these at the beginning of a text for a formula. A number of ours is a number and stays one. */
const formulaStart = /^[=+\-@\t\r]/

function cell(value: Plain | undefined): string {
  if (value === undefined) return ''
  if (typeof value === 'number') return String(value)
  const harmless = formulaStart.test(value) ? `'${value}` : value
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless
}
