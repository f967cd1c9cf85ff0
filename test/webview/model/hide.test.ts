import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { GridCommand } from '../../../src/protocol'
import { findMatches, findNext, openFind, replaceAll, replaced, replaceOne } from '../../../webview/grid/model/find'
import { filterEntries, hide, shownWords } from '../../../webview/grid/model/hide'
import { shownOf } from '../../../webview/grid/model/hiding'
import { packView } from '../../../src/core/grid/packView'
import { receive } from '../../../webview/grid/model/receive'
import { spokenMore } from '../../../webview/grid/model/describe'
import { readSavedState } from '../../../webview/grid/model/savedState'
import { beginEdit } from '../../../webview/grid/model/write'
import { arrived, finding, openSession, smallView } from './small'

type Opened = ReturnType<typeof openSession>
const give = (opened: Opened, command: GridCommand) => receive(opened.session, { type: 'commandGiven', command })
const rowsOf = ({ session }: Opened) => session.model.view.rows.map(({ key }) => key).join(' ')
const columnsOf = ({ session }: Opened) => session.model.view.columns.map(({ key }) => key).join(' ')

describe('a group of rows', () => {
  it('is folded away and opened by Enter on its heading, and by a command from within', () => {
    const opened = openSession()
    give(opened, 'toggleGroup')
    assert.equal(rowsOf(opened), 'g1 g2 sag laps felt')
    assert.deepEqual(opened.session.active, { row: 0, column: -1 })
    assert.deepEqual(opened.said.at(-1), ['g1 folded away.', 'polite'])
    beginEdit(opened.session, 'edit', 'all')
    assert.equal(rowsOf(opened), 'g1 rebound preload g2 sag laps felt')
    assert.equal(opened.session.model.view, opened.session.model.all)
  })
  it('stays folded when the page comes back', () => {
    const opened = openSession()
    give(opened, 'toggleGroup')
    const saved = opened.session.toSave()
    const kept = readSavedState(JSON.parse(JSON.stringify({ ...saved, hiding: { ...saved.hiding, folded: [...saved.hiding!.folded] } })))
    assert.equal(rowsOf(openSession(smallView(), kept)), 'g1 g2 sag laps felt')
    assert.deepEqual(readSavedState({ hiding: { folded: [1, 'g1'], rows: 'odd', entries: 3 } }).hiding, { folded: new Set(['g1']), rows: 'all', entries: '', pinned: [], pinnedRows: [] })
  })
  it('opens where a place in it is gone to', () => {
    const opened = openSession()
    give(opened, 'toggleGroup')
    receive(opened.session, { type: 'placeRevealed', place: { row: 'preload', column: 'e1' } })
    assert.equal(rowsOf(opened), 'g1 rebound preload g2 sag laps felt')
    assert.deepEqual(opened.session.active, { row: 2, column: 1 })
  })
})

describe('a pinned entry', () => {
  it('comes first, stays through every filter, and goes back to its place', () => {
    const opened = openSession()
    give(opened, 'pinEntry')
    assert.equal(columnsOf(opened), 'e2 e0 e1')
    assert.equal(opened.session.model.pinned, 1)
    assert.deepEqual(opened.said.at(-1), ['e2 stays beside the labels.', 'polite'])
    assert.deepEqual(opened.session.active, { row: 1, column: 0 })
    filterEntries(opened.session, 'name:e0')
    assert.equal(columnsOf(opened), 'e2 e0')
    give(opened, 'showAll')
    assert.equal(columnsOf(opened), 'e2 e0 e1')
    give(opened, 'pinEntry')
    assert.equal(columnsOf(opened), 'e0 e1 e2')
    assert.equal(opened.session.model.view, opened.session.model.all)
  })
  it('is written where it stands', () => {
    const opened = openSession()
    give(opened, 'pinEntry')
    receive(opened.session, { type: 'gridChanged', version: 2, patch: { title: '', state: 'ready', columns: [], cells: [[1, 2, { state: 'set', text: '9 out' }]] } })
    assert.equal(opened.session.model.cell({ row: 1, column: 0 })?.text, '9 out')
  })
  it('stands beside others in their order, and is remembered', () => {
    const opened = openSession()
    give(opened, 'pinEntry')
    opened.session.select({ row: 1, column: 2 })
    give(opened, 'pinEntry')
    assert.equal(columnsOf(opened), 'e1 e2 e0')
    assert.deepEqual(readSavedState(JSON.parse(JSON.stringify(opened.session.toSave()))).hiding!.pinned, ['e2', 'e1'])
  })
  it('is pinned with all that are selected, and they are let go together', () => {
    const opened = openSession()
    opened.session.selectRange({ anchor: { row: 1, column: 1 }, active: { row: 2, column: 2 } })
    give(opened, 'pinEntry')
    assert.equal(columnsOf(opened), 'e1 e2 e0')
    assert.deepEqual(opened.said.at(-1), ['2 entries stay beside the labels.', 'polite'])
    opened.session.selectRange({ anchor: { row: 1, column: 0 }, active: { row: 1, column: 1 } })
    give(opened, 'pinEntry')
    assert.equal(columnsOf(opened), 'e0 e1 e2')
  })
  it('stays so, and as wide, under another name', () => {
    const opened = openSession()
    give(opened, 'pinEntry')
    give(opened, 'widenColumn')
    const renamed = smallView()
    Object.assign(renamed.columns[2]!, { key: 'new', id: 'new' })
    receive(opened.session, { type: 'gridShown', version: 2, view: packView(renamed) })
    assert.equal(columnsOf(opened), 'new e0 e1')
    assert.deepEqual([...opened.session.widths], [['new', 152]])
  })
  it('is none on a label', () => {
    const opened = openSession()
    opened.session.select({ row: 1, column: -1 })
    give(opened, 'pinEntry')
    assert.deepEqual(opened.said.at(-1), ['There is no entry here to edit.', 'shown'])
  })
})

