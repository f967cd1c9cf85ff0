import type { ComparedFinding, CompareGroup, Comparison, EntryBetween, ExpectedSag } from '../../../src/core/compare/comparison'
import type { CompareView, SideName } from '../../../src/protocol'
import { say } from '../strings'
import { isReadable, sideName } from './describe'
import type { Line, Value } from './lines'
import { rowLine, type Names } from './rowLine'

const nothing: Value = { text: '' }

/**
 * The lines of the table: the rows in their groups as in the grid, what sag to expect behind the sags, then what lies on
 * the way and the findings. What neither side has on record is never shown; with `onlyDifferences`, nor what is alike.
 */
export function buildLines(view: CompareView, onlyDifferences: boolean): Line[] {
  const { comparison } = view
  const alone = !isReadable(comparison.left) || !isReadable(comparison.right)
  const names = { left: sideName(view, 'left'), right: sideName(view, 'right') }
  const groups = comparison.groups.map((group) => groupLines(group, names, alone))
  const lastSag = comparison.groups.map(({ key }) => key.startsWith('group/sag')).lastIndexOf(true)
  groups.splice(lastSag < 0 ? groups.length : lastSag + 1, 0, expectedLines(comparison.expected))
  const lines = [...groups, wayLines(comparison), findingLines(comparison.findings)].map((group) => shown(group, onlyDifferences && !alone))
  return lines.flat()
}

/** A heading with the lines that are to be seen; nothing where there are none. */
function shown([heading, ...lines]: Line[], onlyDifferences: boolean): Line[] {
  const seen = lines.filter(({ different }) => different || !onlyDifferences)
  return heading && seen.length > 0 ? [heading, ...seen] : []
}

const heading = (key: string, label: string): Line => ({ key, kind: 'group', label, left: nothing, right: nothing, different: false })

function groupLines({ key, label, rows }: CompareGroup, names: Names, alone: boolean): Line[] {
  const known = rows.filter(({ left, right }) => left.text !== '' || right.text !== '')
  return [heading(key, label), ...known.map((row) => rowLine(row, names, alone))]
}

function expectedLines(expected: readonly ExpectedSag[]): Line[] {
  return [heading('expected', say('expected.group')), ...expected.map(({ label, end, measured, measuredIn, expected: then, change, about }): Line => ({
    key: `expected/${end}/${label}`, kind: 'number', label: say('expected.row', label, end), different: true,
    left: { text: measured, ...(measuredIn === undefined ? {} : { more: say('expected.in', measuredIn) }) }, right: { text: say('expected.about', then) },
    change: { words: change, more: about },
  }))]
}

/** The one entry that the right side is, coming from the left one, has been told by all the rest. */
function wayLines({ between }: Comparison): Line[] {
  const told = between.length > 1 || between.some(({ way }) => way === 'undone')
  return [heading('ways', say('ways.group')), ...(told ? between.map(wayLine) : [])]
}

function wayLine({ way, key, date, reason, changes }: EntryBetween): Line {
  const entry: Value = { text: reason, place: { column: key, row: 'reason' } }
  const detail = [date, say(way === 'undone' ? 'ways.undone' : 'ways.done')].filter(Boolean).join(', ')
  return {
    key: `way/${way}/${key}`, kind: 'way', label: key, detail, different: true,
    left: way === 'undone' ? entry : nothing, right: way === 'done' ? entry : nothing,
    change: changes.length > 0 ? { words: changes.join('; ') } : { words: say('ways.nothing'), quiet: true },
  }
}

function findingLines({ new: fresh, gone, notReadAgain }: Comparison['findings']): Line[] {
  const seen = new Map<string, number>()
  const line = (finding: ComparedFinding, side: SideName, detail: string, other: string): Line => {
    const name = `finding/${side}/${finding.code}/${finding.entry ?? ''}/${finding.row ?? ''}`
    const nth = seen.get(name) ?? 0
    seen.set(name, nth + 1)
    const values: Record<SideName, Value> = { left: { text: other }, right: { text: other } }
    values[side] = findingValue(finding)
    return { key: `${name}/${nth}`, kind: 'finding', label: say(`severity.${finding.severity}`), detail, different: true, ...values }
  }
  return [
    heading('findings', say('findings.group')),
    ...fresh.map((finding) => line(finding, 'right', say('findings.new'), say('findings.absent'))),
    ...gone.map((finding) => line(finding, 'left', say('findings.gone'), say('findings.absent'))),
    ...notReadAgain.map((finding) => line(finding, 'left', say('findings.gone'), say('findings.notRead'))),
  ]
}

function findingValue({ message, severity, entry, row, line }: ComparedFinding): Value {
  const place = entry !== undefined && row !== undefined ? { place: { column: entry, row } } : {}
  return { text: message, mark: severity, line, ...place }
}
