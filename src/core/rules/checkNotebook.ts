import type { Finding, Severity } from '../finding'
import type { Accepted, Entry, Notebook } from '../notebook/notebook'
import { acceptedForNothing, acceptFindings, findIdle } from './acceptFindings'
import { byPlace, oneAfterTheOther, putAmong } from './byPlace'
import { findingsOf, reportsOf } from './entryReports'
import { rules as everyRule } from './index'
import type { Description, Report, Rule } from './rule'

/** How loudly rules are to speak, by code, where neither the rule nor the notebook decides. */
export type Severities = ReadonlyMap<string, Severity | 'off'>

/**
 * Everything a notebook has to say about itself, in the order of the text: what reading found, and what the rules
 * find, less what is accepted with a reason or turned off. A text that does not parse only says so.
 */
export function checkNotebook(notebook: Notebook, severities: Severities = new Map(), rules: readonly Rule[] = everyRule): Finding[] {
  if (notebook.broken) return [...notebook.findings]
  const { loudness, speaking, inEntry } = speakersOf(notebook, severities, rules)
  const codes = new Set([...rules, acceptedForNothing].map(({ code }) => code))
  const inEntries = oneAfterTheOther(notebook.entries.map(inEntry))
  const elsewhere = speaking.flatMap((rule) => (rule.checkNotebook?.(notebook, codes) ?? []).map((report) => toFinding(rule, report, loudness(rule))))
  const used = new Set<Accepted>()
  const [standing, others] = [acceptFindings(notebook, inEntries.all, used), acceptFindings(notebook, elsewhere, used)]
  const spoken = new Set(speaking.map(({ code }) => code))
  const idle = loudness(acceptedForNothing) === 'off' ? [] : findIdle(notebook, used, spoken).map((report) => toFinding(acceptedForNothing, report, loudness(acceptedForNothing)))
  if (notebook.findings.length === 0 && inEntries.inOrder) return putAmong(standing, [...others, ...idle])
  return byPlace([...notebook.findings, ...standing, ...others, ...idle])
}

/** The part of it that stands in entries, worked out entry by entry and kept, so that checking the whole is then quick. For who has to let others go first. */
export function* checkEntries(notebook: Notebook, severities: Severities = new Map(), rules: readonly Rule[] = everyRule): Generator<void, void> {
  if (notebook.broken) return
  const { inEntry } = speakersOf(notebook, severities, rules)
  for (const entry of notebook.entries) {
    inEntry(entry)
    yield
  }
}

/** The rules that speak of a notebook, how loudly, and what they find in an entry. */
function speakersOf(notebook: Notebook, severities: Severities, rules: readonly Rule[]) {
  const loudness = ({ code }: Description) => notebook.severities.get(code) ?? severities.get(code)
  const speaking = rules.filter((rule) => loudness(rule) !== 'off' && (notebook.newer ? rule.code === 'newer-format' : !notebook.older || rule.code === 'older-format'))
  const forEntries = speaking.filter((rule) => 'checkEntry' in rule)
  const guard = guardOf(forEntries, forEntries.map((rule) => loudness(rule) ?? '').join())
  // Put in order once and kept so: all entries one behind the other are then nearly in order, which is quick to sort.
  const inEntry = (entry: Entry) => findingsOf(entry, guard, () => byPlace(forEntries.flatMap((rule) =>
    reportsOf(rule, entry, notebook).map((report) => toFinding(rule, { entry, ...report }, loudness(rule))))))
  return { loudness, speaking, inEntry }
}

const guards: { rules: readonly Rule[]; loudness: string }[] = []

/** The same object for the same rules, as loud. What a few notebooks and tests ask for is remembered. */
function guardOf(rules: readonly Rule[], loudness: string): object {
  const known = guards.find((guard) => guard.loudness === loudness && guard.rules.length === rules.length && guard.rules.every((rule, at) => rule === rules[at]))
  if (known) return known
  const guard = { rules, loudness }
  if (guards.unshift(guard) > 16) guards.pop()
  return guard
}

function toFinding(rule: Description, report: Report, loudness: Severity | 'off' | undefined): Finding {
  const { message, range, entry, row, fixes } = report
  return {
    code: rule.code,
    severity: loudness === undefined || loudness === 'off' ? (report.severity ?? rule.severity) : loudness,
    message, range,
    ...(entry || row ? { place: placeOf(entry, row) } : {}),
    ...(fixes?.length ? { fixes } : {}),
  }
}

function placeOf(entry: Entry | undefined, row: string | undefined): NonNullable<Finding['place']> {
  return { ...(entry ? { entry: entry.key } : {}), ...(row ? { row } : {}) }
}
