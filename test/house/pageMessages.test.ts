import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../src/core/grid/applyGesture'
import type { Gesture } from '../../src/core/grid/gesture'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { fromPage } from '../../src/editor/messages/fromPages'
import type { FromCompare, FromTurns, FromWebview } from '../../src/protocol'
import { aNotebook } from '../language/aNotebook'

const place = { column: 'run-1', row: 'settings/shock_rebound' }
const date = '2026-05-01'
const gestures: Record<Gesture['kind'], Gesture> = {
  setCell: { kind: 'setCell', ...place, text: '4' }, setCells: { kind: 'setCells', cells: [{ ...place, text: '4' }], partly: true }, setBothLegs: { kind: 'setBothLegs', ...place, text: '4' },
  nudge: { kind: 'nudge', cells: [place], toward: 'more' }, clearCells: { kind: 'clearCells', cells: [place] }, setHeader: { kind: 'setHeader', column: 'run-1', field: 'reason', text: 'x' },
  addEntry: { kind: 'addEntry', date, after: 'found' }, returnTo: { kind: 'returnTo', column: 'found', date, reason: 'x' }, removeEntry: { kind: 'removeEntry', column: 'run-1' },
  duplicateEntry: { kind: 'duplicateEntry', column: 'run-1', date }, insertEntry: { kind: 'insertEntry', column: 'found', date }, moveEntry: { kind: 'moveEntry', column: 'run-1', by: -1 },
  annotate: { kind: 'annotate', ...place, text: 'x' }, applyFix: { kind: 'applyFix', finding: 0, fix: 0 }, acceptFinding: { kind: 'acceptFinding', finding: 0, reason: 'x' },
  addAdjuster: { kind: 'addAdjuster', id: 'a', on: 'fork', legs: ['left', 'right'], controls: 'rebound', counts: 'clicks' },
  removeAdjuster: { kind: 'removeAdjuster', id: 'shock_cam', withPositions: true },
  moveAdjuster: { kind: 'moveAdjuster', id: 'shock_cam', toward: 'up' }, duplicateAdjuster: { kind: 'duplicateAdjuster', id: 'shock_cam' }, begin: { kind: 'begin', start: 'airFork', date },
}
const grid: FromWebview[] = [
  { type: 'ready' }, ...Object.values(gestures).map((gesture) => ({ type: 'gesture' as const, id: 1, gesture })), { type: 'pendingSent', id: 1 }, { type: 'cardAsked', id: 1, row: place.row }, { type: 'adviceAsked', id: 2, column: 'x' },
  { type: 'chartsAsked', group: 'sag' }, { type: 'chartsAsked', group: 'log', column: 'run-1', within: [0.5, 2] }, { type: 'chartsLeft' }, { type: 'openText' }, { type: 'openText', place, line: 3 }, { type: 'selectionChanged', place: null, columns: [], range: false, cells: 0 },
]
const compare: FromCompare[] = [
  { type: 'ready' }, { type: 'sidesSwapped' }, { type: 'stepped', newer: true }, { type: 'sideAsked', side: 'left' }, { type: 'filterSet', onlyDifferences: false },
  { type: 'placeOpened', side: 'right', place }, { type: 'lineOpened', side: 'left', line: 3 }, { type: 'turnListAsked' },
]
const turns: FromTurns[] = [{ type: 'ready' }, { type: 'copyAsked' }, { type: 'saveAsked' }]
const pages = { grid, compare, turns }

function heard(page: keyof typeof pages, message: unknown): unknown[] {
  const all: unknown[] = []
  fromPage(page, (each) => all.push(each))(message)
  return all
}

/** A message with one value in it taken out, or made something else. */
const spoilt = (message: unknown): fc.Arbitrary<unknown> => fc.tuple(fc.nat(20), fc.constantFrom<unknown>(undefined, null, 0, -1, NaN, 1.5, '', 'x', true, [], {}, [null], { toString: 1 }, '__proto__', [[]], 1e300)).map(([at, value]) => {
  const copy = structuredClone(message)
  const places: (() => void)[] = []
  const walk = (node: unknown) => {
    if (typeof node !== 'object' || node === null) return
    for (const key of Object.keys(node)) {
      places.push(() => Object.assign(node, { [key]: value }))
      walk((node as Record<string, unknown>)[key])
    }
  }
  walk(copy)
  places[at % places.length]?.()
  return copy
})

describe('what a page says', () => {
  it('is heard where it is a message, every one there is', () => {
    for (const [page, messages] of Object.entries(pages)) for (const message of messages) assert.deepEqual(heard(page as keyof typeof pages, message), [message], JSON.stringify(message))
  })

  it('is dropped where it is none, or another page’s', () => {
    const wrong: unknown[] = [undefined, null, 1, 'ready', [], {}, { type: 1 }, { type: 'constructor' }, { type: '__proto__' }, { type: 'toString' }, [{ type: 'ready' }], Object.create({ type: 'ready' })]
    for (const page of ['grid', 'compare', 'turns'] as const) for (const message of wrong) assert.deepEqual(heard(page, message), [], JSON.stringify(message))
    assert.deepEqual(heard('turns', { type: 'sidesSwapped' }), [])
    assert.deepEqual(heard('grid', { type: 'gesture', id: 1, gesture: { kind: 'setCell', column: 'a', row: 'b' } }), [])
    assert.deepEqual(heard('grid', { type: 'gesture', id: 1, gesture: { kind: 'eraseAll' } }), [])
    for (const within of [[2, 1], [1], [0, NaN], [0, Infinity], ['0', '1'], 5]) assert.deepEqual(heard('grid', { type: 'chartsAsked', group: 'log', within }), [], String(within))
    assert.deepEqual(heard('grid', { type: 'gesture', id: 1, gesture: { kind: 'setCell', column: 'a', row: 'b', text: 'x'.repeat(5_000_000) } }), [])
  })

  it('throws nothing, and asks nothing of the notebook that could not be asked', () => {
    const notebook = readNotebook(aNotebook)
    const findings = checkNotebook(notebook)
    const messages = fc.constantFrom(...Object.entries(pages).flatMap(([page, all]) => all.map((message) => ({ page: page as keyof typeof pages, message }))))
    let tried = 0
    fc.assert(fc.property(messages.chain(({ page, message }) => spoilt(message).map((each) => ({ page, message: each }))), ({ page, message }) => {
      for (const each of heard(page, message)) {
        if (page === 'grid' && (each as FromWebview).type === 'gesture') {
          applyGesture(notebook, findings, (each as Extract<FromWebview, { type: 'gesture' }>).gesture)
          tried++
        }
      }
    }), { numRuns: 3000 })
    assert.ok(tried > 40, `${tried} were gestures all the same`)
  })
})
