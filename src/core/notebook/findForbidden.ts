import type { Finding } from '../finding'
import { say } from '../words/say'

/** Control characters, halves of a pair, and a carriage return that ends a line by itself. */
const forbidden = /[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]|\r(?!\n)/

/**
 * The first character that YAML forbids anywhere in a text. The parser lets them pass, but other programs stop at
 * them, and an editor that saves half a pair writes something else.
 */
export function findForbidden(text: string): Finding[] {
  const match = forbidden.exec(text)
  if (!match) return []
  const code = match[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')
  const message = match[0] === '\r' ? say('this line ends with a carriage return alone, which programs read differently') : say`a character that no YAML file may hold stands here (U+${code})`
  return [{ code: 'yaml-syntax', severity: 'error', message, range: { start: match.index, end: match.index + 1 } }]
}
