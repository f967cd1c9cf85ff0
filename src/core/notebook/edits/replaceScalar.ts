import { lineEnd, lineEndOf, type TextChange } from '../../text'
import type { ScalarNode } from '../tree'

/**
 * Puts a written value in the place of another. A block value has its header on the line of the key and its text below
 * it, with the comment on that line between them, so that comment stays where it is.
 */
export function replaceScalar(text: string, node: ScalarNode, written: string): TextChange[] {
  const isBlock = node.style === 'block' && !node.alias
  const header = isBlock ? /^[|>][-+\d]*/.exec(text.slice(node.range.start, node.range.start + 4))![0].length : 0
  const headEnd = isBlock ? node.range.start + header : node.range.end
  return putInLine(text, { start: node.range.start, end: headEnd, text: written }, isBlock ? lineEnd(text, node.range.end) : undefined)
}

/**
 * One change on a line whose text may run on below it: what follows its first line end goes behind the rest of the
 * line. `below` is the end of what stood there before.
 */
export function putInLine(text: string, { start, end, text: written }: TextChange, below?: number): TextChange[] {
  const eol = lineEndOf(text)
  const cut = written.indexOf(eol)
  const [head, tail] = cut < 0 ? [written, ''] : [written.slice(0, cut), written.slice(cut)]
  const stop = lineEnd(text, end)
  if (tail === '' && below === undefined) return [{ start, end, text: head }]
  if (text.slice(end, stop).trim() === '') return [{ start, end: Math.max(below ?? stop, stop), text: written }]
  return [{ start, end, text: head }, ...(tail !== '' || (below ?? stop) > stop ? [{ start: stop, end: Math.max(below ?? stop, stop), text: tail }] : [])]
}
