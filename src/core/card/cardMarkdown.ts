import type { Card } from './card'

/** A card as Markdown for the editor's hover. Everything that came from a file is escaped: it is text, never markup. */
export function cardMarkdown(card: Card): string {
  const head = [`**${escapeMarkdown(card.title)}**`, ...(card.subtitle ? [escapeMarkdown(card.subtitle)] : [])].join('  \n')
  const sections = card.sections.map(({ heading, lines }) => [...(heading ? [`*${heading}*`] : []), ...lines.map(escapeMarkdown)].join('  \n'))
  return [head, ...sections].join('\n\n')
}

/** Takes every meaning that Markdown or HTML could find in a text away from it. */
export function escapeMarkdown(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+\-.!|<>~$]/g, '\\$&').replace(/&/g, '&amp;').replace(/\s*\n\s*/g, ' ')
}
