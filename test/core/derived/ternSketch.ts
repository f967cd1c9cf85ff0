import { readNotebook } from '../../../src/core/notebook/readNotebook'
import type { Entry, Notebook } from '../../../src/core/notebook/notebook'

/** The notebook of the format's first sketch: an invented track machine, two entries. */
export const ternSketch = `format: 1
machine:
  name: Tern 650
  use: track
  front: {travel: 120, spring_rate: 9.5}
  rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
rider: {kitted_mass: 84}
adjusters:
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 12, mm_per_turn: 1, place: fork caps, tool: 19 mm hex, faces: up}
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10, place: fork caps, faces: up}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22, place: shock foot, faces: down, worked_from: above}
  fork_height: {on: fork, legs: [left, right], controls: fork_height, counts: mm}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings:
      fork_preload: 0 in
      fork_rebound: {left: 3 out, right: 6 out}
      shock_rebound: 7 out
      fork_height: 5
    sag:
      front: {extended: 152, bike: [128, 122], rider: [118, 110]}
  - id: run-1
    date: 2026-04-18
    from: as-found
    settings: {fork_rebound: 3 out}
    reason: right leg brought to the left
    ride: {laps: 6, front_travel_used: 104}
    verdict: keep
`

export interface Read {
  notebook: Notebook
  entry: Entry
}

/** A text as a notebook, and its entry of that key, or the last one. */
export function readEntry(text: string, key?: string): Read {
  const notebook = readNotebook(text)
  const entry = key === undefined ? notebook.entries.at(-1) : notebook.entries.find((each) => each.key === key)
  if (!entry) throw new Error(`no entry ${key ?? ''}`)
  return { notebook, entry }
}

/** The sketch with other words in place of some of its own. */
export function sketchWith(...changes: [from: string, to: string][]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the sketch has no ‘${from}’`)
    return text.replace(from, to)
  }, ternSketch)
}
