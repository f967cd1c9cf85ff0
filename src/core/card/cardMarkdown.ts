import type { Card } from './card'

/** A card as Markdown for the editor's hover, with the Markdown of a picture where it belongs. Everything that came from a file is escaped: it is text, never markup. */
export function cardMarkdown(card: Card, picture?: string): string {
  const head = [`**${escapeMarkdown(card.title)}**`, ...(card.subtitle ? [escapeMarkdown(card.subtitle)] : [])].join('  \n')
  const sections = card.sections.flatMap(({ heading, lines, drawn }) => [
    [...(heading ? [`*${heading}*`] : []), ...lines.map(escapeMarkdown)].join('  \n'),
    ...(drawn && picture ? [picture] : []),
  ])
  return [head, ...sections].join('\n\n')
}

/** Takes every meaning that Markdown or HTML could find in a text away from it; an address is no link, nor a name with `@`. */
export function escapeMarkdown(text: string): string {
  const oneLine = text.replace(/\s+/g, (blanks) => (/[\n\r\u2028\u2029]/.test(blanks) ? ' ' : blanks))
  return oneLine.replace(/[\\`*_{}[\]()#+\-.!|<>~$@]|:(?=\/)/g, '\\$&').replace(/&/g, '&amp;')
}
