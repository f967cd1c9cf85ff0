import assert from 'node:assert/strict'
import { packView } from '../../../src/core/grid/packView'
import { receive } from '../../../webview/grid/model/receive'
import { toggleGroup } from '../../../webview/grid/model/hide'
import { homeless, nameHomeless } from '../../../webview/grid/model/restore'
import { press } from '../../../webview/grid/model/walk'
import { beginEdit, cancelEdit, clearSelected, commitEdit, copiedText, draft, pasteText } from '../../../webview/grid/model/write'
import { finding, openSession, smallView } from './small'

type Opened = ReturnType<typeof openSession>

function type({ session }: Opened, text: string): void {
  beginEdit(session, 'replace', 'end')
  draft(session, text)
  commitEdit(session)
}

const frame = { title: 'Small', state: 'ready' as const }

describe('the first sight of a grid', () => {
  it('stands on the newest entry’s first setting', () => {
    assert.deepEqual(openSession().session.active, { row: 1, column: 2 })
  })
  it('stands on a label while there is no entry', () => {
    assert.deepEqual(openSession(smallView(0)).session.active, { row: 0, column: -1 })
  })
  it('stands on the first setting as soon as there is an entry, wherever it stood before', () => {
    const { session } = openSession(smallView(0))
    press(session, { kind: 'step', rows: 1, columns: 0, extend: false }, () => 0)
    receive(session, { type: 'gridShown', view: packView(smallView(1)) })
    assert.deepEqual(session.active, { row: 1, column: 0 })
  })
  it('stands where one stood when the page was hidden', () => {
    const { session } = openSession(smallView(), { active: { row: 'laps', column: 'e0' }, findingsOpen: true, cautionsOpen: false, unwritten: [] })
    assert.deepEqual([session.active, session.findingsOpen], [{ row: 5, column: 0 }, true])
  })
  it('opens the cell again that was being typed in', () => {
    const { session } = openSession(smallView(), { findingsOpen: false, cautionsOpen: false, unwritten: [], open: { row: 'laps', column: 'e0', text: '12', how: 'replace' } })
    assert.equal(session.editing?.text, '12')
  })
  it('offers what was never answered, unless it stands there by now', () => {
    const unwritten = [{ row: 'laps', column: 'e0', text: '12' }, { row: 'rebound', column: 'e0', text: '1.0' }]
    const { session } = openSession(smallView(), { findingsOpen: false, cautionsOpen: false, unwritten })
    assert.deepEqual(session.pending.unwritten.map(({ row, text, state }) => [row, text, state]), [['laps', '12', 'refused']])
  })
})

describe('typing into a cell', () => {
  it('sends one gesture with the text as typed', () => {
    const opened = openSession()
    type(opened, '4 out')
    assert.deepEqual(opened.gestures(), [{ kind: 'setCell', row: 'rebound', column: 'e2', text: '4 out' }])
  })
  it('sends nothing when nothing was typed, or an edit left the text as it was', () => {
    const opened = openSession()
    beginEdit(opened.session, 'replace', 'end')
    commitEdit(opened.session)
    beginEdit(opened.session, 'edit', 'all')
    draft(opened.session, '1.2')
    commitEdit(opened.session)
    assert.deepEqual(opened.gestures(), [])
  })
  it('sets a carried value here when it is typed over itself', () => {
    const opened = openSession()
    type(opened, '1.2')
    assert.equal(opened.gestures().length, 1)
  })
  it('clears the cell when all of its text was taken away', () => {
    const opened = openSession()
    beginEdit(opened.session, 'edit', 'all')
    draft(opened.session, ' ')
    commitEdit(opened.session)
    assert.deepEqual(opened.gestures(), [{ kind: 'clearCells', cells: [{ row: 'rebound', column: 'e2' }] }])
  })
  it('sends nothing when it is cancelled', () => {
    const opened = openSession()
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '4')
    cancelEdit(opened.session)
    assert.deepEqual([opened.gestures(), opened.session.editing], [[], undefined])
  })
  it('is told why a computed row, a broken text and a read-only one are not edited', () => {
    const computed = openSession()
    computed.session.select({ row: 4, column: 1 })
    const broken = openSession({ ...smallView(), state: 'broken', trouble: { message: 'm', line: 1 } })
    const locked = openSession({ ...smallView(), readOnly: 'a version to read' })
    for (const opened of [computed, broken, locked]) {
      type(opened, '4')
      assert.deepEqual([opened.gestures(), opened.session.editing], [[], undefined])
      assert.equal(opened.said.at(-1)?.[1], 'shown')
    }
    assert.match(locked.said.at(-1)![0], /a version to read/)
  })
})

