import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Finding } from '../../../src/core/finding'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { lineAndColumn, type TextChange } from '../../../src/core/text'
import { withLogsFrom } from '../withLogsFrom'

const folder = 'test/fixtures/rules'

export const fixturesToldPath = 'test/fixtures/rules.told.txt'

/**
 * Everything that the rules tell of their fixtures, to be looked at where it changes: place in the text and in the grid,
 * loudness, words, and what each fix would write.
 */
export function fixturesTold(): string {
  return readdirSync(folder).filter((name) => name.endsWith('.setup.yaml')).sort().map((name) => {
    const text = readFileSync(join(folder, name), 'utf8')
    const findings = checkNotebook(withLogsFrom(folder, readNotebook(text)))
    return `${[name, ...findings.flatMap((finding) => linesOf(finding, text))].join('\n')}\n`
  }).join('\n')
}

function linesOf({ code, severity, message, range, place, fixes = [] }: Finding, text: string): string[] {
  const where = [place?.entry ?? '', place?.row ?? ''].join(' ').trim()
  return [
    `  ${stretch(text, range.start, range.end)} ${severity} ${code}${where === '' ? '' : ` (${where})`}: ${message}`,
    ...fixes.map(({ title, changes }) => `    ${title}: ${changes.map((change) => changeOf(text, change)).join(', ')}`),
  ]
}

const changeOf = (text: string, { start, end, text: written }: TextChange): string => `${stretch(text, start, end)} becomes ${JSON.stringify(written)}`

/** From 1, as an editor tells places. */
function stretch(text: string, start: number, end: number): string {
  const [from, to] = [lineAndColumn(text, start), lineAndColumn(text, end)]
  const last = to.line === from.line ? to.column + 1 : `${to.line + 1}:${to.column + 1}`
  return start === end ? `${from.line + 1}:${from.column + 1}` : `${from.line + 1}:${from.column + 1}-${last}`
}
