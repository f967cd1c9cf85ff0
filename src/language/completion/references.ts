import { acceptedForNothing } from '../../core/rules/acceptFindings'
import { escapeMarkdown } from '../../core/card/cardMarkdown'
import { rules } from '../../core/rules'
import type { Entry } from '../../core/notebook/notebook'
import { lineEndOf } from '../../core/text'
import { say } from '../../core/words/say'
import { keyText, type Asked, type Completion } from './completion'

/** The entries that this one can come from, the nearest above it first; none that itself comes from this one. */
export function parentCompletions(asked: Asked): Completion[] {
  const { notebook: { entries }, entry } = asked
  const possible = entries.filter((each) => each !== entry && !comesFrom(each, entry))
  const above = possible.filter((each) => !entry || each.index < entry.index).reverse()
  return entryItems(asked, [...above, ...possible.filter((each) => !above.includes(each))])
}

/** Every entry, first those with the finding that is being accepted. */
export function entryCompletions(asked: Asked): Completion[] {
  const { notebook, findings, cursor } = asked
  const code = notebook.accepted.find(({ node }) => node.range.start <= cursor.range.start && cursor.range.start <= node.range.end)?.finding
  const concerned = new Set(findings.filter((finding) => finding.code === code).map(({ place }) => place?.entry))
  const first = notebook.entries.filter(({ key }) => concerned.has(key))
  return entryItems(asked, [...first, ...notebook.entries.filter((each) => !first.includes(each))])
}

/** Written as the entry itself writes it, so that `"9"` stays `"9"`. */
function entryItems({ notebook, cursor }: Asked, entries: readonly Entry[]): Completion[] {
  return entries.flatMap(({ id, date, reason }) => {
    if (!id) return []
    const written = notebook.text.slice(id.range.start, id.range.end)
    const insert = cursor.quote ? id.value : cursor.flow && /^[^"'].*[,[\]{}]/.test(written) ? JSON.stringify(id.value) : written
    return [{ label: id.value, kind: 'entry', insert, ...(date ? { detail: date.value } : {}), ...(reason ? { about: escapeMarkdown(reason.value) } : {}) } satisfies Completion]
  })
}

function comesFrom(entry: Entry, ancestor: Entry | undefined): boolean {
  const seen = new Set<Entry>()
  for (let at = entry.parent; at && !seen.has(at); at = at.parent) {
    if (at === ancestor) return true
    seen.add(at)
  }
  return false
}

/** The codes of the rules as keys, each to be followed by how loudly it speaks. */
export function ruleKeys(asked: Asked): Completion[] {
  return ruleCodes(asked).map((item) => ({ ...item, insert: keyText(item.label, asked.cursor), again: true }))
}

/** The codes of the rules, those that speak in this notebook first. */
export function ruleCodes({ findings, cursor }: Asked): Completion[] {
  const found = new Set(findings.map(({ code }) => code))
  const known = [...rules, acceptedForNothing].filter(({ code }) => !cursor.beside.has(code))
  return [...known.filter(({ code }) => found.has(code)), ...known.filter(({ code }) => !found.has(code))].map(({ code, severity, says, why }) =>
    ({ label: code, kind: 'rule', detail: found.has(code) ? say`${say(severity)} · found here` : say(severity), about: `${say(says)}\n\n${say(why)}`, insert: code }))
}

/** The day by the editor's own calendar, as its snippets know it: core has no clock. */
export function today({ cursor }: Asked): Completion[] {
  if (cursor.typed !== '' || cursor.quote) return []
  return [{ label: 'today', kind: 'shape', detail: say('as YYYY-MM-DD'), insert: day, snippet: true }]
}

const day = '$CURRENT_YEAR-$CURRENT_MONTH-$CURRENT_DATE'

/** A new item of the lists that have groups in them. */
export function itemCompletions({ path, cursor, notebook }: Asked): Completion[] {
  if (cursor.flow) return []
  const isItem = cursor.expects === 'item'
  const next = `${lineEndOf(notebook.text)}${cursor.indent}${isItem ? '  ' : ''}`
  const shape = (label: string, detail: string, lines: string[]): Completion[] => {
    const dash = isItem ? '- ' : ''
    return [{ label, kind: 'shape', detail, filter: `${dash}${lines[0]!.split(':')[0]}`, insert: dash + lines.join(next), snippet: true }]
  }
  switch (path.join('/').replace(/\/\*$/, '')) {
    case 'entries': return shape(say('new entry'), say('id, date, settings and reason'), ['id: $1', `date: ${day}`, 'settings: {$2}', 'reason: $3'])
    case 'accepted': return shape(say('new acceptance'), say('the finding and why it is all right'), ['finding: $1', 'reason: $2'])
    default: return []
  }
}
