import assert from 'node:assert/strict'
import type { GridView } from '../../../src/core/grid/view'
import { layFill } from '../../../webview/grid/model/fill'
import { menuOf } from '../../../webview/grid/model/menuOf'
import { receive } from '../../../webview/grid/model/receive'
import { beginEdit, clearSelected, draft, pasteText } from '../../../webview/grid/model/write'
import { commitToAll, moveEntryTo } from '../../../webview/grid/model/reshape'
import type { GridCommand } from '../../../src/protocol'
import { openSession, smallView } from './small'

/** The small grid with a pair of legs in its first two rows. */
function pairView(): GridView {
  const view = smallView()
  Object.assign(view.rows[1]!, { key: 'settings/fork/left', detail: 'left' })
  Object.assign(view.rows[2]!, { key: 'settings/fork/right', detail: 'right' })
  return view
}

const give = (opened: ReturnType<typeof openSession>, command: GridCommand) => receive(opened.session, { type: 'commandGiven', command })
const block = (top: number, left: number, bottom: number, right: number) => ({ anchor: { row: bottom, column: right }, active: { row: top, column: left } })

describe('filling', () => {
  it('goes right from the first selected column, and names what is worked out', () => {
    const opened = openSession()
    const filled = layFill(opened.session.model, block(1, 0, 4, 2), 'right')!
    assert.deepEqual(filled.cells.map(({ row, column, text }) => `${row} ${column} ${text}`), ['rebound e1 1.0', 'rebound e2 1.0', 'preload e1 2.0', 'preload e2 2.0'])
    assert.deepEqual(filled.skipped, [{ row: 'sag', column: 'e1' }, { row: 'sag', column: 'e2' }])
  })
  it('goes down from the first selected row, over headings', () => {
    const filled = layFill(openSession().session.model, block(2, 1, 5, 1), 'down')!
    assert.deepEqual([filled.cells, filled.skipped], [[{ row: 'laps', column: 'e1', text: '2.1' }], [{ row: 'sag', column: 'e1' }]])
  })
  it('comes from the one before where one is selected, and from nowhere at the edge', () => {
    const { model } = openSession().session
    assert.deepEqual(layFill(model, block(1, 1, 1, 1), 'right')!.cells, [{ row: 'rebound', column: 'e1', text: '1.0' }])
    assert.deepEqual(layFill(model, block(5, 1, 5, 1), 'down')!.cells, [{ row: 'laps', column: 'e1', text: '4.1' }])
    assert.equal(layFill(model, block(1, 0, 1, 0), 'right'), undefined)
    assert.equal(layFill(model, block(1, 0, 1, 0), 'down'), undefined)
    assert.equal(layFill(model, block(-1, 0, -1, 0), 'down'), undefined)
  })
  it('is one gesture, and tells what it left as it was', () => {
    const opened = openSession()
    opened.session.selectRange(block(1, 0, 4, 1))
    give(opened, 'fillRight')
    assert.deepEqual(opened.gestures().map((gesture) => gesture.kind === 'setCells' && [gesture.cells.length, gesture.partly]), [[2, true]])
    assert.match(opened.session.notice ?? '', /sag/)
  })
})

describe('cells of a block that cannot be written', () => {
  it('stay marked with their reason, while the others are done with', () => {
    const opened = openSession()
    opened.session.select({ row: 1, column: 0 })
    pasteText(opened.session, '7\n8')
    const message = opened.sent.filter(({ type }) => type === 'gesture').at(-1) as { id: number }
    receive(opened.session, { type: 'gestureAnswered', id: message.id, left: [{ row: 'preload', column: 'e0', why: 'a value is shared' }] })
    assert.deepEqual(opened.session.pending.unwritten.map(({ row, text, state, why }) => [row, text, state, why]), [['preload', '8', 'refused', 'a value is shared']])
    assert.match(opened.session.notice ?? '', /preload.*a value is shared/)
  })
})

describe('what a block leaves as it was', () => {
  const left = (opened: ReturnType<typeof openSession>, row: string) => {
    const message = opened.sent.filter(({ type }) => type === 'gesture').at(-1) as { id: number }
    receive(opened.session, { type: 'gestureAnswered', id: message.id, left: [{ row, column: 'e1', why: 'a value is shared' }] })
  }
  it('is told in one, whether the page knew it or the answer said it', () => {
    const opened = openSession()
    opened.session.selectRange(block(1, 0, 4, 1))
    give(opened, 'fillRight')
    left(opened, 'preload')
    assert.match(opened.session.notice ?? '', /sag.*preload.*a value is shared/)
  })
  it('is told of a text typed into all of it', () => {
    const opened = openSession()
    opened.session.selectRange(block(1, 1, 4, 1))
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '3')
    commitToAll(opened.session)
    assert.match(opened.session.notice ?? '', /sag, e1/)
  })
  it('is told of what is cleared', () => {
    const opened = openSession()
    opened.session.selectRange(block(1, 0, 2, 1))
    clearSelected(opened.session)
    left(opened, 'preload')
    assert.match(opened.session.notice ?? '', /preload, e1: a value is shared/)
  })
})

describe('a nudge', () => {
  it('asks for the selected positions alone, and says why it cannot', () => {
    const opened = openSession()
    give(opened, 'nudgeMore')
    opened.session.selectRange(block(1, 0, 5, 1))
    give(opened, 'nudgeLess')
    assert.deepEqual(opened.gestures().map((gesture) => gesture.kind === 'nudge' && [gesture.toward, gesture.cells.length]), [['more', 1], ['less', 4]])
    opened.answer('there is nothing further that way')
    assert.deepEqual(opened.said.at(-1), ['There is nothing further that way.', 'shown'])
    opened.session.select({ row: 5, column: 0 })
    give(opened, 'nudgeMore')
    assert.deepEqual([opened.gestures().length, opened.said.at(-1)![1]], [2, 'shown'])
  })
  it('tells where it stands as soon as the grid shows it', () => {
    const opened = openSession()
    give(opened, 'nudgeMore')
    receive(opened.session, { type: 'gridChanged', version: 2, patch: { title: 'Small', state: 'ready', columns: [], cells: [[1, 2, { state: 'set', text: '6 out' }]] } })
    assert.deepEqual(opened.said.at(-1), ['6 out', 'polite'])
  })
})

