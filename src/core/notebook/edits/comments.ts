import { Lexer } from 'yaml'

/** Marks the lexer puts between the pieces of the text; after the last one comes a scalar's content, whatever it begins with. */
const marks = ['\x02', '\x18', '\x1f']

/** The comments in a stretch of a text that parses, each from its `#` to the end of its line. */
export function commentsIn(text: string, start: number, end: number): string[] {
  const found: string[] = []
  let at = 0
  let isContent = false
  for (const token of new Lexer().lex(text)) {
    if (at >= end) break
    if (!marks.includes(token)) {
      if (token.startsWith('#') && !isContent && at >= start) found.push(token.trimEnd())
      at += token.length
    }
    isContent = token === '\x1f'
  }
  return found
}
