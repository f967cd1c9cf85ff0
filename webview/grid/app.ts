import type { FromWebview, GridCommand, ToWebview } from '../../src/protocol'
import type { GridFinding } from '../../src/core/grid/view'
import { say } from './strings'
import { receive } from './model/receive'
import type { OpenForm, SavedState } from './model/savedState'
import { Session, type Change, type FormName, type Manner } from './model/session'
import { HEADER } from './model/spot'
import { goToFinding } from './model/walk'
import { Announcer } from './view/announcer'
import { Banners } from './view/banners'
import { BeginScreen, FirstEntry } from './view/beginScreen'
import { Cards } from './view/cards'
import { Cautions } from './view/cautions'
import { CellEditor } from './view/cellEditor'
import { ChartsPanel } from './view/chartsPanel'
import { DetailBar } from './view/detailBar'
import { make } from './view/dom'
import { FilterBar } from './view/filterBar'
import { FindBar } from './view/findBar'
import { FindingsPanel } from './view/findingsPanel'
import { Forms, type FormWatch } from './view/form'
import { acceptForm, besideHeader, confirmForm, entryForm, headerForm, remarkForm } from './view/forms'
import { GridBody } from './view/gridBody'
import { listenToGrid } from './view/input'
import { Popover } from './view/popover'
import { Refusal } from './view/refusal'
import { Toast } from './view/toast'
import { TopBar } from './view/topBar'

export interface AppPorts {
  send(message: FromWebview): void
  save(state: SavedState): void
}

/** Commands whose keys mean something else in a text field. */
const cellCommands: ReadonlySet<GridCommand> = new Set([
  'widenColumn', 'narrowColumn', 'pinEntry', 'pinRow', 'selectRow', 'selectColumn', 'selectAll', 'nudgeMore', 'nudgeLess', 'setBothLegs', 'fillRight', 'fillDown', 'duplicateEntry', 'insertEntry', 'removeEntry', 'moveEntryLeft', 'moveEntryRight', 'removeAdjuster', 'duplicateAdjuster', 'moveAdjusterUp', 'moveAdjusterDown', 'clearCell',
])

const isTyping = () => document.activeElement?.matches('input, textarea, vscode-text-field, vscode-text-area') === true

/** The page: puts the parts together and has each of them drawn when what it shows has changed. */
export class App {
  readonly session: Session
  readonly cards: Cards
  readonly #announcer = new Announcer()
  readonly #toast = new Toast()
  readonly #hint = make('div', 'unseen', { id: 'grid-hint' })
  readonly #body: GridBody
  readonly #editor: CellEditor
  readonly #refusal: Refusal
  readonly #top: TopBar
  readonly #detail: DetailBar
  readonly #banners: Banners
  readonly #begin: BeginScreen
  readonly #first: FirstEntry
  readonly #charts: ChartsPanel
  readonly #findings: FindingsPanel
  readonly #cautions: Cautions
  readonly #filter: FilterBar
  readonly #find: FindBar
  readonly #popover: Popover
  readonly #forms: Forms
  #currentIsDue = false
  #saving: ReturnType<typeof setTimeout> | undefined

