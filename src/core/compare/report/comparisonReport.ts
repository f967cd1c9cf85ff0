import { printNumber } from '../../notation/amount'
import type { ComparedFinding, CompareRow, CompareSide, Comparison, ExpectedSag } from '../comparison'
import { nothing, type Block } from './report'

/** Two states for someone who reads: what they are, and everything that differs. */
export function comparisonReport(comparison: Comparison): Block[] {
  const { left, right } = comparison
  const title = left.title === right.title || left.trouble ? right.title : `${left.title} and ${right.title}`
  return [
    { kind: 'heading', level: 1, text: title },
    { kind: 'line', label: 'From', text: nameOf(left) },
    { kind: 'line', label: 'To', text: nameOf(right) },
    ...changeReport(comparison),
  ]
}

/** What a change is and does, without saying of what. */
export function changeReport(comparison: Comparison): Block[] {
  const rows = comparison.groups.flatMap((group) => group.rows)
  return [
    ...comparison.notes.map((text): Block => ({ kind: 'line', text })),
    ...wayBlocks(comparison),
    ...positionBlocks(rows),
    ...effectBlocks(rows, comparison.expected),
    ...saidBlocks(comparison),
    ...findingBlocks(comparison.findings),
  ]
}

/** @example 'run-2 · 2026-04-18 · main:tern.setup.yaml (as it was in main)' */
export function nameOf({ file, entry, readOnly, trouble }: CompareSide): string {
  const said = trouble ? `line ${trouble.line}: ${trouble.message}` : ''
  return `${[entry?.key, entry?.date, file].filter(Boolean).join(' · ')}${readOnly ? ` (${readOnly})` : ''}${said ? `: ${said}` : ''}`
}

/** Why, where one entry was added; what was undone and done and why, where there are more. */
function wayBlocks({ between, right }: Comparison): Block[] {
  const [only, ...more] = between
  if (!only) return []
  if (more.length === 0 && only.way === 'done') return right.entry?.reason ? [{ kind: 'line', label: 'Why', text: right.entry.reason }] : []
  const told = between.map(({ way, key, date, reason, changes }) => `${way === 'undone' ? 'back over' : 'then'} ${[key, date].filter(Boolean).join(', ')}: ${reason || changes.join('; ') || 'nothing said'}`)
  return [{ kind: 'list', label: 'On the way', items: shortened(told) }]
}

/** How many of a long way are told at either end. */
const mostOfWay = 6

function shortened(told: readonly string[]): string[] {
  if (told.length <= 2 * mostOfWay + 1) return [...told]
  return [...told.slice(0, mostOfWay), `… ${told.length - 2 * mostOfWay} more …`, ...told.slice(-mostOfWay)]
}

function positionBlocks(rows: readonly CompareRow[]): Block[] {
  const changed = rows.filter(({ kind, different }) => kind === 'setting' && different)
  if (changed.length === 0) return [{ kind: 'line', text: 'Everything stands where it stood.' }]
  return [{ kind: 'table', head: ['Position', 'Was', 'Is', 'Change'], rows: withLegsTogether(changed).map((row) => [row.name, row.left.text || nothing, row.right.text || nothing, changeOf(row)]) }]
}

type Named = CompareRow & { name: string }

/** Both legs as one line where they say the same. */
function withLegsTogether(rows: readonly CompareRow[]): Named[] {
  const named = rows.map((row): Named => ({ ...row, name: row.detail ? `${row.label}, ${row.detail}` : row.label }))
  return named.flatMap((row, at) => {
    const isOther = (other: Named | undefined) => other !== undefined && other.label === row.label && other.name !== row.name && pairKey(other) === pairKey(row) && sayAlike(row, other)
    if (isOther(named[at - 1])) return []
    return [isOther(named[at + 1]) ? { ...row, name: `${row.label}, left and right` } : row]
  })
}

const pairKey = ({ key }: CompareRow) => key.replace(/\/(left|right)$/, '')
const sayAlike = (a: CompareRow, b: CompareRow) => a.left.text === b.left.text && a.right.text === b.right.text && changeOf(a) === changeOf(b)

/** @example '2 clicks out: less rebound damping (10 % of range)' */
function changeOf({ change, incomparable, onlyIn }: CompareRow): string {
  if (incomparable !== undefined) return incomparable
  if (!change) return onlyIn === 'right' ? 'recorded for the first time' : onlyIn === 'left' ? 'no longer recorded' : ''
  const share = change.share === undefined || change.words.includes('% of range') ? '' : ` (${printNumber(Math.abs(change.share), 0)} % of range)`
  return `${change.words}${share}${change.surely ? `, ${change.surely}` : ''}`
}

/** Numbers that changed, and those that were read for the first time; what was not read again is no effect. */
function effectBlocks(rows: readonly CompareRow[], expected: readonly ExpectedSag[]): Block[] {
  const told = rows.filter(({ kind, different, onlyIn }) => kind === 'derived' && different && onlyIn !== 'left')
  const lines = told.map((row) => [`${row.label}${row.detail ? `, ${row.detail}` : ''}${endOf(row)}`, row.earlier ? `${row.earlier.text} in ${row.earlier.entry}` : row.left.text || nothing, row.right.text, effectOf(row)])
  const guessed = expected.map(({ label, end, measured, measuredIn, expected: then, change, about }) => [`${label}, ${end}`, measuredIn ? `${measured} in ${measuredIn}` : measured, `about ${then}`, `${change} expected, ${about}`])
  return lines.length + guessed.length === 0 ? [] : [{ kind: 'table', head: ['Effect', 'Was', 'Is', 'Change'], rows: [...lines, ...guessed] }]
}

/** A number that the left side did not read is told since it was last read. */
function effectOf(row: CompareRow): string {
  if (row.change) return changeOf(row)
  const { earlier } = row
  if (!earlier) return row.onlyIn === 'right' ? 'read for the first time' : ''
  return earlier.change ? changeOf({ ...row, change: earlier.change }) : 'the same'
}

/** Rows of either end have the same label; the key says which end. */
function endOf({ key, detail }: CompareRow): string {
  const end = /^computed\/(front|rear)\./.exec(key)?.[1]
  return end && !detail?.includes(end) ? `, ${end}` : ''
}

/** What was said of the day and the ride; the reason is told already. A state that was not ridden yet has nothing to say. */
function saidBlocks({ groups }: Comparison): Block[] {
  const rows = groups.filter(({ key }) => key === 'group/day' || key === 'group/ride').flatMap((group) => group.rows)
    .filter(({ different, kind }) => different && kind !== 'derived')
  const lines = rows.map((row) => [row.detail ? `${row.label}, ${row.detail}` : row.label, row.left.text || nothing, row.right.text || nothing])
  return rows.every(({ onlyIn }) => onlyIn === 'left') ? [] : [{ kind: 'table', head: ['Day and ride', 'Then', 'Now'], rows: lines }]
}

/** What is found now and was not, and the other way round. */
export function findingBlocks({ new: fresh, foundBefore, gone, notReadAgain }: Comparison['findings']): Block[] {
  const list = (label: string, findings: readonly ComparedFinding[]): Block[] => (findings.length === 0 ? [] : [{ kind: 'list', label, items: findings.map(findingLine) }])
  return [...list('New findings', fresh), ...list('Found already when it was last measured', foundBefore), ...list('Findings gone', gone), ...list('Not measured again, so not known', notReadAgain)]
}

function findingLine({ severity, message, code, entry, line }: ComparedFinding): string {
  return `${severity}: ${message} (${code}${entry === undefined ? '' : `, ${entry}`}, line ${line})`
}
