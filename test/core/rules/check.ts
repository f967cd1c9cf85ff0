import type { Finding } from '../../../src/core/finding'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook, type Severities } from '../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../src/core/text'

/** Takes the indent of the first line off all lines, so that notebooks can stand indented in a test. */
export function source(parts: TemplateStringsArray): string {
  const lines = parts[0]!.replace(/^\n/, '').trimEnd().split('\n')
  const indent = /^ */.exec(lines[0]!)![0].length
  return `${lines.map((line) => line.slice(indent)).join('\n')}\n`
}

export function findingsOf(text: string, severities?: Severities): Finding[] {
  return checkNotebook(readNotebook(text), severities)
}

/** The codes of the findings, in order. */
export function codesOf(text: string, severities?: Severities): string[] {
  return findingsOf(text, severities).map(({ code }) => code)
}

/** The messages of one code's findings. */
export function messagesOf(code: string, text: string): string[] {
  return findingsOf(text).filter((finding) => finding.code === code).map(({ message }) => message)
}

/** The text after the fix at `at` of the first finding of this code. */
export function fixedBy(code: string, text: string, at = 0): string {
  const fix = findingsOf(text).find((finding) => finding.code === code)?.fixes?.[at]
  if (!fix) throw new Error(`${code} offers no fix ${at}`)
  return applyChanges(text, fix.changes)
}
