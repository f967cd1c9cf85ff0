import assert from 'node:assert/strict'
import type { ChartsView } from '../../../src/core/charts/view'
import { freshCharts, readSavedCharts } from '../../../webview/grid/model/charts'
import { receive } from '../../../webview/grid/model/receive'
import { readSavedState } from '../../../webview/grid/model/savedState'
import { openSession, smallView } from './small'

const given = (group: ChartsView['group'], ofEntry?: string): ChartsView => ({ group, groups: [{ key: 'sag', label: 'Sag' }], charts: [], ...(ofEntry === undefined ? {} : { ofEntry }) })
const asked = ({ sent }: ReturnType<typeof openSession>) => sent.filter(({ type }) => type.startsWith('charts'))

describe('the charts’ panel', () => {
  it('asks for nothing until it is opened, then for its charts and the entry looked at', () => {
    const opened = openSession()
    opened.session.select({ row: 1, column: 1 })
    assert.deepEqual(asked(opened), [])
    opened.session.charts.show()
    assert.deepEqual(asked(opened), [{ type: 'chartsAsked', group: 'sag', column: 'e1' }])
    opened.session.charts.show('geometry')
    assert.deepEqual(asked(opened).at(-1), { type: 'chartsAsked', group: 'geometry', column: 'e1' })
  })

  it('opens on the command and puts the keyboard into the charts once they have come', () => {
    const opened = openSession()
    receive(opened.session, { type: 'commandGiven', command: 'showCharts' })
    assert.equal(opened.changes.some((change) => change.kind === 'charts' && change.focus), false)
    receive(opened.session, { type: 'chartsGiven', charts: given('sag') })
    assert.deepEqual(opened.changes.at(-1), { kind: 'charts', focus: true })
    receive(opened.session, { type: 'chartsGiven', charts: given('sag') })
    assert.deepEqual(opened.changes.at(-1), { kind: 'charts', focus: false })
    receive(opened.session, { type: 'commandGiven', command: 'showCharts' })
    assert.deepEqual(opened.changes.at(-1), { kind: 'charts', focus: true })
  })

  it('asks for more detail of the stretch looked at, the newest alone, until something else is looked at', () => {
    const opened = openSession()
    opened.session.select({ row: 1, column: 1 })
    opened.session.charts.show('force')
    receive(opened.session, { type: 'chartsGiven', charts: given('force', 'e1') })
    const before = asked(opened).length
    opened.session.charts.lookCloser([1, 5])
    opened.session.charts.lookCloser([2, 3])
    opened.session.charts.lookCloser([2, 3])
    opened.pass(100)
    assert.deepEqual(asked(opened).slice(before), [{ type: 'chartsAsked', group: 'force', column: 'e1', within: [2, 3] }])
    opened.session.select({ row: 1, column: 0 })
    opened.pass(100)
    assert.deepEqual(asked(opened).at(-1), { type: 'chartsAsked', group: 'force', column: 'e0' })
  })

  it('takes no charts of a group that was left, nor any when it is closed', () => {
    const { session } = openSession()
    session.charts.show('sag')
    session.charts.show('force')
    session.charts.take(given('sag'))
    assert.equal(session.charts.given, undefined)
    session.charts.take(given('force'))
    session.charts.close()
    session.charts.take(given('force'))
    assert.equal(session.charts.given, undefined)
  })

  it('tells the host when it is closed, once', () => {
    const opened = openSession()
    opened.session.charts.show()
    opened.session.charts.close()
    opened.session.charts.close()
    assert.deepEqual(asked(opened).slice(1), [{ type: 'chartsLeft' }])
  })

  it('asks anew for another entry once the selection rests there, where the charts are of one entry', () => {
    const opened = openSession()
    const { session } = opened
    session.charts.show('force')
    session.charts.take(given('force', 'e2'))
    session.select({ row: 1, column: 1 })
    session.select({ row: 1, column: 0 })
    assert.equal(asked(opened).length, 1)
    opened.pass(100)
    assert.deepEqual(asked(opened).slice(1), [{ type: 'chartsAsked', group: 'force', column: 'e0' }])
    session.select({ row: 2, column: 0 })
    opened.pass(100)
    assert.equal(asked(opened).length, 2)
  })

  it('does not mind the selection where they are of all entries', () => {
    const opened = openSession()
    opened.session.charts.show('sag')
    opened.session.charts.take(given('sag'))
    opened.session.select({ row: 1, column: 0 })
    opened.pass(100)
    assert.equal(asked(opened).length, 1)
  })

  it('follows an entry that is renamed', () => {
    const opened = openSession()
    opened.session.charts.show('force')
    opened.session.charts.take(given('force', 'e2'))
    const column = { ...smallView().columns[2]!, key: 'renamed', id: 'renamed' }
    receive(opened.session, { type: 'gridChanged', version: 2, patch: { title: 'Small', state: 'ready', columns: [[2, column]], cells: [] } })
    opened.pass(100)
    assert.deepEqual(asked(opened).at(-1), { type: 'chartsAsked', group: 'force', column: 'renamed' })
  })

  it('is open again where it was when the page was hidden, and asks by itself', () => {
    const before = openSession()
    before.session.charts.show('geometry')
    before.session.charts.showTable(true)
    before.session.charts.resize(0.6)
    const saved = readSavedState(JSON.parse(JSON.stringify(before.session.toSave())))
    const after = openSession(smallView(), saved)
    assert.deepEqual(after.session.charts.toSave(), { open: true, group: 'geometry', asTable: true, share: 0.6 })
    assert.deepEqual(asked(after), [{ type: 'chartsAsked', group: 'geometry', column: 'e2' }])
  })

  it('keeps a height that leaves room for the grid', () => {
    const { charts } = openSession().session
    charts.resize(5)
    assert.equal(charts.share, 0.8)
    charts.resize(-1)
    assert.equal(charts.share, 0.2)
  })

  it('reads nothing odd out of what is left of an earlier page', () => {
    for (const odd of [undefined, null, 7, 'open', [], { open: 'yes', group: '__proto__', share: 99, asTable: 1 }, { share: NaN }]) assert.deepEqual(readSavedCharts(odd), freshCharts)
  })
})
