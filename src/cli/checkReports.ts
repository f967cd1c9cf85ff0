import type { Finding } from '../core/finding'
import { countFindings, regionOf, type CheckedFile } from './checkedFile'
import { forTerminal, onOneLine } from './forTerminal'

/** How loudly each severity is coloured on a terminal: red, yellow, blue; the word is always there as well. */
const inks = { error: 31, warning: 33, info: 34 } as const

/** A line a finding, as compilers print them, and their sum. */
export function reportAsText(files: readonly CheckedFile[], colour = false): string {
  const word = (severity: Finding['severity']) => (colour ? `\u001b[${inks[severity]}m${severity}\u001b[0m` : severity)
  const lines = files.flatMap((file) => file.findings.map(({ range, severity, message, code }) => {
    const { line, column } = regionOf(file, range)
    return `${onOneLine(`${file.path}:${line}:${column}: `)}${word(severity)}${onOneLine(`: ${message} [${code}]`)}`
  }))
  return [...lines, sumOf(files), ''].join('\n')
}

/** Everything about every finding as plain data, for scripts. */
export function reportAsJson(files: readonly CheckedFile[]): string {
  const told = files.map((file) => ({ path: file.path, findings: file.findings.map((finding) => tell(file, finding)) }))
  return `${JSON.stringify({ version: 1, files: told, summary: { files: files.length, ...countFindings(files) } }, null, 2)}\n`
}

function tell(file: CheckedFile, { code, severity, message, range, place, fixes }: Finding) {
  const { line, column, endLine, endColumn } = regionOf(file, range)
  return {
    code, severity, message, line, column, end_line: endLine, end_column: endColumn,
    ...(place?.entry === undefined ? {} : { entry: place.entry }), ...(place?.row === undefined ? {} : { row: place.row }),
    fixes: (fixes ?? []).map(({ title }) => title),
  }
}

const commandOf = { error: 'error', warning: 'warning', info: 'notice' } as const

/**
 * Workflow commands of GitHub Actions, which put each finding beside its line in a pull request, and the sum as a line
 * of the log. Columns are given only within one line, as the forge takes them.
 */
export function reportAsGithub(files: readonly CheckedFile[]): string {
  const lines = files.flatMap((file) => file.findings.map(({ range, severity, message, code }) => {
    const { line, column, endLine, endColumn } = regionOf(file, range)
    const columns = line === endLine ? { col: column, endColumn } : {}
    const properties = { ...(file.path === '-' ? {} : { file: withSlashes(file.path) }), line, endLine, ...columns, title: code }
    const told = Object.entries(properties).map(([name, value]) => `${name}=${escapeProperty(String(value))}`).join(',')
    return forTerminal(`::${commandOf[severity]} ${told}::${escapeData(message)}`)
  }))
  return [...lines, sumOf(files), ''].join('\n')
}

/** A path with `/` and without the `./` before it, as forges name files. */
export function withSlashes(path: string): string {
  return path.replaceAll('\\', '/').replace(/^(?:\.\/+)+/, '')
}

function escapeData(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A')
}

function escapeProperty(text: string): string {
  return escapeData(text).replaceAll(':', '%3A').replaceAll(',', '%2C')
}

function sumOf(files: readonly CheckedFile[]): string {
  const { errors, warnings, infos } = countFindings(files)
  const counted = (many: number, one: string) => `${many} ${one}${many === 1 ? '' : 's'}`
  return `${counted(files.length, 'notebook')}: ${counted(errors, 'error')}, ${counted(warnings, 'warning')}, ${counted(infos, 'note')}`
}
