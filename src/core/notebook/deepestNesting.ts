import { code } from './plain/cursor'

/** What opens a level on the line of what holds it. */
const compact = new Set(['-', '?', ':'])

/**
 * How deeply a text seems to nest, told by its brackets and the way its lines are indented, without parsing it. At least as
 * deep as a parser would have to go; deeper where brackets stand in words.
 *
 * The parser goes down by calling itself. Where that uses up the stack, an exception can be caught; an expression that
 * the engine has to compile just there ends the whole process.
 */
export function deepestNesting(text: string): number {
  const indents: number[] = []
  let deepest = 0
  let brackets = 0
  let column = 0
  let leading = true
  for (let at = 0; at < text.length; at++, column++) {
    const char = text.charCodeAt(at)
    if (char === code.lineFeed || char === code.carriageReturn) {
      column = -1
      leading = true
    } else if (char === code.openList || char === code.openMap) brackets++
    else if ((char === code.closeList || char === code.closeMap) && brackets > 0) brackets--
    if (leading && char !== code.space && char !== code.tab && column >= 0) {
      while (indents.length > 0 && indents.at(-1)! >= column) indents.pop()
      indents.push(column)
      leading = compact.has(text[at]!) && ' \t\n\r'.includes(text[at + 1] ?? '\n')
    }
    if (brackets + indents.length > deepest) deepest = brackets + indents.length
  }
  return deepest
}
