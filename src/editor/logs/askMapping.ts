import * as vscode from 'vscode'
import { lengthOf } from '../../core/logs/mapping/lengthOf'
import { timeUnits, type ChannelMapping, type ColumnName, type EndName, type LoggerMapping } from '../../core/logs/mapping/mapping'
import type { Dialect } from '../../core/logs/reading/dialect'
import { printNumber } from '../../core/notation/amount'
import { phrase, say } from '../../core/words/say'
import { asText } from '../asText'

/** What was seen of a log: how it is written, some of its first rows, and what a proposal was not sure of. */
export interface TableSeen {
  dialect: Dialect
  rows: readonly (readonly number[])[]
  unsure: readonly string[]
}

export type Part = 'time' | 'front' | 'rear' | 'brake' | 'lap'

/** How each part of a mapping is called and asked for; leaving a question leaves the part as it was. */
export const askParts: Record<Part, { label: string; ask: (mapping: LoggerMapping, table: TableSeen) => Promise<LoggerMapping | undefined> }> = {
  time: { label: phrase('Time'), ask: askTime },
  front: { label: phrase('Front'), ask: (mapping, table) => askEnd('front', mapping, table) },
  rear: { label: phrase('Rear'), ask: (mapping, table) => askEnd('rear', mapping, table) },
  brake: { label: phrase('Front brake'), ask: askBrake },
  lap: { label: phrase('Lap'), ask: askLap },
}

const steady = { ignoreFocusOut: true }
/** Chosen where there is no such column. */
const none = false

function without(mapping: LoggerMapping, ...parts: (keyof LoggerMapping)[]): LoggerMapping {
  return Object.fromEntries(Object.entries(mapping).filter(([part]) => !parts.includes(part as keyof LoggerMapping)))
}

/** A column by its heading, with what its first rows hold. */
async function askColumn(title: string, { dialect: { columns }, rows }: TableSeen, nothing: string, now?: ColumnName): Promise<ColumnName | false | undefined> {
  const items = columns.map(({ name, unit }, at) => ({
    label: asText(name), column: columns.findIndex((each) => each.name === name) === at ? name : at + 1,
    description: asText([unit, rangeOf(rows.map((row) => row[at] ?? NaN))].filter(Boolean).join(' · ')),
  }))
  const current = items.filter(({ column }) => column === now)
  const others = items.filter(({ column }) => column !== now)
  const chosen = await vscode.window.showQuickPick([...current, ...others, { label: nothing, column: none as ColumnName | false, description: '' }], { title, ...steady })
  return chosen?.column
}

function rangeOf(values: readonly number[]): string {
  const known = values.filter((value) => !Number.isNaN(value))
  return known.length === 0 ? say('no numbers') : say`${printNumber(Math.min(...known), 3)} to ${printNumber(Math.max(...known), 3)} in its first rows`
}

async function askNumber(title: string, prompt: string, now: number | undefined, isGood: (value: number) => boolean): Promise<number | undefined> {
  const typed = await vscode.window.showInputBox({
    title, prompt, value: now === undefined ? '' : String(now), ...steady,
    validateInput: (text) => (text.trim() !== '' && isGood(Number(text.replace(',', '.'))) ? undefined : say('a number is needed here')),
  })
  return typed === undefined ? undefined : Number(typed.replace(',', '.'))
}

async function askTime(mapping: LoggerMapping, table: TableSeen): Promise<LoggerMapping | undefined> {
  const column = await askColumn(say('Which column is the time?'), table, say('None: samples come at a steady rate'), mapping.time?.column)
  if (column === undefined) return undefined
  const others = without(mapping, 'time', 'rateHz')
  if (column === none) {
    const rateHz = await askNumber(say('How many samples a second?'), say('Such as 200'), mapping.rateHz, (value) => value > 0 && Number.isFinite(value))
    return rateHz === undefined ? undefined : { ...others, rateHz }
  }
  const words = { s: say('seconds'), ms: say('milliseconds'), us: say('microseconds'), clock: say('time of day, such as 14:03:22.125') }
  const unit = await vscode.window.showQuickPick(timeUnits.map((each) => ({ label: words[each], unit: each })), { title: say('What is the time in?'), ...steady })
  return unit && { time: { column, unit: unit.unit }, ...others }
}

