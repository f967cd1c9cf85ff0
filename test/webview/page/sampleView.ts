import type { Cell, Column, GridFinding, GridView, Row } from '../../../src/core/grid/view'

/** An invented notebook of any length, the same for the same length, with every look a cell can have. */
export function sampleView(entries: number): GridView {
  const columns = Array.from({ length: entries }, (_, index) => columnOf(index))
  const cells = rows.map((row, y) => (row.kind === 'group' ? [] : columns.map((_, x) => cellOf(row, y, x, entries))))
  const view: GridView = { title: 'Plover 700', state: 'ready', columns, rows, cells, findings: [], cautions: [...cautions] }
  addFindings(view)
  return view
}

const cautions = [
  'The machine’s service manual comes first. Support the machine properly before anything is loosened.',
  'Never force an adjuster past its seat. Fully closed is where counting starts, not a setting.',
  'After a change of fork height check tyre, brake hose and steering-stop clearance over full travel.',
]

const group = (key: string, label: string): Row => ({ key, kind: 'group', label, lines: 1, prose: false, figures: false })
const setting = (key: string, label: string, detail: string, unit: string): Row =>
  ({ key, kind: 'setting', label, ...(detail && { detail }), unit, lines: 1, prose: false, figures: true, about: `${label}: counted as ${unit}.` })
const field = (key: string, label: string, unit: string): Row => ({ key, kind: 'field', label, unit, lines: 1, prose: false, figures: true })
const computed = (key: string, label: string, unit: string): Row => ({ key, kind: 'computed', label, unit, lines: 1, prose: false, figures: true, about: 'Worked out from the lengths above.' })
const prose = (key: string, label: string, lines: 1 | 2 | 3): Row => ({ key, kind: 'field', label, lines, prose: true, figures: false })

export const rows: Row[] = [
  group('g-fork', 'Fork'),
  setting('fork_preload.left', 'Preload', 'left', 'turns in'), setting('fork_preload.right', 'Preload', 'right', 'turns in'),
  setting('fork_rebound.left', 'Rebound', 'left', 'clicks out'), setting('fork_rebound.right', 'Rebound', 'right', 'clicks out'),
  setting('fork_compression.left', 'Compression', 'left', 'clicks out'), setting('fork_compression.right', 'Compression', 'right', 'clicks out'),
  setting('fork_height', 'Height', '', 'mm'),
  group('g-shock', 'Shock'),
  setting('shock_preload', 'Preload', '', 'turns in'), setting('shock_rebound', 'Rebound', '', 'clicks out'),
  setting('shock_low', 'Compression', 'low speed', 'clicks out'), setting('shock_high', 'Compression', 'high speed', 'turns out'),
  group('g-chassis', 'Chassis'),
  setting('ride_height', 'Ride height', '', 'mm'), field('tyre.front', 'Tyre, front', 'bar'), field('tyre.rear', 'Tyre, rear', 'bar'),
  group('g-sag', 'Sag'),
  field('sag.front.extended', 'Front, extended', 'mm'), field('sag.front.bike', 'Front, machine alone', 'mm'), field('sag.front.rider', 'Front, rider aboard', 'mm'),
  computed('sag.front.static', 'Front, static sag', 'mm'), computed('sag.front.with', 'Front, rider sag', 'mm'), computed('sag.front.percent', 'Front, of travel', '%'),
  field('sag.rear.extended', 'Rear, extended', 'mm'), field('sag.rear.bike', 'Rear, machine alone', 'mm'), field('sag.rear.rider', 'Rear, rider aboard', 'mm'),
  computed('sag.rear.static', 'Rear, static sag', 'mm'), computed('sag.rear.with', 'Rear, rider sag', 'mm'),
  group('g-ride', 'Ride'),
  field('laps', 'Laps', ''), field('air', 'Air', '°C'), field('travel.front', 'Travel used, front', 'mm'), field('travel.rear', 'Travel used, rear', 'mm'),
  prose('felt', 'Felt', 3), prose('note', 'Note', 2),
  group('g-verdict', 'Why and what for'),
  prose('reason', 'Reason', 2),
  { key: 'verdict', kind: 'field', label: 'Verdict', lines: 1, prose: false, figures: false, choices: ['keep', 'go back', 'undecided'] },
  prose('next', 'Next', 1),
]

const feels = ['steadier on the brakes, pushes wide on the way out', 'harsh over the joints of the back straight; the fork does not settle', 'better everywhere', 'nothing to tell apart from before']
const reasons = ['right leg brought to the left', 'two clicks more rebound to stop the fork springing up after braking', 'back to the setting before', 'half a turn of preload for the heavier rider']

