import type { GridPlace } from '../../../src/core/grid/view'
import type { GridCommand, GridPatch, ToWebview } from '../../../src/protocol'
import { findingName } from './describe'
import { findNext, openFind } from './find'
import { filterRows, openFilter, showAll, toggleGroup, uncover } from './hide'
import { followRename, togglePin, togglePinRow } from './pin'
import { changeAdjuster, changeEntry, fillSelected, nudgeSelected, removeAdjuster, setBothLegs } from './reshape'
import type { KeyedSpot } from './savedState'
import type { Session } from './session'
import { nearestSpot, sameSpot, type Spot } from './spot'
import { keepHomeless, restoreForm, restoreTyped } from './restore'
import { unpackView, type PageView } from './unpackView'
import { goToFinding, selectWhole } from './walk'
import { stepWidth } from './widths'
import { beginEdit, clearSelected, openForm, sendOpenCell } from './write'

/** Takes a message from the host. */
export function receive(session: Session, message: Exclude<ToWebview, { type: 'cardGiven' }>): void {
  switch (message.type) {
    case 'gridShown':
      return showView(session, unpackView(message.view))
    case 'gridChanged': return applyPatch(session, message.patch)
    case 'gestureAnswered':
      session.outbox.take(message.id, message)
      return message.reveal && void reveal(session, message.reveal, false)
    case 'placeRevealed': return void reveal(session, message.place, message.edit === true)
    case 'pendingAsked':
      sendOpenCell(session)
      session.ports.changed({ kind: 'flush' })
      return session.ports.send({ type: 'pendingSent', id: message.id })
    case 'chartsGiven': return session.charts.take(message.charts)
    case 'commandGiven': return obey(session, message.command)
  }
}

/** Goes to a place now, or when the view that has it arrives. Without a row it is the entry's header. */
function reveal(session: Session, place: GridPlace, edit: boolean): boolean {
  const spot = uncover(session, { column: place.column, row: place.row || undefined })
  session.wanted = spot ? undefined : { place, edit }
  if (!spot) return false
  session.select(spot)
  session.ports.changed({ kind: 'focus' })
  if (edit) beginEdit(session, 'edit', 'all')
  return true
}

function showView(session: Session, view: PageView): void {
  const first = !session.shown
  const { active, anchor } = session.selection
  const saved = session.saved.active && { active: session.saved.active, anchor: session.saved.anchor ?? session.saved.active }
  // Where no entry was, nobody chose the row they stood on: the notebook may have had other rows altogether.
  const begun = !first && session.model.ground.columns === 0 && view.columns.length > 0
  const keys = first ? saved : begun ? undefined : { active: session.keyed(active), anchor: session.keyed(anchor) }
  const told = toldFindings(session)
  followRename(session, view)
  session.model.show(view)
  session.shown = true
  if (keys) session.selection = { active: find(session, keys.active, active), anchor: find(session, keys.anchor, anchor) }
  else session.selection = { active: session.firstSpot(), anchor: session.firstSpot() }
  if (first) restoreTyped(session)
  keepHomeless(session)
  session.pending.settle()
  session.ports.changed({ kind: 'view' })
  tellColumn(session, first)
  const followed = session.wanted && reveal(session, session.wanted.place, session.wanted.edit)
  if (!followed) session.tellSelection()
  if (first) restoreForm(session)
  if (!first) tellNewFindings(session, told)
}

/** The charts hear which entry is looked at: it may have come, gone or been renamed. */
function tellColumn(session: Session, first: boolean): void {
  const { column } = session.keyed(session.active)
  if (first) session.charts.begin(column, session.selectedColumns)
  else session.charts.follow(column, session.selectedColumns)
}

function find(session: Session, keys: KeyedSpot, before: Spot): Spot {
  const { model } = session
  const isNowhere = keys.row === undefined && keys.column === undefined
  const spot = isNowhere ? undefined : model.spotOf(keys)
  return spot ?? (isNowhere ? session.firstSpot() : (nearestSpot(model.ground, before) ?? session.firstSpot()))
}

function applyPatch(session: Session, patch: GridPatch): void {
  const told = toldFindings(session)
  const touched = session.model.apply(patch)
  if (!touched) return session.ports.send({ type: 'ready' })
  const shown = touched.cells.flatMap((spot) => session.model.placeOf(spot) ?? [])
  session.pending.seen(shown)
  const settled = session.pending.settle()
  keepHomeless(session)
  touched.cells.push(...settled.flatMap((place) => session.model.spotOf(place) ?? []))
  session.ports.changed({ kind: 'cells', touched })
  tellColumn(session, false)
  if (session.tellCell && touched.cells.some((spot) => sameSpot(spot, session.active))) {
    session.tellCell = false
    session.ports.announce(session.model.cell(session.active)?.text ?? '', 'polite')
  }
  tellNewFindings(session, told)
}

const toldFindings = (session: Session) => new Set(session.model.findingsAt(session.active).map(findingName))

/** Findings that come up in the current cell are spoken: whoever typed it may not see the mark. */
function tellNewFindings(session: Session, told: ReadonlySet<string>): void {
  const fresh = session.model.findingsAt(session.active).filter((finding) => !told.has(findingName(finding)))
  if (fresh.length > 0) session.ports.announce(fresh.map(findingName).join('. '), fresh[0]!.severity === 'error' ? 'urgent' : 'polite')
}

function obey(session: Session, command: GridCommand): void {
  switch (command) {
    case 'addEntry': return openForm(session, 'entry')
    case 'annotate': return openForm(session, 'remark')
    case 'editHeader': return openForm(session, 'header')
    case 'nextFinding': return goToFinding(session, false)
    case 'previousFinding': return goToFinding(session, true)
    case 'showFindings': return session.show('findings', true)
    case 'clearCell': return clearSelected(session)
    case 'find': return openFind(session, true)
    case 'findNext': return findNext(session)
    case 'findPrevious': return findNext(session, true)
    case 'filter': return openFilter(session, true)
    case 'changedOnly': return filterRows(session, 'changed')
    case 'withFindingsOnly': return filterRows(session, 'findings')
    case 'showAll': return showAll(session)
    case 'toggleGroup': return toggleGroup(session)
    case 'pinEntry': return togglePin(session)
    case 'pinRow': return togglePinRow(session)
    case 'widenColumn': return stepWidth(session, 1)
    case 'narrowColumn': return stepWidth(session, -1)
    case 'selectRow': case 'selectColumn': case 'selectAll': return selectWhole(session, command)
    case 'nudgeMore': return nudgeSelected(session, 'more')
    case 'nudgeLess': return session.model.row(session.active.row)?.choices ? beginEdit(session, 'edit', 'all') : nudgeSelected(session, 'less')
    case 'setBothLegs': return setBothLegs(session)
    case 'fillRight': return fillSelected(session, 'right')
    case 'fillDown': return fillSelected(session, 'down')
    case 'removeAdjuster': return void removeAdjuster(session)
    case 'duplicateAdjuster': case 'moveAdjusterUp': case 'moveAdjusterDown': return changeAdjuster(session, command)
    case 'duplicateEntry': case 'insertEntry': case 'removeEntry': case 'moveEntryLeft': case 'moveEntryRight': return changeEntry(session, command)
    case 'showCard': return session.ports.changed({ kind: 'card' })
    case 'whatNext': return session.ports.changed({ kind: 'advice' })
    case 'showCharts': return session.charts.show(undefined, true)
  }
}
