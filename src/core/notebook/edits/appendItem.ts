import { lineEndOf, type TextChange } from '../../text'
import type { Notebook } from '../notebook'
import { pairOf, type ListNode } from '../tree'
import { behindColon, behindLine, contentEnd, dashBefore, indentOf } from './layout'
import { Refusal } from './setPath'
import type { Context } from './writeScalar'

/** The `key: value` texts of a new item, for the place where it is written. */
export type ItemLines = (context: Context) => string[]

/**
 * Adds a group of `key: value` lines behind the last item of a list at the top of the notebook, written as its
 * neighbours are; the list is made where it is missing.
 *
 * @throws Refusal where something else than a list stands there
 */
export function appendItem({ text, root }: Notebook, key: string, lines: ItemLines): TextChange[] {
  const eol = lineEndOf(text)
  const pair = pairOf(root, key)
  const list = pair?.value
  if (!pair || !list) {
    const start = text === '' || text.endsWith('\n') ? '' : eol
    return [{ start: text.length, end: text.length, text: `${start}${key}:${eol}${block(lines, '  ', eol)}${eol}` }]
  }
  if (list.alias) throw new Refusal(`\`${key}\` is shared with another place; change it in the text`)
  if (list.kind === 'list' && list.items.length > 0) return [behindLast(text, list, lines, eol)]
  const inside = `${indentOf(text, pair.key.range.start)}  `
  if (list.kind === 'list') return [{ ...list.range, text: eol + block(lines, inside, eol) }]
  if (list.kind !== 'scalar' || list.style !== 'empty') throw new Refusal(`\`${key}\` must be a list; mend it in the text first`)
  const at = behindLine(text, behindColon(text, pair.key.range.end) ?? pair.key.range.end)
  return [{ start: at, end: at, text: eol + block(lines, inside, eol) }]
}

function behindLast(text: string, list: ListNode, lines: ItemLines, eol: '\n' | '\r\n'): TextChange {
  const last = list.items.at(-1)!
  if (list.flow) {
    const at = last.range.end
    return { start: at, end: at, text: `, {${lines({ flow: true, indent: '', lineEnd: eol }).join(', ')}}` }
  }
  const at = behindLine(text, Math.max(contentEnd(last), last.range.end))
  return { start: at, end: at, text: eol + block(lines, indentOf(text, dashBefore(text, list.items[0]!.range.start)), eol) }
}

function block(lines: ItemLines, indent: string, eol: '\n' | '\r\n'): string {
  return lines({ flow: false, indent: `${indent}  `, lineEnd: eol })
    .map((line, at) => `${indent}${at === 0 ? '- ' : '  '}${line}`)
    .join(eol)
}