function columnOf(index: number): Column {
  const day = new Date(Date.UTC(2026, 3, 4 + Math.floor(index / 3))).toISOString().slice(0, 10)
  return {
    key: index === 0 ? 'as-found' : `run-${index}`, id: index === 0 ? 'as-found' : `run-${index}`, date: day,
    reason: index === 0 ? '' : reasons[index % reasons.length]!, asFound: index === 0, baseline: index === 1,
    verdict: ['keep', '', 'go back'][index % 3]!, findings: [], ...(index % 7 === 5 && { from: `run-${index - 2}` }),
  }
}

function cellOf(row: Row, y: number, x: number, entries: number): Cell {
  if (row.kind === 'computed') return x % 4 === 3 ? { state: 'computed', text: '', about: 'A length is missing.' } : { state: 'computed', text: (24 + ((y * 7 + x * 3) % 19) / 2).toFixed(1) }
  if (row.prose) return proseCell(row, x)
  if (row.choices) return x % 3 === 1 ? { state: 'empty', text: '' } : { state: 'set', text: row.choices[x % 3]! }
  const isSet = x === 0 || (y * 5 + x * 3) % 11 === 0
  const since = isSet ? x : x - ((y * 5 + x * 3) % 11)
  const text = valueOf(row, y, Math.max(0, since))
  if (isSet) return { state: 'set', text, ...(x > 0 && { changed: true }), ...((x + y) % 9 === 0 && { remark: 'Counted twice.' }) }
  if (row.kind === 'setting') return { state: 'carried', text, about: 'As in the entry before.' }
  return x % 2 === 0 || x === entries - 1 ? { state: 'set', text } : { state: 'empty', text: '' }
}

function proseCell(row: Row, x: number): Cell {
  if (row.key === 'reason') return x === 0 ? { state: 'empty', text: '' } : { state: 'set', text: reasons[x % reasons.length]! }
  if (row.key === 'felt' && x % 2 === 0) return { state: 'set', text: feels[x % feels.length]! }
  return row.key === 'note' && x % 5 === 2 ? { state: 'set', text: 'New rear tyre.\nLog kept.' } : { state: 'empty', text: '' }
}

function valueOf(row: Row, y: number, x: number): string {
  if (row.unit === 'mm' && row.kind === 'setting') return String(4 + ((x + y) % 4))
  if (row.unit === 'mm') return String(100 + ((x * 3 + y * 7) % 60))
  if (row.unit === 'bar') return (1.9 + ((x + y) % 5) / 10).toFixed(1)
  if (row.unit === 'turns in') return `${2 + ((x + y) % 4)} in`
  if (row.unit?.endsWith('out')) return `${3 + ((x + y) % 9)} out`
  return String(5 + ((x + y) % 20))
}

function addFindings(view: GridView): void {
  const last = view.columns.length - 1
  if (last < 0) return
  for (let x = last; x >= 0; x -= 4) {
    addFinding(view, { code: 'legs-differ', severity: 'warning', message: 'The legs differ in rebound: 3 out on the left, 5 out on the right.', line: 40 + x * 12, row: 'fork_rebound.right', column: view.columns[x]!.key, fixes: ['Set the right leg to 3 out', 'Set the left leg to 5 out'] })
  }
  addFinding(view, { code: 'fork-height-uneven', severity: 'error', message: 'The fork stands 5 mm through on the left and 7 mm on the right. Stop and level it before the machine is ridden.', line: 52, row: 'fork_height', column: view.columns[last]!.key, fixes: ['Set both to 5'] })
  addFinding(view, { code: 'left-at-stop', severity: 'info', message: 'Fully closed is where counting starts, not a setting.', line: 60, row: 'shock_rebound', column: view.columns[Math.max(0, last - 1)]!.key, fixes: [] })
  addFinding(view, { code: 'several-changes', severity: 'info', message: 'More than one thing was changed at once: what helped cannot be told.', line: 66, column: view.columns[last]!.key, fixes: [] })
  addFinding(view, { code: 'unknown-key', severity: 'info', message: '‘colour’ is not a key of this format; it is kept as it is.', line: 4, fixes: [] })
}

/** Adds a finding to the list and to what it is about. */
export function addFinding(view: GridView, finding: Omit<GridFinding, 'id'>): void {
  const id = view.findings.length + 1
  view.findings.push({ id, ...finding })
  const x = view.columns.findIndex(({ key }) => key === finding.column)
  const y = view.rows.findIndex(({ key }) => key === finding.row)
  if (x >= 0 && y < 0) view.columns[x]!.findings.push(id)
  if (x < 0 || y < 0) return
  const cell = view.cells[y]![x]!
  view.cells[y]![x] = { ...cell, findings: [...(cell.findings ?? []), id], worst: cell.worst ?? finding.severity }
}