describe('a text on its way', () => {
  it('is shown until the view has the cell and the host has answered', () => {
    const opened = openSession()
    const { session } = opened
    type(opened, '4 out')
    assert.equal(session.pendingAt({ row: 1, column: 2 })?.state, 'waiting')
    receive(session, { type: 'gridChanged', version: 2, patch: { ...frame, columns: [], cells: [[1, 2, { state: 'set', text: '4 out' }]] } })
    assert.equal(session.pendingAt({ row: 1, column: 2 })?.state, 'waiting')
    opened.answer()
    assert.equal(session.pendingAt({ row: 1, column: 2 }), undefined)
  })
  it('is kept when it is refused after another has changed its cell', () => {
    const opened = openSession()
    type(opened, 'four')
    receive(opened.session, { type: 'gridChanged', version: 2, patch: { ...frame, columns: [], cells: [[1, 2, { state: 'set', text: '5' }]] } })
    opened.answer('not a position')
    const { text, why } = opened.session.pendingAt({ row: 1, column: 2 }) ?? {}
    assert.deepEqual([text, why], ['four', 'not a position'])
  })
  it('goes a moment after it was written when no view came', () => {
    const opened = openSession()
    type(opened, '4 out')
    opened.answer()
    assert.equal(opened.session.pendingAt({ row: 1, column: 2 })?.state, 'written')
    opened.pass(1000)
    assert.equal(opened.session.pendingAt({ row: 1, column: 2 }), undefined)
  })
  it('is kept with the reason when it is refused, through every new view, and offered when the cell is edited again', () => {
    const opened = openSession()
    const { session } = opened
    type(opened, 'four')
    opened.answer('not a position')
    receive(session, { type: 'gridShown', version: 2, view: packView(smallView()) })
    receive(session, { type: 'gridChanged', version: 3, patch: { ...frame, columns: [], cells: [[1, 2, { state: 'set', text: '5' }]] } })
    assert.equal(session.pendingAt({ row: 1, column: 2 })?.why, 'not a position')
    beginEdit(session, 'edit', 'all')
    assert.equal(session.editing?.text, 'four')
  })
  it('is sent again when a refused one is committed again', () => {
    const opened = openSession()
    type(opened, 'four')
    opened.answer('no')
    beginEdit(opened.session, 'edit', 'all')
    commitEdit(opened.session)
    assert.deepEqual(opened.gestures().map((gesture) => gesture.kind === 'setCell' && gesture.text), ['four', 'four'])
  })
  it('is let go by Escape', () => {
    const opened = openSession()
    type(opened, 'four')
    opened.answer('no')
    press(opened.session, { kind: 'leave' }, () => 0)
    assert.equal(opened.session.pendingAt({ row: 1, column: 2 }), undefined)
  })
  it('is kept when the text breaks while it is being typed', () => {
    const opened = openSession()
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '4 out')
    receive(opened.session, { type: 'gridChanged', version: 2, patch: { title: 'Small', state: 'broken', trouble: { message: 'm', line: 1 }, columns: [], cells: [] } })
    commitEdit(opened.session)
    assert.deepEqual([opened.gestures(), opened.session.pendingAt({ row: 1, column: 2 })?.text], [[], '4 out'])
  })
  it('is told and kept when its cell goes while it is being typed, and is in it when that comes back', () => {
    const opened = openSession()
    const { session } = opened
    beginEdit(session, 'replace', 'end')
    draft(session, '4 out')
    receive(session, { type: 'gridShown', version: 2, view: packView(smallView(1)) })
    assert.equal(session.editing, undefined)
    assert.deepEqual(homeless(session).gone.map(nameHomeless), ['e2, rebound: 4 out'])
    assert.deepEqual(session.toSave().unwritten, [{ row: 'rebound', column: 'e2', text: '4 out' }])
    receive(session, { type: 'gridShown', version: 3, view: packView(smallView(3)) })
    assert.deepEqual(homeless(session), { gone: [], hidden: [] })
    assert.equal(session.pendingAt({ row: 1, column: 2 })?.text, '4 out')
  })
  it('is told when it was refused and its row is hidden', () => {
    const opened = openSession()
    const { session } = opened
    type(opened, 'four')
    opened.answer('not a position')
    toggleGroup(session)
    assert.deepEqual([homeless(session).hidden.map(({ text }) => text), homeless(session).gone], [['four'], []])
  })
  it('is offered when the page comes back and the cell it was for is gone', () => {
    const unwritten = [{ row: 'laps', column: 'gone', text: '12' }]
    const { session } = openSession(smallView(), { findingsOpen: false, cautionsOpen: false, unwritten, open: { row: 'felt', column: 'gone', text: 'better', how: 'edit' } })
    assert.deepEqual(homeless(session).gone.map(nameHomeless), ['gone, laps: 12', 'gone, felt: better'])
  })
  it('is remembered, with what is open, for when the page comes back', () => {
    const opened = openSession()
    type(opened, '4 out')
    opened.session.select({ row: 5, column: 1 })
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '9')
    const { open, unwritten, active } = opened.session.toSave()
    assert.deepEqual([open?.text, unwritten.map(({ text }) => text), active], ['9', ['4 out'], { row: 'laps', column: 'e1' }])
  })
})

