import type { Range } from '../../text'

/** The characters that mean something to a reader, by their codes. */
export const code = {
  tab: 0x09, lineFeed: 0x0a, carriageReturn: 0x0d, space: 0x20, hash: 0x23, comma: 0x2c, dash: 0x2d, colon: 0x3a,
  quote: 0x27, quotes: 0x22, openList: 0x5b, closeList: 0x5d, openMap: 0x7b, closeMap: 0x7d,
} as const

/** Where the plain reader stands. A carriage return stands only before a line feed: `readPlain` has seen to it. */
export class Cursor {
  at = 0
  /** How far right the word begins at which the reader stands; less than nothing at the end of the text. */
  column = 0
  /** How many groups the reader is in. */
  depth = 0

  /** The text may be a piece of a longer one, which begins so far into that. */
  constructor(readonly text: string, readonly base: number) {}

  /** The place in the longer text of what stands from here to there in this one. */
  placed(start: number, end: number): Range {
    return { start: start + this.base, end: end + this.base }
  }

  get code(): number {
    return this.text.charCodeAt(this.at)
  }

  skipSpaces(): void {
    while (this.text.charCodeAt(this.at) === code.space) this.at++
  }

  /** Whether this mark is one: nothing, a blank or the end of the line follows it. */
  isMark(mark: number): boolean {
    return this.code === mark && isBlankOrEnd(this.text.charCodeAt(this.at + 1))
  }

  /** Goes on to the first word of the next line that says something. False where the rest of this one does. */
  nextLine(): boolean {
    const from = this.at
    this.skipSpaces()
    const next = this.code
    const isOver = isLineEnd(next) || (next === code.hash && this.at > from)
    if (isOver) {
      this.#leaveLine()
      this.toFirstWord()
    }
    return isOver
  }

  /** From the start of a line on, over lines of blanks and comments. */
  toFirstWord(): void {
    for (;;) {
      const start = this.at
      this.skipSpaces()
      if (this.at >= this.text.length) this.column = -1
      else if (isLineEnd(this.code) || this.code === code.hash) {
        this.#leaveLine()
        continue
      } else this.column = this.at - start
      return
    }
  }

  #leaveLine(): void {
    const end = this.text.indexOf('\n', this.at)
    this.at = end < 0 ? this.text.length : end + 1
  }
}

/** Past the end of a text a code is not a number. */
export function isLineEnd(char: number): boolean {
  return char === code.lineFeed || char === code.carriageReturn || Number.isNaN(char)
}

export function isBlankOrEnd(char: number): boolean {
  return char === code.space || isLineEnd(char)
}

/** What ends a word between brackets. */
export function isFlowMark(char: number): boolean {
  return char === code.comma || char === code.openList || char === code.closeList || char === code.openMap || char === code.closeMap
}