async function askEnd(end: EndName, mapping: LoggerMapping, table: TableSeen): Promise<LoggerMapping | undefined> {
  const before = mapping[end]
  const column = await askColumn(end === 'front' ? say('Which column is the position of the front?') : say('Which column is the position of the rear?'), table, say('Not logged'), before?.column)
  if (column === undefined) return undefined
  const others = without(mapping, end)
  if (column === none) return others
  const unit = await askUnit(table.dialect.columns.find(({ name }) => name === column)?.unit ?? before?.unit)
  if (unit === undefined) return undefined
  const isKnown = unit === '%' || lengthOf(unit) !== undefined
  const scale = isKnown ? undefined : await askNumber(say`How many mm is one ${unit}?`, say('Of the sensor: its travel in mm over how far its reading goes'), before?.scale, (value) => value > 0 && Number.isFinite(value))
  if (!isKnown && scale === undefined) return undefined
  const offset = await askNumber(say('What does it read with the wheel off the ground?'), say`In ${unit}, fully extended; 0 where the logger was set to zero there`, before?.offset ?? 0, Number.isFinite)
  if (offset === undefined) return undefined
  const rest = await askSense(end)
  return rest && { ...others, [end]: { column, unit, ...(scale === undefined ? {} : { scale }), ...(offset === 0 ? {} : { offset }), ...rest } }
}

async function askUnit(proposed: string | undefined): Promise<string | undefined> {
  const usual = ['mm', 'cm', 'in', '%', 'V', 'mV']
  const all = [...(proposed === undefined ? [] : [proposed]), ...usual.filter((unit) => unit !== proposed)]
  const other = say('Another unit…')
  const chosen = await vscode.window.showQuickPick([...all.map(asText), other], { title: say('What is it in?'), ...steady })
  if (chosen !== other) return chosen === undefined ? undefined : all.find((unit) => asText(unit) === chosen)
  const typed = await vscode.window.showInputBox({ title: say('What is it in?'), prompt: say('The sensor’s own unit, such as counts'), ...steady })
  return typed?.trim() === '' ? undefined : typed?.trim()
}

/** Which way it reads and, at the rear, where it is measured; the usual answers are left unsaid. */
async function askSense(end: EndName): Promise<Pick<ChannelMapping, 'direction' | 'at'> | undefined> {
  const way = await vscode.window.showQuickPick([
    { label: say('It goes in: compression'), direction: undefined }, { label: say('It comes out: extension'), direction: 'extension' as const },
  ], { title: say('What does a rising reading mean?'), ...steady })
  if (!way) return undefined
  const direction = way.direction ? { direction: way.direction } : {}
  if (end === 'front') return direction
  const place = await vscode.window.showQuickPick([
    { label: say('At the wheel: it is wheel travel'), at: undefined }, { label: say('At the damper: the leverage makes wheel travel of it'), at: 'damper' as const },
  ], { title: say('Where is the rear measured?'), ...steady })
  return place && { ...direction, ...(place.at ? { at: place.at } : {}) }
}

async function askBrake(mapping: LoggerMapping, table: TableSeen): Promise<LoggerMapping | undefined> {
  const column = await askColumn(say('Which column is the front brake?'), table, say('Not logged'), mapping.brake?.column)
  if (column === undefined) return undefined
  const others = without(mapping, 'brake')
  if (column === none) return others
  const on = await askNumber(say('From which reading on is it braking?'), say('In the column’s own unit, such as 2 for bar or 0.5 for a switch'), mapping.brake?.on, Number.isFinite)
  return on === undefined ? undefined : { ...others, brake: { column, on } }
}

async function askLap(mapping: LoggerMapping, table: TableSeen): Promise<LoggerMapping | undefined> {
  const column = await askColumn(say('Which column is the number of the lap?'), table, say('Not logged'), mapping.lap?.column)
  if (column === undefined) return undefined
  const others = without(mapping, 'lap')
  return column === none ? others : { ...others, lap: { column } }
}
