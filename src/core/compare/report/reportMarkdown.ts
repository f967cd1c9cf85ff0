import type { Block } from './report'
import { markdownText } from './markdownText'

/** A report in Markdown as forges read it, to be pasted under a pull request. Ends in a line feed. */
export function reportMarkdown(blocks: readonly Block[]): string {
  return `${blocks.map(printed).join('\n\n')}\n`
}

function printed(block: Block): string {
  switch (block.kind) {
    case 'heading': return `${block.level === 1 ? '###' : '####'} ${markdownText(block.text)}`
    case 'line': return block.label === undefined ? markdownText(block.text) : `**${markdownText(block.label)}:** ${markdownText(block.text)}`
    case 'list': return [`**${markdownText(block.label)}:**`, '', ...block.items.map((item) => `- ${markdownText(item)}`)].join('\n')
    case 'table': return [block.head, block.head.map(() => '---'), ...block.rows].map((row, at) => `| ${row.map((cell) => (at === 1 ? cell : markdownText(cell))).join(' | ')} |`).join('\n')
  }
}
