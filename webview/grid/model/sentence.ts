/** What the host said within other words, as a sentence of its own. */
export function sentence(text: string): string {
  return `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`
}
