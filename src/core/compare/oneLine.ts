/** Characters that print nothing and can move a cursor or turn the reading direction round. */
const unprinted = /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu

/** What a person wrote, on one line: lines are set apart by strokes, and nothing in it acts on what prints it. */
export function oneLine(text: string): string {
  return text.trim().replace(/[\s\u0085]+/g, (blanks) => (/[\r\n\u2028\u2029\u0085]/.test(blanks) ? ' / ' : ' ')).replace(unprinted, '').trim()
}
