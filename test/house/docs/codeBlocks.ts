/** A fenced block of a Markdown text: what stands behind the fence, and what stands in it. */
export interface CodeBlock {
  info: string
  text: string
  /** The line of the fence, from 1. */
  line: number
}

/** The fenced blocks of a Markdown text, in order. */
export function codeBlocks(markdown: string): CodeBlock[] {
  const blocks: CodeBlock[] = []
  let open: CodeBlock | undefined
  for (const [index, line] of markdown.split('\n').entries()) {
    const fence = /^```(.*)$/.exec(line)
    if (!open && fence) open = { info: fence[1]!.trim(), text: '', line: index + 1 }
    else if (open && line === '```') {
      blocks.push(open)
      open = undefined
    } else if (open) open.text += `${line}\n`
  }
  return blocks
}
