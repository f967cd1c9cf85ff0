import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../src/core/grid/applyGesture'
import { buildGrid } from '../../src/core/grid/buildGrid'
import type { Gesture } from '../../src/core/grid/gesture'
import type { GridFinding, GridView } from '../../src/core/grid/view'
import { fileUnits } from '../../src/core/notation/displayUnits'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { applyChanges, type TextChange } from '../../src/core/text'
import { ShownGrid } from '../../src/editor/grid/shownGrid'
import { Readings } from '../../src/editor/readings'
import type { ToWebview } from '../../src/protocol'
import { GridModel } from '../../webview/grid/model/gridModel'
import { unpackView } from '../../webview/grid/model/unpackView'
import { Choices } from '../core/grid/choices'
import { head } from '../core/grid/editing'
import { randomGesture } from '../core/grid/randomGesture'
import { writeRandomNotebook } from '../core/grid/writeRandomNotebook'
import { seasonNotebook } from '../bench/seasonNotebook'

/** A document with a page on it, and what the page was told. */
function opened(text: string) {
  const document = { text, version: 1 }
  const read = { texts: 0 }
  const readings = new Readings((each, earlier) => {
    read.texts++
    const notebook = readNotebook(each, earlier)
    return { notebook, findings: checkNotebook(notebook) }
  })
  const page = new GridModel()
  const told: ToWebview['type'][] = []
  const reading = () => readings.of(document.version, () => document.text)
  const grid = new ShownGrid({
    reading, lastGood: () => readings.lastGood, readAhead: (each) => readings.ahead(each), forgetAhead: (each) => readings.forget(each), units: () => fileUnits, readOnly: () => undefined,
  }, (message) => {
    told.push(message.type)
    if (message.type === 'gridShown') page.show(unpackView(structuredClone(message.view)))
    if (message.type === 'gridChanged') assert.ok(page.apply(structuredClone(message.patch)))
  })
  grid.show()
  return {
    document, grid, read, readings, reading, page: () => whole(page), since: () => told.splice(0),
    /** The document has another text, and whoever listens is told. */
    become: (now: string) => {
      document.text = now
      document.version++
      grid.update()
    },
  }
}

const sorted = (findings: readonly GridFinding[]) => [...findings].sort((a, b) => a.id - b.id)

function whole({ all }: GridModel): GridView {
  const { cells, findings, ...view } = all
  return JSON.parse(JSON.stringify({ ...view, cells: view.rows.map(({ kind }, y) => (kind === 'group' ? [] : view.columns.map((_, x) => cells.at(y, x)!))), findings: sorted(findings.list) })) as GridView
}

/** What a text is shown as that was never read before. */
function fresh(text: string): GridView {
  const notebook = readNotebook(text)
  const view = buildGrid(notebook, checkNotebook(notebook))
  return JSON.parse(JSON.stringify({ ...view, findings: sorted(view.findings) })) as GridView
}

const changesOf = (text: string, gesture: Gesture): TextChange[] => applyGesture(readNotebook(text), [], gesture).changes ?? []

const season = seasonNotebook(8)
const typed = (column: string, text: string): Gesture => ({ kind: 'setCell', column, row: 'settings/shock_rebound', text })

