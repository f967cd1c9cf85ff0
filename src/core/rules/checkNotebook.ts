import type { Finding, Severity } from '../finding'
import type { Entry, Notebook } from '../notebook/notebook'
import { acceptFindings } from './acceptFindings'
import { rules as everyRule } from './index'
import type { Report, Rule } from './rule'

/** How loudly rules are to speak, by code, where neither the rule nor the notebook decides. */
export type Severities = ReadonlyMap<string, Severity | 'off'>

/**
 * Everything a notebook has to say about itself, in the order of the text: what reading found, and what the rules
 * find, less what is accepted with a reason or turned off. A text that does not parse only says so.
 */
export function checkNotebook(notebook: Notebook, severities: Severities = new Map(), rules: readonly Rule[] = everyRule): Finding[] {
  if (notebook.broken) return [...notebook.findings]
  const found = rules.flatMap((rule) => {
    const loudness = notebook.severities.get(rule.code) ?? severities.get(rule.code)
    if (loudness === 'off' || (notebook.newer && rule.code !== 'newer-format')) return []
    return 'checkEntry' in rule
      ? notebook.entries.flatMap((entry) => rule.checkEntry(entry, notebook).map((report) => toFinding(rule, report, loudness, entry)))
      : rule.checkNotebook(notebook).map((report) => toFinding(rule, report, loudness))
  })
  const standing = acceptFindings(notebook, found)
  return [...notebook.findings, ...standing].sort((a, b) => a.range.start - b.range.start || a.range.end - b.range.end)
}

function toFinding(rule: Rule, report: Report, loudness: Severity | undefined, entry?: Entry): Finding {
  return {
    code: rule.code,
    severity: loudness ?? report.severity ?? rule.severity,
    message: report.message,
    range: report.range,
    ...(entry || report.row ? { place: { ...(entry ? { entry: entry.key } : {}), ...(report.row ? { row: report.row } : {}) } } : {}),
    ...(report.fixes?.length ? { fixes: report.fixes } : {}),
  }
}
