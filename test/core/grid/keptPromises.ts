import assert from 'node:assert/strict'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import type { Gesture } from '../../../src/core/grid/gesture'
import { composeChanges } from '../../../src/core/notebook/edits/composeChanges'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { applyChanges, inOrder, type TextChange } from '../../../src/core/text'
import { expectedFacts } from './expectedFacts'
import { commentsOf, plainNotebook } from './plainFacts'

/** Makes a gesture on a text and checks everything an edit promises. Gives the new text, or why it was refused. */
export function keptPromises(text: string, gesture: Gesture): { text: string; refused?: undefined } | { refused: string } {
  const notebook = readOnce(text)
  const answer = applyGesture(notebook, [], gesture)
  if (answer.refused !== undefined) return { refused: answer.refused }
  const { changes } = answer
  const after = applyChanges(text, changes)
  try {
    checkChanges(text, changes)
    const before = plainOnce(text)
    const now = plainOnce(after)
    assert.deepEqual(now.problems, [], 'the text parses')
    assert.equal(readOnce(after).broken, undefined)
    const expected = expectedFacts(before, notebook, gesture, answer.reveal)
    assert.deepEqual(sameEnds(now, text), sameEnds(expected, text), 'the notebook says what was asked for and nothing else is different')
    checkPlaces(text, changes, gesture)
    if (gesture.kind !== 'removeEntry') assert.deepEqual(commentsOnce(after), commentsOnce(text), 'comments')
    assert.equal(after.startsWith('\ufeff'), text.startsWith('\ufeff'), 'byte order mark')
    if (text.includes('\n') && !loneLineFeed.test(text)) assert.doesNotMatch(after, loneLineFeed, 'line ends')
    checkOneByOne(text, gesture, after)
  } catch (error) {
    if (error instanceof Error) error.message = `${error.message}\n--- before\n${visible(text)}\n--- ${JSON.stringify(gesture)}\n--- after\n${visible(after)}`
    throw error
  }
  return { text: after }
}

/** Gestures follow one another on the same text, which need not be read afresh for every question. */
function remembering<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>()
  return (text) => {
    const value = known.get(text) ?? read(text)
    if (known.size > 8) known.clear()
    known.set(text, value)
    return value
  }
}

const readOnce = remembering(readNotebook)
const plainOnce = remembering(plainNotebook)
const commentsOnce = remembering(commentsOf)
const loneLineFeed = /(?<!\r)\n/

function visible(text: string): string {
  return text.replaceAll('\r', '␍').replaceAll('\ufeff', '␛').replaceAll(/ $/gm, '·')
}

/** A block at the very end of a text without a final line end gains one when something follows it. */
function sameEnds<T>(value: T, text: string): T {
  return text.endsWith('\n') ? value : JSON.parse(JSON.stringify(value).replaceAll(/(?:\\n)+"/g, '"')) as T
}

/** In the text, in order, apart from each other, never for nothing, and taken back by their inverse. */
function checkChanges(text: string, changes: readonly TextChange[]): void {
  const ordered = inOrder(changes)
  ordered.forEach(({ start, end, text: fresh }, at) => {
    assert.ok(start >= 0 && start <= end && end <= text.length, 'within the text')
    assert.ok(start < end || fresh !== '', 'no change for nothing')
    const next = ordered[at + 1]
    assert.ok(!next || (next.start >= end && next.start > start), 'apart from each other')
  })
  let shift = 0
  const inverse = ordered.map(({ start, end, text: fresh }) => {
    const back = { start: start + shift, end: start + shift + fresh.length, text: text.slice(start, end) }
    shift += fresh.length - (end - start)
    return back
  })
  assert.equal(applyChanges(applyChanges(text, changes), inverse), text, 'undone')
}

/** Every change lies in the lines of an entry it is about, or where the list ends. */
function checkPlaces(text: string, changes: readonly TextChange[], gesture: Gesture): void {
  if (gesture.kind === 'addEntry' || gesture.kind === 'returnTo' || gesture.kind === 'applyFix' || gesture.kind === 'acceptFinding' || gesture.kind === 'begin' || gesture.kind === 'addAdjuster') return
  // What changes the order of the file has its own promises.
  if (gesture.kind === 'insertEntry' || gesture.kind === 'duplicateEntry' || gesture.kind === 'moveEntry' || gesture.kind === 'removeAdjuster' || gesture.kind === 'moveAdjuster' || gesture.kind === 'duplicateAdjuster') return
  if (gesture.kind === 'setHeader' && gesture.field === 'id') return
  const columns = new Set('cells' in gesture ? gesture.cells.map(({ column }) => column) : [gesture.column])
  const { entries } = readOnce(text)
  // The list's last entry gives way to `[]`, behind its key.
  if (gesture.kind === 'removeEntry' && entries.length === 1) return
  const places = entries.filter(({ key }) => columns.has(key)).map((entry) => {
    return { start: entries[entry.index - 1]?.node.range.end ?? 0, end: entries[entry.index + 1]?.node.range.start ?? text.length }
  })
  for (const { start, end } of changes) assert.ok(places.some((place) => place.start <= start && end <= place.end), `${start} to ${end} is in the entry`)
}

/** Several cells at once come to the same as one after the other. */
function checkOneByOne(text: string, gesture: Gesture, after: string): void {
  if (gesture.kind !== 'setCells' && gesture.kind !== 'clearCells') return
  let now = text
  const steps: TextChange[][] = []
  for (const cell of gesture.cells) {
    const answer = applyGesture(readOnce(now), [], gesture.kind === 'setCells' ? { kind: 'setCell', ...cell as { column: string; row: string; text: string } } : { kind: 'clearCells', cells: [cell] })
    if (answer.changes === undefined) throw new Error(`alone, it is refused: ${answer.refused}`)
    steps.push(answer.changes)
    now = applyChanges(now, answer.changes)
  }
  assert.equal(after, now, 'one by one')
  assert.equal(applyChanges(text, composeChanges(text.length, steps)), now, 'composed')
}
