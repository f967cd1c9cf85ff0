import type { Finding } from '../core/finding'
import { lineOf } from '../core/text'

/** What a YAML extension says as well, by our schema and by YAML itself; every other finding is ours alone. */
const shared = new Set(['wrong-shape', 'yaml-syntax'])

/** Whether someone else's problems may be the same as ours: those of the common YAML extension, by the source they name. */
export function speaksOfShape(source: string | undefined): boolean {
  return source !== undefined && /^yaml($|-schema)/i.test(source)
}

/**
 * The findings without those that a YAML extension has told on the same line, so that nothing is underlined twice. Two
 * say different things of one line only where both are about its shape, and it is mended one by one anyway.
 *
 * @param starts where the lines of the text begin
 * @param told the lines, from 0, on which that extension's problems begin
 */
export function withoutTold(findings: readonly Finding[], starts: readonly number[], told: ReadonlySet<number>): Finding[] {
  return findings.filter(({ code, range }) => !shared.has(code) || !told.has(lineOf(starts, range.start)))
}
