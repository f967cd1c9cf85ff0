import { oneLine } from '../oneLine'
import type { Block } from './report'

/** A report for a terminal. What people wrote stands on one line and moves no cursor. Ends in a line feed. */
export function reportText(blocks: readonly Block[]): string {
  const parts = blocks.map(printed)
  return `${parts.map((part, at) => (at > 0 && isApart(blocks[at - 1]!, blocks[at]!) ? `\n${part}` : part)).join('\n')}\n`
}

/** Lines of one kind stand together. */
function isApart(before: Block, block: Block): boolean {
  return !(block.kind === 'line' && (before.kind === 'line' || before.kind === 'heading'))
}

function printed(block: Block): string {
  switch (block.kind) {
    case 'heading': return block.level === 1 ? `${oneLine(block.text)}\n${'='.repeat(Math.min(79, oneLine(block.text).length))}` : oneLine(block.text)
    case 'line': return block.label === undefined ? oneLine(block.text) : `${block.label}: ${oneLine(block.text)}`
    case 'list': return [`${block.label}:`, ...block.items.map((item) => `  - ${oneLine(item)}`)].join('\n')
    case 'table': return table([block.head, ...block.rows].map((row) => row.map(oneLine)))
  }
}

/** Columns wide enough for most; what is longer than a column may be pushes the rest of its own line. */
function table(rows: readonly (readonly string[])[]): string {
  const widest = 44
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length).filter((length) => length <= widest), 0))
  return rows.map((row) => `  ${row.map((cell, column) => (column === row.length - 1 ? cell : cell.padEnd(widths[column]!))).join('  ').trimEnd()}`).join('\n')
}