describe('both legs', () => {
  it('take the current position, or what is being typed', () => {
    const opened = openSession(pairView())
    opened.session.select({ row: 2, column: 0 })
    give(opened, 'setBothLegs')
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '4 out')
    commitToAll(opened.session)
    assert.deepEqual(opened.gestures(), ['2.0', '4 out'].map((text) => ({ kind: 'setBothLegs', row: 'settings/fork/right', column: 'e0', text })))
    assert.equal(opened.session.editing, undefined)
    assert.deepEqual(opened.session.pending.unwritten.map(({ row, text }) => [row, text]), [['settings/fork/left', '4 out'], ['settings/fork/right', '4 out']])
  })
  it('are all cells of a range, or the one cell where there is no pair', () => {
    const opened = openSession()
    opened.session.selectRange(block(1, 0, 4, 1))
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '3')
    commitToAll(opened.session)
    opened.session.select({ row: 5, column: 0 })
    beginEdit(opened.session, 'replace', 'end')
    draft(opened.session, '9')
    commitToAll(opened.session)
    assert.deepEqual(opened.gestures().map((gesture) => (gesture.kind === 'setCells' ? gesture.cells.length : gesture.kind)), [4, 'setCell'])
    give(opened, 'setBothLegs')
    assert.match(opened.said.at(-1)![0], /only one/)
  })
})

describe('an entry as a whole', () => {
  it('is duplicated, inserted, moved and taken out by the current cell’s', () => {
    const opened = openSession()
    for (const command of ['duplicateEntry', 'insertEntry', 'moveEntryLeft', 'moveEntryRight', 'removeEntry'] as const) give(opened, command)
    assert.deepEqual(opened.gestures().map((gesture) => ('column' in gesture ? [gesture.kind, gesture.column] : [])), [['duplicateEntry', 'e2'], ['insertEntry', 'e2'], ['moveEntry', 'e2'], ['moveEntry', 'e2'], ['removeEntry', 'e2']])
    opened.answer()
    assert.deepEqual(opened.said.at(-1), ['Entry e2 taken out.', 'polite'])
  })
  it('is carried before another, by how many places that is in the file', () => {
    const opened = openSession(smallView(5))
    const { session } = opened
    moveEntryTo(session, 3, 1)
    moveEntryTo(session, 1, 5)
    moveEntryTo(session, 2, 2)
    moveEntryTo(session, 2, 3)
    session.select({ row: 1, column: 4 })
    give(opened, 'pinEntry')
    moveEntryTo(session, 0, 2)
    assert.deepEqual(opened.gestures(), [{ kind: 'moveEntry', column: 'e3', by: -2 }, { kind: 'moveEntry', column: 'e1', by: 3 }, { kind: 'moveEntry', column: 'e4', by: -3 }])
    opened.answer('e4 stays where it is')
    assert.deepEqual(opened.said.at(-1), ['E4 stays where it is.', 'shown'])
  })
  it('is left alone where nothing may be written', () => {
    const opened = openSession({ ...smallView(), readOnly: 'a version to read' })
    for (const command of ['duplicateEntry', 'fillRight', 'nudgeMore', 'setBothLegs', 'removeAdjuster'] as const) give(opened, command)
    assert.deepEqual(opened.gestures(), [])
    assert.ok(opened.said.every(([, manner]) => manner === 'shown'))
  })
})

describe('an adjuster', () => {
  it('is taken out, and where it is in use a person is asked first', async () => {
    const opened = openSession(pairView())
    give(opened, 'removeAdjuster')
    opened.answer('Fork is set in ‘e0’; its positions would be lost')
    await Promise.resolve()
    await Promise.resolve()
    const asked = opened.changes.find(({ kind }) => kind === 'confirm')
    assert.deepEqual(asked?.kind === 'confirm' && asked.gesture, { kind: 'removeAdjuster', id: 'fork', withPositions: true })
    assert.deepEqual(opened.gestures(), [{ kind: 'removeAdjuster', id: 'fork', withPositions: false }])
  })
})

describe('the whole of a row, an entry and the grid', () => {
  it('is selected from any cell', () => {
    const opened = openSession()
    opened.session.select({ row: 2, column: 1 })
    const blocks = (['selectRow', 'selectColumn', 'selectAll'] as const).map((command) => {
      opened.session.select({ row: 2, column: 1 })
      give(opened, command)
      const { active, anchor } = opened.session.selection
      return [active.row, active.column, anchor.row, anchor.column]
    })
    assert.deepEqual(blocks, [[2, 0, 2, 2], [1, 1, 6, 1], [1, 0, 6, 2]])
  })
})

describe('the editor’s menus', () => {
  it('are told what they were opened on', () => {
    const { model } = openSession().session
    const about = (row: number, column: number) => menuOf(model, { row, column })
    assert.deepEqual([about(-1, 1), about(1, 0), about(5, 0), about(1, -1), about(0, -1)], [
      { webviewSection: 'entry', column: 'e1' }, { webviewSection: 'position', column: 'e0' }, { webviewSection: 'cell', column: 'e0' }, { webviewSection: 'adjuster' }, { webviewSection: 'row' },
    ])
  })
})
