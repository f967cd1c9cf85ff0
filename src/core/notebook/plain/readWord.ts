import type { ScalarNode } from '../tree'
import { code, isBlankOrEnd, isFlowMark, isLineEnd, type Cursor } from './cursor'
import { resolvePlain } from './resolvePlain'

/** What begins something else than a word. A dash may begin one. */
const noStart = new Set([...'?:,[]{}#&*!|>\'"%@`'].map((char) => char.charCodeAt(0)))

/** Reads the value or key at the cursor, and goes to its end. `undefined` where it is not of one line, or escapes something. */
export function readWord(cursor: Cursor, inFlow: boolean): ScalarNode | undefined {
  const first = cursor.code
  return first === code.quote || first === code.quotes ? readQuoted(cursor, first) : readBare(cursor, inFlow)
}

function readQuoted(cursor: Cursor, quote: number): ScalarNode | undefined {
  const { text, at: start } = cursor
  let isDoubled = false
  for (let at = start + 1; at < text.length; at++) {
    const char = text.charCodeAt(at)
    if (char === code.lineFeed || (quote === code.quotes && char === 0x5c)) return undefined
    if (char !== quote) continue
    if (quote === code.quote && text.charCodeAt(at + 1) === quote) {
      isDoubled = true
      at++
      continue
    }
    cursor.at = at + 1
    const inside = text.slice(start + 1, at)
    const value = isDoubled ? inside.replaceAll("''", "'") : inside
    return { kind: 'scalar', value, text: value, style: quote === code.quote ? 'single' : 'double', range: cursor.placed(start, at + 1) }
  }
  return undefined
}

function readBare(cursor: Cursor, inFlow: boolean): ScalarNode | undefined {
  const { text, at: start } = cursor
  if (!canStart(text, start)) return undefined
  let end = start
  for (let at = start; ; at++) {
    const char = text.charCodeAt(at)
    if (isLineEnd(char) || (inFlow && isFlowMark(char))) break
    const next = text.charCodeAt(at + 1)
    if (char === code.space) {
      if (next === code.hash) break
      continue
    }
    if (char === code.colon && isBlankOrEnd(next)) break
    if (char === code.colon && inFlow && isFlowMark(next)) return undefined
    end = at + 1
  }
  cursor.at = end
  const word = text.slice(start, end)
  return { kind: 'scalar', value: resolvePlain(word), text: word, style: 'plain', range: cursor.placed(start, end) }
}

function canStart(text: string, at: number): boolean {
  const first = text.charCodeAt(at)
  if (first !== code.dash) return !noStart.has(first) && !isBlankOrEnd(first)
  const next = text.charCodeAt(at + 1)
  return !isBlankOrEnd(next) && !isFlowMark(next)
}
