import { flowPlainEnd, isBlank, isComment, isFlowColon, isQuote, keyAt, quoteEnd, skipSpaces } from './scalars'

/** The keys of a map in block style from the line below `from` on, by the column they stand in. */
export function keysInBlock(text: string, column: number, from: number): string[] {
  const keys: string[] = []
  for (let at = nextLine(text, from); at < text.length; at = nextLine(text, at)) {
    const newline = text.indexOf('\n', at)
    const stop = newline < 0 ? text.length : newline
    const begin = skipSpaces(text, at, stop)
    if (begin === stop || text[begin] === '\r' || text[begin] === '#') continue
    const isItem = text[begin] === '-' && isBlank(text[begin + 1])
    if (begin - at < column || (isItem && begin - at === column && column > 0)) break
    const key = begin - at === column && !isItem ? keyAt(text, begin, stop) : undefined
    if (key) keys.push(key.key)
  }
  return keys
}

function nextLine(text: string, from: number): number {
  const newline = text.indexOf('\n', from)
  return newline < 0 ? text.length : newline + 1
}

/** The keys of a map in braces from `from` to its closing brace, or to a line that cannot belong to it. */
export function keysInFlow(text: string, column: number, from: number): string[] {
  const keys: string[] = []
  let depth = 0
  for (let at = from; at < text.length;) {
    const character = text[at]!
    if (character === '\n' && skipSpaces(text, at + 1, text.length) - at - 1 <= column) break
    if (isBlank(character)) at++
    else if (isComment(text, at)) at = Math.max(at + 1, nextLine(text, at) - 1)
    else if ('{['.includes(character)) [depth, at] = [depth + 1, at + 1]
    else if ('}]'.includes(character)) {
      if (depth-- === 0) break
      at++
    } else if (character === ',' || isFlowColon(text, at)) at++
    else {
      const end = isQuote(character) ? quoteEnd(text, at, text.length) ?? text.length : flowPlainEnd(text, at, text.length)
      const behind = skipSpaces(text, end, text.length)
      if (depth === 0 && isFlowColon(text, behind)) keys.push(text.slice(at, end).trim().replace(/^(["'])(.*)\1$/, '$2'))
      at = end
    }
  }
  return keys
}
