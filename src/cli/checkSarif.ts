import { createHash } from 'node:crypto'
import type { Finding, Fix } from '../core/finding'
import { descriptions } from '../core/rules/index'
import { lineEnd, lineOf, type Range } from '../core/text'
import { regionOf, type CheckedFile } from './checkedFile'
import { withSlashes } from './checkReports'

const levels = { error: 'error', warning: 'warning', info: 'note' } as const
const schema = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json'

/** Findings as a SARIF 2.1.0 log (OASIS standard), with what each rule says and why, and the fixes that findings carry. */
export function reportAsSarif(files: readonly CheckedFile[]): string {
  const rules = descriptions.map(({ code, says, why, severity }) => ({
    id: code, shortDescription: words(says), fullDescription: words(why), defaultConfiguration: { level: levels[severity] },
  }))
  const run = {
    tool: { driver: { name: 'Detent', rules } },
    columnKind: 'utf16CodeUnits', defaultEncoding: 'utf-8',
    results: files.flatMap((file) => {
      const seen = new Map<string, number>()
      return file.findings.map((finding) => resultOf(file, finding, seen))
    }),
  }
  return `${JSON.stringify({ $schema: schema, version: '2.1.0', runs: [run] }, null, 2)}\n`
}

function resultOf(file: CheckedFile, finding: Finding, seen: Map<string, number>) {
  const { code, severity, message, range, fixes } = finding
  const ruleIndex = descriptions.findIndex((description) => description.code === code)
  return {
    ruleId: code, ...(ruleIndex < 0 ? {} : { ruleIndex }), level: levels[severity], message: words(message),
    locations: [{ physicalLocation: { artifactLocation: { uri: uriOf(file.path) }, region: sarifRegion(file, range) } }],
    partialFingerprints: { 'detentFinding/v1': fingerprint(file, finding, seen) },
    ...(fixes?.length ? { fixes: fixes.map((fix) => sarifFix(file, fix)) } : {}),
  }
}

/** A message: braces would be placeholders in one, so they are doubled (3.11.5 of the standard). */
function words(text: string): { text: string } {
  return { text: text.replace(/[{}]/g, '$&$&') }
}

function sarifFix(file: CheckedFile, { title, changes }: Fix) {
  const replacements = changes.map((change) => ({ deletedRegion: sarifRegion(file, change), ...(change.text === '' ? {} : { insertedContent: { text: change.text } }) }))
  return { description: words(title), artifactChanges: [{ artifactLocation: { uri: uriOf(file.path) }, replacements }] }
}

function sarifRegion(file: CheckedFile, range: Range) {
  const { line, column, endLine, endColumn } = regionOf(file, range)
  // Behind the last line end there is no line of SARIF's: its place is at the end of the line before (3.30.2).
  if (range.start === file.text.length && column === 1 && line > 1) {
    const last = file.text.length - file.starts[line - 2]! + 1
    return { startLine: line - 1, startColumn: last, endLine: line - 1, endColumn: last }
  }
  return { startLine: line, startColumn: column, endLine, endColumn }
}

/** A relative reference (RFC 3986), so that it holds wherever the folder lies; an absolute path becomes a file's URI. */
function uriOf(path: string): string {
  const slashed = withSlashes(path)
  // A file's name may hold half a surrogate pair, which by way of bytes becomes the mark for what cannot be said.
  const encoded = slashed.split('/').map((part) => encodeURIComponent(Buffer.from(part).toString())).join('/')
  if (/^[A-Za-z]:\//.test(slashed)) return `file:///${encoded.replace('%3A', ':')}`
  return slashed.startsWith('/') ? `file://${encoded}` : encoded
}

/**
 * What stays the same when lines are added above, when the file is renamed and when a message is reworded: the rule,
 * the cell, and the words found there; like ones are counted.
 */
function fingerprint({ text, starts }: CheckedFile, { code, place, range }: Finding, seen: Map<string, number>): string {
  const line = starts[lineOf(starts, range.start)]!
  const lineWords = text.slice(line, lineEnd(text, line)).trim()
  const about = JSON.stringify([code, place?.entry ?? '', place?.row ?? '', place ? text.slice(range.start, range.end) : lineWords])
  const nth = (seen.get(about) ?? 0) + 1
  seen.set(about, nth)
  return createHash('sha256').update(`${about}${nth}`).digest('hex').slice(0, 32)
}
