import { lineEnd, lineStart, type TextChange } from '../../text'
import { say } from '../../words/say'
import type { ListNode } from '../tree'
import { contentEnd, deeperEnd, indentOf, isFirstOnLine, keepsBlankLines, skipBlank } from './layout'
import { Refusal } from './refusal'
import { eraseWholeLines } from './removePair'

/** The offset of the dash that begins an item of a block list. @throws Refusal where it does not begin its line */
export function dashOf(text: string, list: ListNode, index: number): number {
  const at = index === 0 ? list.range.start : skipBlank(text, contentEnd(list.items[index - 1]!))
  if (text[at] !== '-' || !isFirstOnLine(text, at)) throw new Refusal(say('this list is written in a way that cannot be continued; change it in the text'))
  return at
}

/** Erases an item of a block list, comments in it included, and one of the two blank lines that would meet. */
export function eraseItem(text: string, list: ListNode, index: number): TextChange {
  const before = list.items[index - 1]
  if (before && keepsBlankLines(text, before)) throw new Refusal(say('the text before this owns the blank lines below it; change it in the text'))
  const dash = dashOf(text, list, index)
  const erased = eraseWholeLines(text, dash, deeperEnd(text, contentEnd(list.items[index]!), indentOf(text, dash).length))
  const isBlank = (at: number) => text.slice(lineStart(text, at), lineEnd(text, at)).trim() === ''
  const meet = erased.start > 0 && erased.end < text.length && isBlank(erased.start - 1) && isBlank(erased.end)
  return meet ? { ...erased, end: text.indexOf('\n', erased.end) + 1 || text.length } : erased
}
