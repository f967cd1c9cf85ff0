import { createRequire } from 'node:module'

/** What markdown-it gives, which knows nothing of us and brings no types. */
export interface Token {
  type: string
  content: string
  children: Token[] | null
  attrGet: (name: string) => string | null
}

export const MarkdownIt = createRequire(import.meta.url)('markdown-it') as new (options: object) => { parse: (text: string, env: object) => Token[] }