describe('a form that was being filled in', () => {
  const state = { findingsOpen: false, cautionsOpen: false, unwritten: [] }
  it('is opened again with what was in it, where one stood', () => {
    const form = { form: 'remark' as const, row: 'laps', column: 'e1', values: { text: 'tyres were cold' } }
    const { session, changes } = openSession(smallView(), { ...state, form })
    assert.deepEqual(changes.filter(({ kind }) => kind === 'form'), [{ kind: 'form', form: 'remark', values: { text: 'tyres were cold' } }])
    assert.deepEqual([session.active, session.toSave().form], [{ row: 5, column: 1 }, form])
  })
  it('that accepts a finding is opened again on that finding', () => {
    const found = finding(4, 'warning', 'laps', 'e1')
    const { changes } = openSession(smallView(3, [found]), { ...state, form: { form: 'accept', finding: 'finding 4', values: { reason: 'wet' } } })
    assert.deepEqual(changes.filter(({ kind }) => kind === 'accept'), [{ kind: 'accept', finding: found, values: { reason: 'wet' } }])
  })
  it('is told with what was in it where it cannot be opened, until that is let go of', () => {
    const { session } = openSession(smallView(), { ...state, form: { form: 'header', column: 'gone', values: { id: 'a', reason: 'too soft' } } })
    assert.match(session.notice ?? '', /a · too soft/)
    assert.ok(session.toSave().form)
    session.note(undefined)
    assert.equal(session.toSave().form, undefined)
  })
})

describe('a host that does not answer', () => {
  it('is noticed after two seconds and forgiven when it answers', () => {
    const opened = openSession()
    type(opened, '4 out')
    opened.pass(1999)
    assert.equal(opened.session.outbox.silent, false)
    opened.pass(1)
    assert.equal(opened.session.outbox.silent, true)
    assert.equal(opened.session.pending.unwritten[0]?.text, '4 out')
    opened.answer()
    assert.equal(opened.session.outbox.silent, false)
  })
  it('is not suspected when it answered in time', () => {
    const opened = openSession()
    type(opened, '4 out')
    opened.answer()
    opened.pass(5000)
    assert.equal(opened.session.outbox.silent, false)
  })
})

describe('a save', () => {
  it('gets what is being typed first, and leaves the cell open', () => {
    const opened = openSession()
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '4 o')
    receive(opened.session, { type: 'pendingAsked', id: 7 })
    assert.deepEqual(opened.sent.slice(-2).map(({ type: kind }) => kind), ['gesture', 'pendingSent'])
    assert.equal(opened.session.editing?.text, '4 o')
    commitEdit(opened.session)
    assert.equal(opened.gestures().length, 1)
  })
  it('is not held up when nothing is open', () => {
    const opened = openSession()
    receive(opened.session, { type: 'pendingAsked', id: 7 })
    assert.deepEqual(opened.sent.at(-1), { type: 'pendingSent', id: 7 })
  })
})