  constructor(readonly root: HTMLElement, readonly ports: AppPorts, saved: SavedState) {
    const session = new Session({
      send: ports.send,
      later: (ms, action) => void setTimeout(action, ms),
      announce: (text, manner) => this.#announce(text, manner),
      changed: (change) => this.#draw(change),
    }, saved)
    this.session = session
    this.#body = new GridBody(session, () => this.#saveSoon(100))
    this.#editor = new CellEditor(session, this.#body)
    this.#refusal = new Refusal(session, this.#body)
    this.#top = new TopBar(session)
    this.#popover = new Popover(root, () => this.#focusGrid())
    this.cards = new Cards(session, this.#body, this.#popover, root)
    this.#forms = new Forms(this.#popover)
    this.#detail = new DetailBar(session, (finding, anchor) => this.#accept(finding, () => anchor.getBoundingClientRect()))
    this.#banners = new Banners(session)
    this.#begin = new BeginScreen(session)
    this.#first = new FirstEntry(session)
    this.#charts = new ChartsPanel(session, () => this.#focusGrid())
    this.#findings = new FindingsPanel(session, () => this.#focusGrid())
    this.#cautions = new Cautions(session)
    this.#filter = new FilterBar(session, () => this.#focusGrid())
    this.#find = new FindBar(session)
    this.#build()
    listenToGrid(session, this.#body)
  }

  #build(): void {
    const middle = make('main', 'middle', {}, this.#hint, this.#body.scroller, this.#first.element)
    this.root.classList.add('is-loading')
    this.root.append(
      this.#top.element, this.#detail.element, this.#banners.element, this.#find.element, this.#filter.element, middle, this.#begin.element,
      this.#charts.element, this.#findings.element, this.#cautions.element, this.#toast.element, this.#announcer.element,
    )
    // The grid has its own keys; this one works from the list and the bar as well.
    this.root.addEventListener('keydown', (event) => {
      if (event.key !== 'F8' || event.ctrlKey || event.metaKey || event.altKey || this.#popover.isOpen) return
      event.preventDefault()
      event.stopPropagation()
      goToFinding(this.session, event.shiftKey)
    })
    window.addEventListener('focus', () => document.activeElement === document.body && this.#focusGrid())
  }

  #draw(change: Change): void {
    switch (change.kind) {
      case 'view': return this.#drawAll()
      case 'cells': {
        const { touched } = change
        if (touched.lanes) this.#body.show(undefined)
        else if (touched.frame) this.#body.repaint()
        else this.#body.repaintSome(touched.cells, touched.columns)
        return this.#drawAround()
      }
      case 'selection':
        this.#toast.hide()
        if (change.reveal !== 'no') this.#body.reveal(this.session.active, change.reveal === 'withHeading')
        this.#body.repaintSelection()
        break
      case 'editing':
        this.#editor.follow()
        break
      case 'pending':
        this.#body.repaintSome(change.places.flatMap((place) => this.session.model.spotOf(place) ?? []), [])
        break
      case 'silence':
      case 'notice': return this.#banners.draw()
      case 'filter': return this.#filter.draw(change.focus)
      case 'find': return this.#find.draw(change.focus)
      case 'panels': return this.#drawPanels()
      case 'charts': return this.#drawCharts(change.focus)
      case 'form': return this.#openForm(change.form, change.values)
      case 'accept': return this.#accept(change.finding, () => this.#body.rectOf(this.session.active), change.values)
      case 'confirm': return this.#forms.open(confirmForm(this.session, change, () => this.#body.rectOf(this.session.active)))
      case 'flush': return this.#forms.flush()
      case 'card': return this.cards.openCurrent()
      case 'advice': return this.cards.openAdvice()
      case 'focus': return this.#focusGrid()
      case 'leave': return this.#top.focus()
    }
    this.#drawCurrent()
  }

  #drawAll(): void {
    this.root.classList.remove('is-loading')
    this.#hint.textContent = say('grid.hint')
    // What stands around the grid comes first, so that it is laid out once, for the room that this leaves.
    this.#drawAround()
    this.#drawCurrentNow()
    this.#body.show(this.session.saved.scroll)
    this.#drawCurrent()
    this.#editor.follow()
    if (document.hasFocus() && document.activeElement === document.body) this.#focusGrid()
  }

  #drawAround(): void {
    const { view } = this.session.model
    this.root.classList.toggle('is-broken', view.state === 'broken')
    this.root.classList.toggle('is-empty', view.state === 'empty')
    this.root.classList.toggle('is-without-entries', this.session.model.all.columns.length === 0)
    this.#begin.draw()
    this.#first.draw()
    this.#drawPanels()
    this.#drawCurrent()
  }

  #drawCharts(focus: boolean): void {
    this.#top.draw()
    this.#charts.draw(focus)
    this.#saveSoon()
  }

  #drawPanels(): void {
    this.#top.draw()
    this.#charts.draw()
    this.#findings.draw()
    this.#filter.draw(false)
    this.#find.draw(false)
    this.#cautions.draw()
    this.#saveSoon()
  }

  /** What tells about the current cell, once for all that changes at one key. */
  #drawCurrent(): void {
    if (this.#currentIsDue) return
    this.#currentIsDue = true
    queueMicrotask(() => this.#drawCurrentNow())
  }

  #drawCurrentNow(): void {
    this.#currentIsDue = false
    this.#top.draw()
    this.#detail.draw()
    this.#banners.draw()
    this.#refusal.draw()
    this.#saveSoon()
  }

  #accept(finding: GridFinding, anchor: () => DOMRect, values?: Record<string, string>): void {
    this.#forms.open(acceptForm(this.session, finding, anchor), this.#watch({ form: 'accept', finding: finding.message }, values))
  }

  /** Keeps what is typed into a form, so that it outlives the page. */
  #watch(about: Omit<OpenForm, 'values'>, left: Record<string, string> | undefined): FormWatch {
    return {
      ...(left && { values: left }),
      typed: (values) => {
        this.session.form = values && { ...about, values }
        this.session.formAsNotice = false
        this.#saveSoon()
      },
    }
  }

  #openForm(form: FormName, values?: Record<string, string>): void {
    const { session } = this
    const anchors = {
      entry: () => this.#top.add.element.getBoundingClientRect(),
      header: () => this.#body.rectOf(besideHeader(session)),
      remark: () => this.#body.rectOf(session.active),
    }
    if (form === 'header') this.#body.reveal({ row: HEADER, column: session.active.column })
    const plan = { entry: entryForm, header: headerForm, remark: remarkForm }[form]
    this.#forms.open(plan(session, anchors[form]), this.#watch({ form, ...session.keyed(session.active) }, values))
  }

  #focusGrid(): void {
    if (this.session.model.view.state === 'empty' || this.#editor.isOpen || this.#popover.isOpen) return
    this.#body.grid.focus({ preventScroll: true })
  }

  /** Takes a message from the host. A key that acts on cells is none of ours while a text field has the keyboard. */
  take(message: ToWebview): void {
    if (message.type === 'cardGiven') return this.cards.take(message)
    if (message.type === 'commandGiven' && cellCommands.has(message.command) && isTyping()) return
    receive(this.session, message)
  }

  #announce(text: string, manner: Manner): void {
    this.#announcer.say(text, manner !== 'polite')
    if (manner === 'shown' && this.session.shown) this.#toast.show(text, this.#body.rectOf(this.session.active))
  }

  /** A page that is hidden is gone without a warning, so that only scrolling, which comes in dozens, waits a moment. */
  #saveSoon(ms = 0): void {
    clearTimeout(this.#saving)
    this.#saving = setTimeout(() => this.save(), ms)
  }

  save(): void {
    if (this.session.shown) this.ports.save({ ...this.session.toSave(), scroll: this.#body.keyedScroll() })
  }
}
