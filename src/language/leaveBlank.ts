import { inOrder, type TextChange } from '../core/text'

/**
 * Stands for what a person is to write while the changes around it are made. It is a character that nobody types, and
 * that YAML takes for a letter.
 */
export const blank = '\ue000'

/** Changes that leave something to be written, and where, as an offset of the text after them. */
export interface Filled {
  changes: TextChange[]
  cursor?: number
}

/**
 * Takes the blank out of changes that were made with it. Inside of brackets it gives way to a pair of quotes, for a
 * comma in what is written there would cut it.
 */
export function leaveBlank(changes: readonly TextChange[], quoted: boolean): Filled {
  let moved = 0
  let cursor: number | undefined
  const made = inOrder(changes).map((change) => {
    const at = change.text.lastIndexOf(blank)
    const isQuoted = /["']/.test(change.text[at - 1] ?? '')
    const room = quoted && !isQuoted ? '""' : ''
    const written = at < 0 ? change.text : change.text.slice(0, at) + room + change.text.slice(at + blank.length)
    if (at >= 0) cursor = change.start + moved + at + (room === '' ? 0 : 1)
    moved += written.length - (change.end - change.start)
    return { ...change, text: written }
  })
  return cursor === undefined ? { changes: made } : { changes: made, cursor }
}