describe('another view of the notebook', () => {
  it('keeps the selection by key when rows and entries move', () => {
    const { session } = openSession()
    session.select({ row: 5, column: 1 })
    const view = smallView()
    view.columns.unshift({ ...view.columns[0]!, key: 'new', id: 'new' })
    for (const row of view.cells) if (row.length > 0) row.unshift(row[0]!)
    receive(session, { type: 'gridShown', version: 2, view: packView(view) })
    assert.deepEqual(session.active, { row: 5, column: 2 })
  })
  it('falls back to the nearest spot when the entry is gone', () => {
    const { session } = openSession()
    receive(session, { type: 'gridShown', version: 2, view: packView(smallView(2)) })
    assert.deepEqual(session.active, { row: 1, column: 1 })
  })
  it('keeps an open cell by key', () => {
    const opened = openSession()
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '4')
    receive(opened.session, { type: 'gridShown', version: 2, view: packView(smallView(5)) })
    commitEdit(opened.session)
    assert.deepEqual(opened.gestures(), [{ kind: 'setCell', row: 'rebound', column: 'e2', text: '4' }])
  })
  it('is asked for anew when a patch does not fit', () => {
    const opened = openSession()
    receive(opened.session, { type: 'gridChanged', version: 2, patch: { ...frame, columns: [], cells: [[1, 40, { state: 'set', text: '' }]] } })
    assert.deepEqual(opened.sent.at(-1), { type: 'ready' })
  })
  it('has the place of a gesture’s answer selected when it comes after the answer', () => {
    const { session } = openSession()
    receive(session, { type: 'gestureAnswered', id: 1, reveal: { row: 'rebound', column: 'e3' } })
    receive(session, { type: 'gridShown', version: 2, view: packView(smallView(4)) })
    assert.deepEqual(session.active, { row: 1, column: 3 })
  })
  it('goes to an entry’s header for a place without a row', () => {
    const { session } = openSession()
    receive(session, { type: 'placeRevealed', place: { row: '', column: 'e1' } })
    assert.deepEqual(session.active, { row: -1, column: 1 })
  })
  it('speaks of findings that came up in the current cell, and of no others', () => {
    const opened = openSession()
    receive(opened.session, { type: 'gridShown', version: 2, view: packView(smallView(3, [finding(1, 'error', 'rebound', 'e2'), finding(2, 'error', 'laps', 'e2')])) })
    assert.deepEqual(opened.said, [['Error: finding 1', 'urgent']])
    receive(opened.session, { type: 'gridShown', version: 3, view: packView(smallView(3, [finding(9, 'error', 'rebound', 'e2')].map((each) => ({ ...each, message: 'finding 1' })))) })
    assert.equal(opened.said.length, 1)
  })
})

describe('a range of cells', () => {
  const ranged = () => {
    const opened = openSession()
    opened.session.select({ row: 1, column: 0 })
    opened.session.select({ row: 2, column: 1 }, { extend: true })
    return opened
  }
  it('tells the entries that it begins and ends in, from left to right, and that it has ended', () => {
    const opened = ranged()
    const told = () => opened.sent.flatMap((message) => (message.type === 'selectionChanged' ? [message.columns.join(' ')] : []))
    assert.deepEqual(told(), ['e2', 'e0', 'e0 e1'])
    opened.session.select({ row: 2, column: 1 })
    assert.equal(told().at(-1), 'e1')
    opened.session.select({ row: 1, column: 2 })
    opened.session.select({ row: 1, column: 0 }, { extend: true })
    assert.equal(told().at(-1), 'e0 e2')
  })
  it('tells the entry of the header that one stands on, none on a label, and another’s name after it was given one', () => {
    const opened = openSession()
    const last = () => opened.sent.flatMap((message) => (message.type === 'selectionChanged' ? [message.columns] : [])).at(-1)
    opened.session.select({ row: -1, column: 1 })
    assert.deepEqual(last(), ['e1'])
    opened.session.select({ row: 1, column: -1 })
    assert.deepEqual(last(), [])
    opened.session.select({ row: 1, column: 1 })
    const view = smallView()
    view.columns[1]!.key = 'renamed'
    receive(opened.session, { type: 'gridShown', version: 2, view: packView(view) })
    assert.deepEqual(last(), ['renamed'])
  })
  it('is copied as a block, without headings', () => {
    const opened = ranged()
    assert.equal(copiedText(opened.session), '1.0\t1.1\n2.0\t2.1')
    opened.session.select({ row: 4, column: 0 }, { extend: true })
    assert.equal(copiedText(opened.session), '1.0\n2.0\n4.0')
  })
  it('is cleared as one gesture, of the cells set there alone', () => {
    const opened = ranged()
    clearSelected(opened.session)
    assert.deepEqual(opened.gestures(), [{ kind: 'clearCells', cells: [{ row: 'rebound', column: 'e0' }, { row: 'preload', column: 'e0' }], partly: true }])
  })
  it('is pasted over as one gesture, answered as one', () => {
    const opened = ranged()
    pasteText(opened.session, '1\t2\n3\t4')
    assert.deepEqual(opened.gestures().map((gesture) => gesture.kind === 'setCells' && gesture.cells.length), [4])
    opened.answer('two of them are wrong')
    assert.equal(opened.session.pending.unwritten.filter(({ state }) => state === 'refused').length, 4)
  })
  it('ends by Escape before the grid is left', () => {
    const opened = ranged()
    press(opened.session, { kind: 'leave' }, () => 0)
    assert.equal(opened.changes.some(({ kind }) => kind === 'leave'), false)
    press(opened.session, { kind: 'leave' }, () => 0)
    assert.equal(opened.changes.at(-1)?.kind, 'leave')
  })
  it('begins anew at a header, which is no part of one', () => {
    const opened = ranged()
    opened.session.select({ row: -1, column: 1 }, { extend: true })
    assert.deepEqual(opened.session.selection.anchor, { row: -1, column: 1 })
  })
})
