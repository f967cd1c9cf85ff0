import { compareStates } from '../../../src/core/compare/compareStates'
import type { StateRef } from '../../../src/core/compare/comparison'
import { stepPair } from '../../../src/core/compare/stepPair'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import type { CompareView, FromCompare, StateSource } from '../../../src/protocol'
import type { SavedState } from '../../../webview/compare/model/savedState'
import { Session } from '../../../webview/compare/model/session'

/** A notebook in which everything occurs that a comparison can tell. */
export const tern = `format: 1
machine:
  name: Tern 650
  front: {travel: 120, spring_rate: 9.5}
  rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45}
rider: {kitted_mass: 84}
adjusters:
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 15, mm_per_turn: 1}
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  fork_height: {on: fork, legs: [left, right], controls: fork_height, counts: mm}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_preload: 0 in, fork_rebound: {left: 3 out, right: 6 out}, fork_height: 5, shock_rebound: 7 out}
    sag: {front: {extended: 148, bike: [127, 120.5], rider: [109.5, 102.5]}}
  - id: run-1
    date: 2026-04-18
    settings: {fork_rebound: 3 out}
    reason: right leg brought to the left
    ride: {laps: 6, felt: steadier}
    verdict: keep
  - id: run-2
    date: 2026-04-19
    settings: {fork_preload: 6 in}
    reason: rider sag was too much
    remarks: {fork_preload: counted twice}
  - id: run-3
    date: 2026-04-19
    from: run-1
    settings: {shock_rebound: 9 out, fork_height: 7}
    sag: {front: {extended: 148, bike: [133.5, 126.5], rider: [115.5, 108.5]}}
`

/** A state of a text, as the host reads it. */
export function stateIn(text: string, entry?: string, file = 'tern.setup.yaml'): StateRef {
  const notebook = readNotebook(text)
  const found = notebook.entries.find(({ key }) => key === entry)
  return { notebook, file, findings: checkNotebook(notebook), ...(found ? { entry: found } : {}) }
}

/** What the host tells of two states. */
export function viewOf(left: StateRef, right: StateRef, more: { left?: Partial<StateSource>; right?: Partial<StateSource>; onlyDifferences?: boolean } = {}): CompareView {
  const [older, newer] = [stepPair(left, right, false), stepPair(left, right, true)]
  return {
    comparison: compareStates(left, right), onlyDifferences: more.onlyDifferences === true, turnList: true,
    sources: { left: { uri: `file:///${left.file}`, ...more.left }, right: { uri: `file:///${right.file}`, ...more.right } },
    ...(older ? { older: `${older.left} to ${older.right}` } : {}), ...(newer ? { newer: `${newer.left} to ${newer.right}` } : {}),
  }
}

/** Two entries of one text. */
export function pairOf(left: string, right: string, text = tern): CompareView {
  const state = stateIn(text, left)
  return viewOf(state, { ...state, entry: state.notebook.entries.find(({ key }) => key === right)! })
}

/** A session with everything that leaves it written down. */
export function openSession(view: CompareView, saved: SavedState = { scrollTop: 0 }) {
  const sent: FromCompare[] = []
  const said: string[] = []
  const session = new Session({ send: (message) => void sent.push(message), announce: (text) => void said.push(text), changed: () => undefined }, saved)
  const show = (next: CompareView) => session.receive({ type: 'comparisonShown', view: next })
  show(view)
  return { session, sent, said, show }
}
