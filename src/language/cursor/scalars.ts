/** The pieces of a line of YAML, read forgivingly: the line may be half typed. All offsets count in the whole text. */

/** Behind the quote that closes the one at `at`; `undefined` where it is not closed before `stop`. */
export function quoteEnd(text: string, at: number, stop: number): number | undefined {
  return closingQuote(text, text[at]!, at + 1, stop)
}

/** Behind the closing quote of a text that is open already at `from`. */
export function closingQuote(text: string, quote: string, from: number, stop: number): number | undefined {
  for (let at = from; at < stop; at++) {
    if (quote === '"' && text[at] === '\\') at++
    else if (text[at] !== quote) continue
    else if (quote === "'" && text[at + 1] === "'" && at + 1 < stop) at++
    else return at + 1
  }
  return undefined
}

export function isQuote(character: string | undefined): boolean {
  return character === '"' || character === "'"
}

/** True at the end of a line or of the text, and on a blank. */
export function isBlank(character: string | undefined): boolean {
  return character === undefined || character === ' ' || character === '\t' || character === '\r' || character === '\n'
}

/** A key that begins at `at` in block style, with the offset behind its colon. */
export function keyAt(text: string, at: number, stop: number): { key: string; end: number } | undefined {
  if (isQuote(text[at])) {
    const end = quoteEnd(text, at, stop)
    if (end === undefined) return undefined
    const colon = skipSpaces(text, end, stop)
    return colon < stop && isColon(text, colon) ? { key: text.slice(at + 1, end - 1), end: colon + 1 } : undefined
  }
  for (let colon = text.indexOf(':', at); colon >= 0 && colon < stop; colon = text.indexOf(':', colon + 1)) {
    if (isColon(text, colon)) return hasComment(text, at, colon) ? undefined : { key: text.slice(at, colon).trimEnd(), end: colon + 1 }
  }
  return undefined
}

/** Whether a comment begins in a stretch of a line without quotes. */
export function hasComment(text: string, from: number, stop: number): boolean {
  for (let at = text.indexOf('#', from); at >= 0 && at < stop; at = text.indexOf('#', at + 1)) if (isComment(text, at)) return true
  return false
}

/** A colon that ends a key in block style. */
export function isColon(text: string, at: number): boolean {
  return text[at] === ':' && isBlank(text[at + 1])
}

/** A colon that ends a key inside of brackets. */
export function isFlowColon(text: string, at: number): boolean {
  return text[at] === ':' && (isBlank(text[at + 1]) || ',[]{}'.includes(text[at + 1]!))
}

/** A `#` that begins a comment. */
export function isComment(text: string, at: number): boolean {
  return text[at] === '#' && (at === 0 || isBlank(text[at - 1]))
}

/** Where a plain text inside of brackets ends. */
export function flowPlainEnd(text: string, from: number, stop: number): number {
  let at = from
  while (at < stop && !',[]{}'.includes(text[at]!) && !isFlowColon(text, at) && !isComment(text, at)) at++
  return at
}

export function skipSpaces(text: string, from: number, stop: number): number {
  let at = from
  while (at < stop && (text[at] === ' ' || text[at] === '\t')) at++
  return at
}
