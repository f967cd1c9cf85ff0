import { packView } from '../../../src/core/grid/packView'
import type { Cell, GridFinding, GridView, Row } from '../../../src/core/grid/view'
import type { FromWebview } from '../../../src/protocol'
import { receive } from '../../../webview/grid/model/receive'
import type { SavedState } from '../../../webview/grid/model/savedState'
import { Session, type Change, type Manner } from '../../../webview/grid/model/session'
import { unpackView, type PageView } from '../../../webview/grid/model/unpackView'

/** A small grid for tests: two groups, five rows that can be edited or not, as many entries as asked for. */
export function smallView(entries = 3, findings: GridFinding[] = []): GridView {
  const row = (key: string, kind: Row['kind'], more: Partial<Row> = {}): Row => ({ key, kind, label: key, lines: 1, prose: false, figures: true, ...more })
  const rows = [
    row('g1', 'group'), row('rebound', 'setting', { label: 'Rebound', detail: 'left', unit: 'clicks out' }), row('preload', 'setting'),
    row('g2', 'group'), row('sag', 'computed'), row('laps', 'field', { unit: '' }), row('felt', 'field', { prose: true, figures: false }),
  ]
  const columns = Array.from({ length: entries }, (_, index) => ({
    key: `e${index}`, id: `e${index}`, date: `2026-04-0${(index % 9) + 1}`, reason: '', asFound: false, baseline: false, verdict: '', findings: findings.filter(({ row: on, column }) => !on && column === `e${index}`).map(({ id }) => id),
  }))
  const cell = (y: number, x: number): Cell => {
    const about = findings.filter((finding) => finding.row === rows[y]!.key && finding.column === columns[x]!.key)
    const state = rows[y]!.kind === 'computed' ? 'computed' : x === 0 ? 'set' : 'carried'
    return { state, text: `${y}.${x}`, ...(about[0] && { findings: about.map(({ id }) => id), worst: about[0].severity }) }
  }
  return { title: 'Small', state: 'ready', columns, rows, findings, cautions: [], cells: rows.map((each, y) => (each.kind === 'group' ? [] : columns.map((_, x) => cell(y, x)))) }
}

/** A view as it has arrived at the page. */
export const arrived = (view: GridView): PageView => unpackView(structuredClone(packView(view)))

export const finding = (id: number, severity: GridFinding['severity'], row?: string, column?: string): GridFinding =>
  ({ id, code: 'test', severity, message: `finding ${id}`, line: id, fixes: [], ...(row && { row }), ...(column && { column }) })

/** A session with everything that leaves it written down, and a clock that is moved by hand. */
export function openSession(view = smallView(), saved?: SavedState) {
  const sent: FromWebview[] = []
  const said: [string, Manner][] = []
  const changes: Change[] = []
  let now = 0
  let timers: { at: number; action: () => void }[] = []
  const session = new Session({
    send: (message) => sent.push(structuredClone(message)),
    later: (ms, action) => timers.push({ at: now + ms, action }),
    announce: (text, manner) => said.push([text, manner]),
    changed: (change) => changes.push(change),
  }, saved)
  receive(session, { type: 'gridShown', version: 1, view: packView(view) })
  return {
    session, sent, said, changes,
    gestures: () => sent.flatMap((message) => (message.type === 'gesture' ? [message.gesture] : [])),
    /** Answers the gesture sent last. */
    answer: (refused?: string) => {
      const last = sent.filter((message) => message.type === 'gesture').at(-1)
      if (last?.type === 'gesture') receive(session, { type: 'gestureAnswered', id: last.id, ...(refused !== undefined && { refused }) })
    },
    pass: (ms: number) => {
      now += ms
      const due = timers.filter(({ at }) => at <= now)
      timers = timers.filter(({ at }) => at > now)
      for (const { action } of due) action()
    },
  }
}
