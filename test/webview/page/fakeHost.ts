import type { Gesture } from '../../../src/core/grid/gesture'
import { packView } from '../../../src/core/grid/packView'
import type { Cell, GridPlace, GridView } from '../../../src/core/grid/view'
import type { FromWebview, ToWebview } from '../../../src/protocol'
import { sampleCharts } from './sampleCharts'
import { sampleView } from './sampleView'
import themes from './themes.json'

/**
 * The editor's side of the grid, played in the page: it answers like the real one, keeps what it was sent for the
 * tests to read, and can be told to be slow, silent or contrary. A text that begins with `bad` is refused.
 */
export class FakeHost {
  view: GridView
  version = 0
  received: FromWebview[] = []
  /** Answers come this late, in ms. */
  delay = 10
  silent = false
  /** Whether the page’s state is not kept over a reload. */
  forgetful = false
  #state: unknown

  constructor(entries: number) {
    this.view = sampleView(entries)
  }

  api = () => ({
    postMessage: (message: FromWebview) => this.#take(structuredClone(message)),
    getState: () => this.#state ?? JSON.parse(sessionStorage.getItem('state') ?? 'null'),
    setState: (state: unknown) => {
      this.#state = state
      if (this.forgetful) sessionStorage.clear()
      else sessionStorage.setItem('state', JSON.stringify(state))
    },
  })

  tell(message: ToWebview): void {
    window.postMessage(structuredClone(message), '*')
  }

  show(view: GridView): void {
    this.view = view
    this.tell({ type: 'gridShown', version: ++this.version, view: packView(view) })
  }

  /** The grid as it crosses to the page. */
  packed = () => packView(this.view)

  /** The gestures received so far. */
  get gestures(): Gesture[] {
    return this.received.flatMap((message) => (message.type === 'gesture' ? [message.gesture] : []))
  }

  setCell(place: GridPlace, cell: Partial<Cell>): void {
    this.#patch([this.#change(place, cell)])
  }

  #take(message: FromWebview): void {
    this.received.push(message)
    if (message.type === 'ready') this.tell({ type: 'gridShown', version: ++this.version, view: packView(this.view) })
    if (message.type === 'chartsAsked') this.tell({ type: 'chartsGiven', charts: sampleCharts(message.group) })
    if (message.type === 'gesture' && !this.silent) setTimeout(() => this.#answer(message.id, message.gesture), this.delay)
  }

  #answer(id: number, gesture: Gesture): void {
    const answer = (more: { refused?: string; reveal?: GridPlace } = {}) => this.tell({ type: 'gestureAnswered', id, ...more })
    switch (gesture.kind) {
      case 'setCell':
      case 'setCells': {
        const cells = gesture.kind === 'setCell' ? [gesture] : gesture.cells
        if (cells.some(({ text }) => text.startsWith('bad'))) return answer({ refused: `‘${cells[0]!.text}’ is not a position. Write it as 3 out.` })
        this.#patch(cells.map((cell) => this.#change(cell, { state: 'set', text: cell.text, changed: true })))
        return answer()
      }
      case 'clearCells':
        this.#patch(gesture.cells.map((cell) => this.#change(cell, { state: 'carried', text: '3 out', changed: false })))
        return answer()
      case 'setHeader': {
        const x = this.view.columns.findIndex(({ key }) => key === gesture.column)
        const column = { ...this.view.columns[x]!, [gesture.field]: gesture.text }
        if (gesture.field === 'id') column.key = gesture.text
        this.view.columns[x] = column
        this.tell({ type: 'gridChanged', version: ++this.version, patch: { title: this.view.title, state: this.view.state, columns: [[x, column]], cells: [] } })
        return answer()
      }
      case 'annotate':
        this.setCell(gesture, { remark: gesture.text })
        return answer()
      case 'addEntry': {
        const before = sampleView(this.view.columns.length + 1)
        const last = before.columns.length - 1
        before.columns[last] = { ...before.columns[last]!, key: gesture.id!, id: gesture.id!, date: gesture.date, reason: gesture.reason ?? '' }
        answer({ reveal: { column: gesture.id!, row: 'fork_preload.left' } })
        return this.show(before)
      }
      case 'begin':
        this.show({ ...sampleView(0) })
        return answer()
      default:
        return answer()
    }
  }

  #change({ row, column }: GridPlace, cell: Partial<Cell>): [number, number, Cell] {
    const y = this.view.rows.findIndex(({ key }) => key === row)
    const x = this.view.columns.findIndex(({ key }) => key === column)
    const changed = { ...this.view.cells[y]![x]!, ...cell }
    this.view.cells[y]![x] = changed
    return [y, x, changed]
  }

  #patch(cells: [number, number, Cell][]): void {
    const { title, state, readOnly, trouble } = this.view
    this.tell({ type: 'gridChanged', version: ++this.version, patch: { title, state, ...(readOnly && { readOnly }), ...(trouble && { trouble }), columns: [], cells } })
  }
}

/** Dresses the page as the editor does: variables on the root element, classes on the body. */
export function dress(name: keyof typeof themes): void {
  const theme = themes[name]
  // A theme does not name every colour; what it leaves out is not the last one's.
  for (const variable of [...document.documentElement.style].filter((each) => each.startsWith('--vscode-'))) document.documentElement.style.removeProperty(variable)
  for (const [variable, value] of Object.entries(theme.variables)) document.documentElement.style.setProperty(variable, value)
  document.body.className = theme.classes
  document.body.dataset.vscodeThemeKind = theme.kind
}

const asked = new URLSearchParams(location.search)
dress((asked.get('theme') ?? 'dark') as keyof typeof themes)
const host = new FakeHost(Number(asked.get('entries') ?? 9))
Object.assign(window, { host, sampleView, dress, acquireVsCodeApi: host.api })
