import { applyGesture, type Answer } from '../../../src/core/grid/applyGesture'
import type { Gesture } from '../../../src/core/grid/gesture'
import type { Entry, Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { applyChanges, inOrder, type TextChange } from '../../../src/core/text'

/** The changes that take changes of a text back, as an editor's undo does. */
export function inverseOf(text: string, changes: readonly TextChange[]): TextChange[] {
  let shift = 0
  return inOrder(changes).map(({ start, end, text: fresh }) => {
    const back = { start: start + shift, end: start + shift + fresh.length, text: text.slice(start, end) }
    shift += fresh.length - (end - start)
    return back
  })
}

/** A gesture on a text: what it answers, and the text after it. */
export function make(text: string, gesture: Gesture): { answer: Answer; text: string } {
  const notebook = readNotebook(text)
  const answer = applyGesture(notebook, gesture.kind === 'applyFix' ? checkNotebook(notebook) : [], gesture)
  return { answer, text: answer.changes ? applyChanges(text, answer.changes) : text }
}

/** Where everything stands in an entry, and the entry it comes from. */
export const standing = ({ id, state, parent }: Entry) => ({
  id: id?.value, from: parent?.id?.value, state: Object.fromEntries([...state].map(([slot, { setting }]) => [slot, setting.node.text])),
})

export const standings = (notebook: Notebook) => notebook.entries.map(standing)