describe('a pinned row', () => {
  it('comes first, without its heading, through every filter and fold, and goes back to its place', () => {
    const opened = openSession()
    opened.session.select({ row: 5, column: 1 })
    give(opened, 'pinRow')
    assert.equal(rowsOf(opened), 'laps g1 rebound preload g2 sag felt')
    assert.equal(opened.session.model.pinnedRows, 1)
    assert.deepEqual(opened.session.active, { row: 0, column: 1 })
    assert.deepEqual(opened.said.at(-1), ['laps stays below the header.', 'polite'])
    assert.equal(opened.session.model.groupOf(0), undefined)
    assert.match(spokenMore(opened.session.model, { row: 0, column: -1 }, undefined), /^pinned/)
    give(opened, 'changedOnly')
    assert.equal(rowsOf(opened), 'laps')
    give(opened, 'showAll')
    assert.deepEqual(readSavedState(JSON.parse(JSON.stringify(opened.session.toSave()))).hiding!.pinnedRows, ['laps'])
    give(opened, 'pinRow')
    assert.equal(rowsOf(opened), 'g1 rebound preload g2 sag laps felt')
  })
  it('is a row, not a heading or the header', () => {
    const opened = openSession()
    for (const row of [-1, 0]) {
      opened.session.select({ row, column: row === 0 ? -1 : 1 })
      give(opened, 'pinRow')
      assert.deepEqual(opened.said.at(-1), ['Stand on the row that is to be pinned.', 'shown'])
    }
  })
})

describe('a filter', () => {
  const mixed = () => {
    const view = smallView(3, [finding(0, 'warning', 'laps', 'e1')])
    view.cells[2]![1] = { ...view.cells[2]![1]!, changed: true }
    Object.assign(view.columns[2]!, { reason: 'Wet track', verdict: 'better' })
    return openSession(view)
  }
  it('leaves the changed rows, those with findings, or all again', () => {
    const opened = mixed()
    give(opened, 'changedOnly')
    assert.equal(rowsOf(opened), 'g1 preload')
    assert.deepEqual(opened.said.at(-1), ['1 of 5 rows, 3 of 3 entries', 'polite'])
    give(opened, 'withFindingsOnly')
    assert.equal(rowsOf(opened), 'g2 laps')
    give(opened, 'withFindingsOnly')
    assert.equal(opened.session.model.view, opened.session.model.all)
  })
  it('leaves the entries that have all the words, and shows all again', () => {
    const opened = mixed()
    filterEntries(opened.session, 'BETTER wet ')
    assert.equal(columnsOf(opened), 'e2')
    filterEntries(opened.session, 'e0')
    assert.equal(columnsOf(opened), 'e0')
    filterEntries(opened.session, 'nothing like it')
    assert.deepEqual([columnsOf(opened), shownWords(opened.session)], ['', '5 of 5 rows, 0 of 3 entries'])
    give(opened, 'showAll')
    assert.equal(columnsOf(opened), 'e0 e1 e2')
  })
  it('gives way where a place it hides is gone to', () => {
    const opened = mixed()
    give(opened, 'changedOnly')
    filterEntries(opened.session, 'e1')
    receive(opened.session, { type: 'placeRevealed', place: { row: 'laps', column: 'e0' } })
    assert.deepEqual(opened.session.keyed(opened.session.active), { row: 'laps', column: 'e0' })
  })
  it('takes what comes for hidden cells, and shows it later', () => {
    const opened = mixed()
    filterEntries(opened.session, 'e1')
    receive(opened.session, { type: 'gridChanged', version: 2, patch: { title: 'Small', state: 'ready', columns: [[0, { ...smallView().columns[0]!, reason: 'dry' }]], cells: [[1, 0, { state: 'set', text: 'hidden' }], [1, 1, { state: 'set', text: 'shown' }]] } })
    assert.equal(opened.session.model.cell({ row: 1, column: 0 })!.text, 'shown')
    assert.deepEqual(opened.changes.flatMap((change) => (change.kind === 'cells' ? change.touched.cells : [])), [{ row: 1, column: 0 }])
    give(opened, 'showAll')
    assert.deepEqual([opened.session.model.cell({ row: 1, column: 0 })!.text, opened.session.model.view.columns[0]!.reason], ['hidden', 'dry'])
  })
  it('keeps every cell in its row and column, whatever is hidden', () => {
    fc.assert(fc.property(fc.subarray(['g1', 'g2']), fc.constantFrom('all' as const, 'changed' as const, 'findings' as const), fc.constantFrom('', 'e', 'e1', '2026-04-02'), (folded, rows, entries) => {
      const opened = mixed()
      hide(opened.session, { folded: new Set(folded), rows, entries })
      const { model } = opened.session
      const { view, all } = model
      const { rows: shown, columns } = shownOf(all, opened.session.model.hiding)
      view.rows.forEach((row, y) => {
        assert.equal(row, all.rows[shown[y]!])
        if (row.kind !== 'group') view.columns.forEach((_, x) => assert.equal(model.cell({ row: y, column: x }), all.cells.at(shown[y]!, columns[x]!) ?? 'there is one'))
      })
    }))
  })
})

