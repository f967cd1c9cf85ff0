import { closingQuote, flowPlainEnd, hasComment, isBlank, isComment, isFlowColon, isQuote, keyAt, quoteEnd, skipSpaces } from './scalars'

/** A map or list that is open where the scan ends. */
export interface Frame {
  kind: 'map' | 'list'
  flow: boolean
  /** In block style the column of its keys or dashes; in flow style the column that its lines must be deeper than. */
  column: number
  /** A map's key whose value follows, or was written last. */
  key?: string
  /** A list's item. */
  index: number
  keys: Set<string>
  /** The key or item has a value, or the beginning of one. */
  filled: boolean
}

/**
 * Reads a text line by line up to a cursor and keeps what is open there. Unlike a parser it does not mind a text that
 * is half typed: a bracket or quote that is not closed counts only as long as the lines below are indented as its
 * content would be. It knows maps, lists, quotes, brackets and block texts; anchors, tags and aliases it passes over.
 */
export class Scan {
  readonly frames: Frame[] = []
  /** What the text ends in: the beginning of a line or item, a value behind its key, a place inside of brackets. */
  place: 'line' | 'value' | 'flow' | 'nothing' = 'line'
  /** The column at which that line or item begins. */
  column = 0
  /** The scalar that the text ends in, from its first character, the quote excluded. */
  token: { start: number; quote?: string } | undefined
  /** Lines deeper than this belong to a `|` or `>` text. */
  #textColumn: number | undefined
  #quote: { character: string; column: number } | undefined
  /** A list whose item the line before began. */
  #begun: Frame | undefined

  constructor(readonly text: string) {}

  get top(): Frame | undefined {
    return this.frames.at(-1)
  }

  /** Takes in a line, or the part of it before the cursor. */
  line(start: number, stop: number): void {
    this.#begin()
    let at = start
    while (at < stop && this.text[at] === ' ') at++
    const column = at - start
    this.column = column
    if (at === stop) this.#blankLine(column)
    else if (!this.#continues(start, column, stop) && this.text[at] !== '#') this.#structure(at, stop, column)
  }

  #begin(): void {
    this.token = undefined
    this.place = 'nothing'
    if (this.#begun) this.#begun.filled = true
    this.#begun = undefined
  }

  /** Blank lines change nothing: what was open may go on below them. */
  #blankLine(column: number): void {
    const isText = (this.#textColumn !== undefined && column > this.#textColumn) || (this.#quote !== undefined && column > this.#quote.column)
    if (!isText) this.place = this.top?.flow && column > this.top.column ? 'flow' : 'line'
  }

  /** Whether the line goes on with a text that was begun above it. */
  #continues(start: number, column: number, stop: number): boolean {
    if (this.#textColumn !== undefined && column > this.#textColumn) return true
    this.#textColumn = undefined
    const quote = this.#quote
    this.#quote = undefined
    if (!quote || column <= quote.column) return false
    const end = closingQuote(this.text, quote.character, start, stop)
    if (end === undefined) this.#quote = quote
    else if (this.top?.flow) this.#flow(end, stop, true)
    return true
  }

  #structure(at: number, stop: number, column: number): void {
    if (this.top?.flow && column > this.top.column) return this.#flow(at, stop, false)
    while (this.top?.flow) this.frames.pop()
    this.#block(at, stop, column)
  }

