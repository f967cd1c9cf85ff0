import assert from 'node:assert/strict'
import type { Gesture } from '../../../src/core/grid/gesture'
import { keptPromises } from './keptPromises'

/** A notebook with a pair, a single adjuster and one in the right leg alone, before its list of entries. */
export const head = `format: 1
adjusters:
  fork: {on: fork, legs: [left, right], controls: rebound, counts: clicks}
  shock: {on: shock, controls: rebound, counts: clicks}
  foot: {on: fork, legs: [right], controls: compression, counts: clicks}
`

/** The text after a gesture, with everything checked that an edit promises; the same with CRLF, which must come to the same. */
export function edited(text: string, gesture: Gesture): string {
  const outcome = keptPromises(text, gesture)
  assert.equal(outcome.refused, undefined)
  const after = (outcome as { text: string }).text
  if (!text.includes('\n')) return after
  const crlf = keptPromises(text.replaceAll('\n', '\r\n'), gesture)
  assert.equal((crlf as { text: string }).text, after.replaceAll('\n', '\r\n'))
  return after
}

/** Why a gesture is refused. */
export function refusal(text: string, gesture: Gesture): string {
  const outcome = keptPromises(text, gesture)
  if (outcome.refused === undefined) assert.fail(`not refused:\n${outcome.text}`)
  return outcome.refused
}

/** A gesture on one entry of a notebook, given and shown without what stands before it. */
export function inEntry(entry: string, gesture: Gesture): string {
  const before = `${head}entries:\n`
  const after = edited(before + entry, gesture)
  assert.ok(after.startsWith(before))
  return after.slice(before.length)
}

/** Sets or, with an empty text, clears a cell of the entry `a`. */
export function set(row: string, text: string): Gesture {
  return { kind: 'setCell', column: 'a', row, text }
}

/** One case of a table: what it shows, the entry before, the gesture, the entry after. */
export type Case = [title: string, before: string, gesture: Gesture, after: string]

export function eachCase(cases: readonly Case[]): void {
  for (const [title, before, gesture, after] of cases) it(title, () => assert.equal(inEntry(before, gesture), after))
}
