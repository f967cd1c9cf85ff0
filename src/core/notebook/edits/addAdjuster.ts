import type { TextChange } from '../../text'
import { say } from '../../words/say'
import type { Notebook } from '../notebook'
import { pairOf } from '../tree'
import { Refusal, setPath } from './setPath'
import { proseText } from './writeScalar'

/** What is known of an adjuster; what it counts in must be added where it is not, and the rest can be written beside it in the text. */
export interface NewAdjuster {
  id: string
  on: string
  legs: readonly string[]
  controls: string
  counts?: string
  /** In its own count, as typed; empty where nobody counted yet. */
  range?: string
}

/**
 * Adds an adjuster behind the last one.
 *
 * @throws Refusal where the name is taken or could not be written, or the range is no number above zero
 */
export function addAdjuster({ text, root, adjusters }: Notebook, { id, on, legs, controls, counts, range = '' }: NewAdjuster): TextChange[] {
  const name = id.trim()
  if (!/^[a-z][a-z0-9_-]{0,60}$/i.test(name)) throw new Refusal(say('an adjuster’s name is made of letters, digits, _ and -, and begins with a letter'))
  if (adjusters.has(name) || pairOf(pairOf(root, 'adjusters')?.value, name)) throw new Refusal(say`‘${name}’ names another adjuster already`)
  if (range.trim() !== '' && !(Number(range) > 0)) throw new Refusal(say`the range must be a number above zero, not ‘${range}’`)
  if (!root) throw new Refusal(say('this file holds no notebook yet; begin one first'))
  const word = (value: string) => proseText(value, { flow: true, indent: '', lineEnd: '\n' })
  const facts = [
    `on: ${word(on)}`,
    ...(legs.length > 0 ? [`legs: [${legs.map(word).join(', ')}]`] : []),
    `controls: ${word(controls)}`,
    ...(counts === undefined ? [] : [`counts: ${word(counts)}`]),
    ...(range.trim() === '' ? [] : [`range: ${Number(range)}`]),
  ]
  return setPath(text, root, ['adjusters', name], '', () => `{${facts.join(', ')}}`)
}
