import { parseArgs } from 'node:util'
import type { Severity } from '../core/finding'
import { readNotebook } from '../core/notebook/readNotebook'
import { checkNotebook } from '../core/rules/checkNotebook'
import { lineOf, lineStarts } from '../core/text'
import { UsageError, type Outcome, type World } from './outcome'

export const checkUsage = `detent check PATHS… [--format text|json] [--fail-on error|warning|info|never]

Runs the rules over notebooks. A folder stands for every *.setup.yaml and *.setup.yml below it, - for standard input.
Exit code: 0 clean, 1 a finding at or above --fail-on (default: error), 2 usage or unreadable input.`

/** A finding with its place as people count: from line 1, column 1. */
export interface PlacedFinding {
  code: string
  severity: Severity
  message: string
  line: number
  column: number
  end_line: number
  end_column: number
  entry?: string
  row?: string
  fixes: string[]
}

export interface CheckedFile {
  path: string
  findings: PlacedFinding[]
}

const formats = ['text', 'json'] as const
const thresholds = ['error', 'warning', 'info', 'never'] as const
const rank: Record<Severity, number> = { error: 3, warning: 2, info: 1 }

/** `detent check`. */
export function check(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args], allowPositionals: true,
    options: { format: { type: 'string', default: 'text' }, 'fail-on': { type: 'string', default: 'error' } },
  })
  const format = oneOf(values.format!, formats, '--format')
  const failOn = oneOf(values['fail-on']!, thresholds, '--fail-on')
  if (positionals.length === 0) throw new UsageError('check: name files or folders; . is this folder')
  const files = world.find(positionals).map((path) => checkFile(path, world.read(path)))
  const worst = Math.max(0, ...files.flatMap(({ findings }) => findings.map(({ severity }) => rank[severity])))
  const failed = failOn !== 'never' && worst >= rank[failOn]
  const none = files.length === 0 ? 'No notebook found: none of these folders holds a *.setup.yaml or *.setup.yml.\n' : undefined
  return { out: format === 'json' ? asJson(files) : asText(files), ...(none ? { err: none } : {}), code: failed ? 1 : 0 }
}

/** One of the words an option knows. @throws UsageError naming them */
export function oneOf<T extends string>(value: string, words: readonly T[], option: string): T {
  const found = words.find((word) => word === value)
  if (found === undefined) throw new UsageError(`${option} knows ${words.join(', ')}, not ‘${value}’`)
  return found
}

/** The findings of one file, each with its lines and columns. */
export function checkFile(path: string, text: string): CheckedFile {
  const starts = lineStarts(text)
  const findings = checkNotebook(readNotebook(text)).map(({ code, severity, message, range, place, fixes }): PlacedFinding => {
    const [first, last] = [lineOf(starts, range.start), lineOf(starts, range.end)]
    return {
      code, severity, message, line: first + 1, column: range.start - starts[first]! + 1, end_line: last + 1, end_column: range.end - starts[last]! + 1,
      ...(place?.entry === undefined ? {} : { entry: place.entry }), ...(place?.row === undefined ? {} : { row: place.row }),
      fixes: (fixes ?? []).map(({ title }) => title),
    }
  })
  return { path, findings }
}

function count(files: readonly CheckedFile[]): Record<'errors' | 'warnings' | 'infos', number> {
  const all = files.flatMap(({ findings }) => findings)
  const of = (severity: Severity) => all.filter((finding) => finding.severity === severity).length
  return { errors: of('error'), warnings: of('warning'), infos: of('info') }
}

function asJson(files: readonly CheckedFile[]): string {
  return `${JSON.stringify({ version: 1, files, summary: { files: files.length, ...count(files) } }, null, 2)}\n`
}

function asText(files: readonly CheckedFile[]): string {
  const lines = files.flatMap(({ path, findings }) =>
    findings.map(({ line, column, severity, message, code }) => `${path}:${line}:${column}: ${severity}: ${message} [${code}]`))
  const { errors, warnings, infos } = count(files)
  const notebooks = `${files.length} ${files.length === 1 ? 'notebook' : 'notebooks'}`
  return [...lines, `${notebooks}: ${errors} errors, ${warnings} warnings, ${infos} notes`, ''].join('\n')
}