describe('finding', () => {
  it('goes through headers, labels and cells in reading order, round and round', () => {
    assert.deepEqual(findMatches(arrived(smallView()), '2.1'), [{ row: 'preload', column: 'e1' }])
    assert.deepEqual(findMatches(arrived(smallView()), 'E1'), [{ column: 'e1' }])
    assert.deepEqual(findMatches(arrived(smallView()), 'rebound LEFT'), [{ row: 'rebound' }])
    assert.deepEqual(findMatches(arrived(smallView()), ' '), [])
    const opened = openSession()
    opened.session.find.text = '.2'
    const seen = Array.from({ length: 6 }, () => {
      findNext(opened.session)
      return opened.session.keyed(opened.session.active).row
    })
    assert.deepEqual(seen, ['preload', 'sag', 'laps', 'felt', 'rebound', 'preload'])
    findNext(opened.session, true)
    assert.equal(opened.session.keyed(opened.session.active).row, 'rebound')
    assert.deepEqual(opened.said.at(-1), ['1 of 5: Rebound left, e2', 'polite'])
  })
  it('shows what is hidden, and says where there is nothing', () => {
    const opened = openSession()
    give(opened, 'toggleGroup')
    opened.session.find.text = '2.0'
    findNext(opened.session)
    assert.deepEqual(opened.session.keyed(opened.session.active), { row: 'preload', column: 'e0' })
    opened.session.find.text = 'nowhere'
    findNext(opened.session)
    assert.equal(opened.said.at(-1)![0], 'Nothing found for nowhere.')
  })
  it('leaves a filter alone, and looks in nothing that it hides', () => {
    const opened = openSession()
    filterEntries(opened.session, 'e1')
    opened.session.find = { open: true, text: '2.', replacement: '3.' }
    findNext(opened.session)
    findNext(opened.session)
    assert.deepEqual([columnsOf(opened), opened.session.keyed(opened.session.active)], ['e1', { row: 'preload', column: 'e1' }])
    replaceAll(opened.session)
    assert.deepEqual(opened.gestures(), [])
  })
  it('replaces here and goes on, or everywhere it was set as one gesture', () => {
    const opened = openSession()
    opened.session.find = { open: true, text: '.0', replacement: ' out' }
    opened.session.select({ row: 1, column: 0 })
    replaceOne(opened.session)
    assert.deepEqual(opened.gestures(), [{ kind: 'setCell', row: 'rebound', column: 'e0', text: '1 out' }])
    replaceAll(opened.session)
    const last = opened.gestures().at(-1)
    assert.deepEqual(last?.kind === 'setCells' && last.cells.map(({ row, column, text }) => `${row} ${column} ${text}`), ['rebound e0 1 out', 'preload e0 2 out', 'laps e0 5 out', 'felt e0 6 out'])
    openFind(opened.session, false)
    assert.deepEqual(opened.changes.at(-1), { kind: 'focus' })
  })
  it('replaces literally, in whatever case', () => {
    assert.equal(replaced('Wet, wet $& (x)', { text: 'WET', replacement: '$&' }), '$&, $& $& (x)')
    assert.equal(replaced('a.b+c', { text: '.b+', replacement: '' }), 'ac')
    assert.equal(replaced('abc', { text: ' ', replacement: 'x' }), 'abc')
  })
})