describe('what a page shows of a document', () => {
  it('is what an edit will come to before it is taken, and nothing more is told or read when it is', () => {
    const { grid, page, since, become, read } = opened(season)
    const changes = changesOf(season, typed('run-2', '77 out'))
    const coming = applyChanges(season, changes)
    since()
    const notebook = grid.showAhead(changes)!
    assert.deepEqual(page(), fresh(coming))
    assert.deepEqual(since(), ['gridChanged'])
    const before = read.texts
    become(coming)
    grid.settle(notebook)
    assert.deepEqual(since(), [])
    assert.equal(read.texts, before)
  })

  it('is what is there again where the edit was refused', () => {
    const { grid, page, since } = opened(season)
    const notebook = grid.showAhead(changesOf(season, typed('run-2', '77 out')))!
    assert.notDeepEqual(page(), fresh(season))
    since()
    grid.settle(notebook)
    assert.deepEqual(page(), fresh(season))
    assert.deepEqual(since(), ['gridChanged'])
  })

  it('is what came instead where another text did', () => {
    const { grid, page, become } = opened(season)
    const notebook = grid.showAhead(changesOf(season, typed('run-2', '77 out')))!
    const other = applyChanges(season, changesOf(season, typed('run-3', '1 out')))
    become(other)
    assert.deepEqual(page(), fresh(other))
    grid.settle(notebook)
    assert.deepEqual(page(), fresh(other))
  })

  it('stands on nothing that was worked out of a text that never came', () => {
    const text = `${head}entries:\n  - id: a\n    settings: {shock: 3}\n  - id: b\n    reason: x\n  - id: c\n    reason: x\n`
    const { grid, page, become } = opened(text)
    const notebook = grid.showAhead(changesOf(text, { kind: 'setCell', column: 'a', row: 'settings/shock', text: '9' }))!
    grid.settle(notebook)
    const other = text.replace('reason: x', 'reason: y')
    become(other)
    assert.deepEqual(page(), fresh(other))
    const last = other.replace('id: a\n', 'id: a\n    reason: z\n')
    become(last)
    assert.deepEqual(page(), fresh(last))
  })

  it('is not touched by the end of an edit whose turn is over', () => {
    const { grid, page, since, become } = opened(season)
    const first = grid.showAhead(changesOf(season, typed('run-2', '77 out')))!
    const text = applyChanges(season, changesOf(season, typed('run-2', '77 out')))
    become(text)
    const changes = changesOf(text, typed('run-3', '78 out'))
    grid.showAhead(changes)
    since()
    grid.settle(first)
    assert.deepEqual(since(), [])
    assert.deepEqual(page(), fresh(applyChanges(text, changes)))
  })

  it('waits for the text where rows or columns come, or where it would break', () => {
    const { grid, page, since, become } = opened(season)
    since()
    for (const changes of [changesOf(season, { kind: 'addEntry', id: 'more', date: '2026-05-01' }), [{ start: season.indexOf('entries'), end: season.indexOf('entries'), text: '}: [' }]]) {
      const notebook = grid.showAhead(changes)!
      assert.deepEqual(since(), [])
      grid.settle(notebook)
    }
    const text = applyChanges(season, changesOf(season, { kind: 'addEntry', id: 'more', date: '2026-05-01' }))
    become(text)
    assert.deepEqual(since(), ['gridShown'])
    assert.deepEqual(page(), fresh(text))
  })

  it('is told anew where what is known beside the text changed before it came', () => {
    const { grid, page, since, become, readings, read } = opened(season)
    const changes = changesOf(season, typed('run-2', '77 out'))
    grid.showAhead(changes)
    readings.renew((reading) => ({ ...reading, findings: [] }))
    grid.update()
    assert.deepEqual(page(), { ...fresh(season), ...withoutFindings(fresh(season)) })
    const before = read.texts
    since()
    become(applyChanges(season, changes))
    assert.equal(read.texts, before + 1)
    assert.deepEqual(page(), fresh(applyChanges(season, changes)))
  })

  it('is the grid of the text, whatever is done, taken, refused or overtaken', function () {
    const runs = Number(process.env['DETENT_RUNS'] ?? 1)
    this.timeout(60_000 * runs)
    const seen = { taken: 0, refused: 0, overtaken: 0 }
    fc.assert(fc.property(fc.array(fc.nat(9999), { maxLength: 900, size: 'max' }), (tape) => {
      const choices = new Choices(tape)
      const { grid, page, become, document, reading } = opened(writeRandomNotebook(choices))
      for (let step = 0; step < 5; step++) {
        const { notebook, findings } = reading()
        const { changes } = applyGesture(notebook, findings, randomGesture(notebook, choices))
        if (!changes) continue
        const coming = grid.showAhead(changes)
        if (coming) assert.equal(coming.text, applyChanges(document.text, changes))
        const outcome = choices.of(['taken', 'refused', 'overtaken'] as const)
        seen[outcome]++
        if (outcome === 'taken') become(applyChanges(document.text, changes))
        if (outcome === 'overtaken') become(applyChanges(document.text, applyGesture(notebook, findings, randomGesture(notebook, choices)).changes ?? []))
        if (coming) grid.settle(coming)
        assert.deepEqual(page(), fresh(document.text))
      }
    }), { numRuns: 25 * runs, seed: 21, endOnFailure: true })
    for (const [outcome, times] of Object.entries(seen)) assert.ok(times > 2, `${outcome} ${times} times`)
  })
})

/** The same grid, with nothing found. */
function withoutFindings({ cells, columns }: GridView): Partial<GridView> {
  const bare = cells.map((row) => row.map(({ findings: _, worst: __, ...cell }) => cell))
  return { findings: [], cells: bare, columns: columns.map((column) => ({ ...column, findings: [] })) }
}
