import { mergeNotebooks, type Merged } from '../../../src/core/merge/mergeNotebooks'

/** Merges with the marks git uses. */
export function merge(base: string, ours: string, theirs: string): Merged {
  return mergeNotebooks({ base, ours, theirs }, { size: 7, ours: 'ours', theirs: 'theirs' })
}

/** What is left of the text with each conflict settled for one side. */
export function settledFor(side: 'ours' | 'theirs', text: string): string {
  return text.replace(/^<{7}[^\n]*\n([^]*?)^={7}\r?\n([^]*?)^>{7}[^\n]*\n/gm, side === 'ours' ? '$1' : '$2')
}
