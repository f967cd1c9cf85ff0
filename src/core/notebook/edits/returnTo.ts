import type { TextChange } from '../../text'
import { say } from '../../words/say'
import type { Entry, Notebook } from '../notebook'
import { addEntry } from './entries'
import { Refusal } from './refusal'

/** What a way back is written with. */
export interface Return {
  id: string
  date: string
  /** Why one goes back: weeks later it is what tells whether that was right. */
  reason: string
}

/**
 * Adds an entry at the end that comes from an earlier one, so that everything stands as it did there again.
 *
 * @throws Refusal where that entry cannot be named, the machine stands there already, or no reason is given
 */
export function returnTo(notebook: Notebook, entry: Entry, { id, date, reason }: Return): TextChange[] {
  if (entry === notebook.entries.at(-1)) throw new Refusal(say`‘${entry.key}’ is the last entry: the machine stands as it says already`)
  const name = entry.id?.value
  if (name === undefined) throw new Refusal(say('only an entry with an id can be gone back to; give it one first'))
  if (notebook.entries.some((other) => other !== entry && other.id?.value === name)) throw new Refusal(say`‘${name}’ names more than one entry; give this one an id of its own first`)
  if (reason.trim() === '') throw new Refusal(say('going back needs a reason, so that the next reader can judge it'))
  return addEntry(notebook, { id, date, from: name, reason })
}