  #block(at: number, stop: number, column: number): void {
    const { text } = this
    if (text[at] === '-' && isBlank(text[at + 1])) return this.#item(at, stop, column)
    if (text[at] === '{' || text[at] === '[') {
      this.#popDeeper(column)
      const owner = this.top
      if (owner) owner.filled = true
      return this.#flow(at, stop, false, owner?.column ?? -1)
    }
    const key = keyAt(text, at, stop)
    if (!key) return this.#bare(at, stop, column)
    this.#openKey(column, key.key)
    this.#value(key.end, stop)
  }

  #item(dash: number, stop: number, column: number): void {
    this.#popDeeper(column)
    const list = this.top
    if (list?.kind === 'list' && list.column === column) {
      list.index++
      list.filled = false
    } else this.#push({ kind: 'list', flow: false, column })
    if (dash + 1 >= stop) return
    const next = skipSpaces(this.text, dash + 1, stop)
    this.column = column + next - dash
    if (next === stop) this.place = 'line'
    else if (!isComment(this.text, next)) this.#block(next, stop, this.column)
  }

  /** Half a key, or a scalar that stands on a line of its own. */
  #bare(at: number, stop: number, column: number): void {
    if (hasComment(this.text, at, stop)) return
    this.place = 'line'
    this.column = column
    this.token = isQuote(this.text[at]) ? { start: at + 1, quote: this.text[at]! } : { start: at }
    if (this.token.quote && quoteEnd(this.text, at, stop) !== undefined) this.place = 'nothing'
    const holder = this.frames.filter((frame) => frame.column < column).at(-1)
    if (holder?.kind === 'list') this.#begun = holder
  }

  #openKey(column: number, key: string): void {
    this.#popDeeper(column)
    if (this.top?.kind === 'list' && this.top.column === column) this.frames.pop()
    if (!(this.top?.kind === 'map' && this.top.column === column)) this.#push({ kind: 'map', flow: false, column })
    const map = this.top!
    map.key = key
    map.keys.add(key)
    map.filled = false
  }

  #value(from: number, stop: number): void {
    const { text } = this
    const map = this.top!
    const at = this.#skipMarks(from, stop)
    this.place = 'value'
    if (at === stop) return
    this.place = 'nothing'
    if (isComment(text, at)) return
    map.filled = true
    if (text[at] === '{' || text[at] === '[') return this.#flow(at, stop, false, map.column)
    if (text[at] === '|' || text[at] === '>') {
      this.#textColumn = map.column
      return
    }
    if (isQuote(text[at])) return this.#openQuote(at, stop, 'value', map.column)
    if (hasComment(text, at, stop)) return
    this.place = 'value'
    this.token = { start: at }
  }

  /** Over blanks, anchors and tags. */
  #skipMarks(from: number, stop: number): number {
    let at = skipSpaces(this.text, from, stop)
    while (at < stop && (this.text[at] === '&' || this.text[at] === '!')) {
      while (at < stop && !isBlank(this.text[at])) at++
      at = skipSpaces(this.text, at, stop)
    }
    return at
  }

  #openQuote(at: number, stop: number, place: 'value' | 'flow', column: number): void {
    if (quoteEnd(this.text, at, stop) !== undefined) return
    const character = this.text[at]!
    this.#quote = { character, column }
    this.token = { start: at + 1, quote: character }
    this.place = place
  }

  /** `closed` where a value ends at `from`, so that only a comma or bracket may follow. */
  #flow(from: number, stop: number, closed: boolean, owner = this.top?.column ?? -1): void {
    const { text } = this
    let at = from
    let ended = closed
    let scalar: string | undefined
    while (at < stop) {
      const character = text[at]!
      if (isBlank(character)) at++
      else if (isComment(text, at)) return
      else if (character === '{' || character === '[') {
        if (this.top) this.top.filled = true
        this.#push({ kind: character === '{' ? 'map' : 'list', flow: true, column: owner })
        ended = false
        at++
      } else if (character === '}' || character === ']') {
        this.frames.pop()
        if (!this.top?.flow) return
        ended = true
        at++
      } else if (character === ',') {
        this.#nextInFlow()
        ended = false
        at++
      } else if (isFlowColon(text, at)) {
        this.#keyInFlow(scalar)
        ended = false
        at++
      } else {
        const end = isQuote(character) ? quoteEnd(text, at, stop) : flowPlainEnd(text, at, stop)
        if (end === undefined) return this.#openQuote(at, stop, 'flow', owner)
        ended = isQuote(character)
        scalar = ended ? text.slice(at + 1, end - 1) : text.slice(at, end).trimEnd()
        if (!ended && end === stop) this.token = { start: at }
        at = end
      }
    }
    this.place = ended ? 'nothing' : 'flow'
  }

  #nextInFlow(): void {
    const frame = this.top!
    if (frame.kind === 'list') frame.index++
    else delete frame.key
    frame.filled = false
  }

  #keyInFlow(scalar: string | undefined): void {
    const map = this.top!
    if (map.kind !== 'map' || scalar === undefined) return
    map.key = scalar
    map.keys.add(scalar)
  }

  #popDeeper(column: number): void {
    while (this.top && this.top.column > column) this.frames.pop()
  }

  #push(frame: Pick<Frame, 'kind' | 'flow' | 'column'>): void {
    if (this.top) this.top.filled = true
    this.frames.push({ ...frame, index: 0, keys: new Set(), filled: false })
  }
}
