import { found, isMissing } from '../compute/working/result'
import { cellOf } from '../grid/cells'
import type { Computed, NumberRow } from '../grid/computedRow'
import type { RowSource } from '../grid/rows'
import { printNumber } from '../notation/amount'
import { toShown, type DisplayUnits, type Shown } from '../notation/displayUnits'
import { baseUnit } from '../notation/quantity'
import { measured, type Field } from '../notebook/fields'
import { say } from '../words/say'
import type { Change, CompareCell, CompareOptions, CompareRow } from './comparison'
import { lastKnown } from './lastKnown'
import type { State } from './settingRow'

type OtherSource = Exclude<RowSource, { kind: 'group' | 'setting' }>

/** The row of something measured, written or worked out. */
export function otherRow(source: OtherSource, left: State | undefined, right: State | undefined, how: Required<CompareOptions>): CompareRow {
  const { key, label, detail, about } = source.row
  const [a, b] = [cell(source, left, how.units), cell(source, right, how.units)]
  const head = { key, label, ...(detail ? { detail } : {}), ...(about ? { about } : {}), left: a, right: b }
  if (a.text === '' || b.text === '') {
    const onlyIn = a.text === b.text ? {} : { onlyIn: a.text === '' ? 'right' as const : 'left' as const }
    return { ...head, kind: kindOf(source), different: a.text !== b.text, ...onlyIn, ...(onlyIn.onlyIn === 'right' && how.oneMachine ? earlierOf(source, left, right, how) : {}) }
  }
  const change = left && right ? changeOf(source, left, right, how) : undefined
  const different = change === 'none' ? false : change !== undefined || a.text !== b.text
  return { ...head, kind: kindOf(source), different, ...(change && change !== 'none' ? { change } : {}) }
}

function kindOf(source: OtherSource): CompareRow['kind'] {
  if (source.kind === 'field') return source.field.dimension ? 'measured' : 'words'
  return 'compute' in source.computed ? 'derived' : 'words'
}

/** A sag that the left side did not read, as it was last read before on its line. */
function earlierOf(source: OtherSource, left: State | undefined, right: State | undefined, how: Required<CompareOptions>): Pick<CompareRow, 'earlier'> {
  if (source.kind !== 'computed' || !('compute' in source.computed) || !source.computed.group.startsWith('sag') || !left || !right) return {}
  const { notebook } = left
  const { compute } = source.computed
  const before = lastKnown(left.entry, (entry) => found(compute(notebook, entry)))
  if (!before) return {}
  const then = { notebook, entry: before.entry }
  const change = derivedChange(source.computed, then, right, how.units)
  return { earlier: { entry: before.entry.key, text: cell(source, then, how.units).text, ...(change && change !== 'none' ? { change } : {}) } }
}

function cell(source: OtherSource, state: State | undefined, units: DisplayUnits): CompareCell {
  if (!state) return { text: '', state: 'empty' }
  const { notebook, entry } = state
  const shown = cellOf(source, notebook, entry, units)
  const bare = shown.text !== '' && source.row.unit !== undefined && /^[−-]?[\d.]+( ± [\d.]+)?$/.test(shown.text)
  const unit = source.row.unit === '°' ? '°' : ` ${source.row.unit ?? ''}`
  return {
    text: bare ? `${shown.text}${unit}` : shown.text, state: shown.text === '' ? 'empty' : shown.state,
    place: { column: entry.key, row: source.row.key },
    ...(shown.about ? { about: shown.about } : {}), ...(shown.remark ? { remark: shown.remark } : {}),
  }
}

/** 'none' where both are the same value, however they are written; `undefined` where there is nothing to reckon with. */
function changeOf(source: OtherSource, left: State, right: State, { oneMachine, units }: Required<CompareOptions>): Change | 'none' | undefined {
  if (source.kind === 'field') return measuredChange(source.field, left, right, oneMachine)
  return 'compute' in source.computed ? derivedChange(source.computed, left, right, units) : undefined
}

/** Lengths of two machines are taken between other points, so they have no difference worth telling. */
function measuredChange({ key, dimension, group }: Field, left: State, right: State, oneMachine: boolean): Change | 'none' | undefined {
  const [before, now] = [measured(left.entry, key), measured(right.entry, key)]
  if (!dimension || !before || !now) return undefined
  const by = now.base - before.base
  if (Math.abs(by) < 1e-9) return 'none'
  return oneMachine || !group.startsWith('sag') ? { words: `${signed(by, 2)} ${baseUnit(dimension).symbol}`, by, direction: by > 0 ? 'more' : 'less' } : undefined
}

/**
 * A derived number's change. Its uncertainty is that of two independent numbers, which errs on the careful side where
 * both rest on the same facts; it is sure beyond twice that, about 95 % (JCGM 100:2008, 5.1.2 and 6.3.3).
 */
function derivedChange(row: NumberRow & Computed, left: State, right: State, units: DisplayUnits): Change | 'none' | undefined {
  const [before, now] = [row.compute(left.notebook, left.entry), row.compute(right.notebook, right.entry)]
  if (isMissing(before) || isMissing(now)) return undefined
  const by = now.value - before.value
  if (Math.abs(by) < 0.5 * 10 ** -row.digits) return 'none'
  const u = before.u === undefined && now.u === undefined ? undefined : Math.hypot(before.u ?? 0, now.u ?? 0)
  const sure = u === undefined ? undefined : Math.abs(by) > 2 * u
  const [was, is] = [before, now].map(({ value }) => toShown({ value, ...(u === undefined ? {} : { u }) }, row.unit, row.digits, units)) as [Shown, Shown]
  const unit = is.unit === '°' ? '°' : is.unit === '' ? '' : ` ${is.unit}`
  return {
    words: `${signed(is.value - was.value, is.digits)}${unit}`, by, direction: by > 0 ? 'more' : 'less',
    ...(u === undefined ? {} : { u, sure: sure!, surely: say`${sure ? say('more than') : say('within')} twice its uncertainty of ${printNumber(is.u!, Math.max(is.digits, 1))}${unit}` }),
  }
}

/** @example signed(-2.84, 1) // '−2.8' */
export function signed(value: number, digits: number): string {
  return `${value < 0 ? '−' : '+'}${printNumber(Math.abs(value), digits)}`
}
