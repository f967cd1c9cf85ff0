/** A text with its cursor, written as `|`. */
export function marked(source: string): { text: string; offset: number } {
  const offset = source.indexOf('|')
  if (offset < 0) throw new Error('a `|` must mark the cursor')
  return { text: source.slice(0, offset) + source.slice(offset + 1), offset }
}
