import { factsIn, ownCount } from '../core/adjusters/convert'
import type { Finding } from '../core/finding'
import { acceptFinding } from '../core/notebook/edits/acceptFinding'
import { insertPair } from '../core/notebook/edits/insertPair'
import { asProse, Refusal, setPath } from '../core/notebook/edits/setPath'
import type { Notebook } from '../core/notebook/notebook'
import { pairOf } from '../core/notebook/tree'
import { rules } from '../core/rules'
import type { Range, TextChange } from '../core/text'
import { say } from '../core/words/say'
import { definitionsOf } from './defineAdjuster'
import { blank, leaveBlank, type Filled } from './leaveBlank'

/** Something to be done about a finding. */
export interface CodeAction {
  title: string
  finding: Finding
  changes: TextChange[]
  /** The one repair that is meant. */
  preferred: boolean
  /** Where to put the cursor, as an offset of the text after the changes: something is left to be written there. */
  cursor?: number
}

/**
 * What can be done about the findings that touch a range: the repairs they carry, and what takes a person's own words,
 * with the cursor put where those go.
 */
export function codeActions(notebook: Notebook, findings: readonly Finding[], { start, end }: Range): CodeAction[] {
  return findings.filter(({ range }) => range.start <= end && start <= range.end).flatMap((finding) => [
    ...carried(finding),
    ...(notebook.broken || notebook.newer ? [] : [addReason, noteFact, define, accept].flatMap((make) => attempt(make, notebook, finding))),
  ])
}

function carried(finding: Finding): CodeAction[] {
  const fixes = finding.fixes ?? []
  return fixes.map(({ title, changes }) => ({ title, finding, changes, preferred: fixes.length === 1 }))
}

type Made = { title: string } & Filled
type Make = (notebook: Notebook, finding: Finding) => Made | readonly Made[] | undefined

/** What an edit refuses, for an anchor or an odd way of writing, is not offered. */
function attempt(make: Make, notebook: Notebook, finding: Finding): CodeAction[] {
  try {
    const made = make(notebook, finding) ?? []
    return [made].flat().map((each) => ({ ...each, finding, preferred: each.cursor !== undefined && !finding.fixes && finding.code.endsWith('reason') }))
  } catch (error) {
    if (error instanceof Refusal) return []
    throw error
  }
}

/** `reason: ` where it belongs, in an entry or in an acceptance. */
function addReason({ text, entries, accepted }: Notebook, { code, range, place }: Finding): ReturnType<Make> {
  if (code === 'no-reason') {
    const entry = entries.find(({ key }) => key === place?.entry)
    return entry && { title: say('Add a reason'), ...leaveBlank(setPath(text, entry.node, ['reason'], blank, asProse), entry.node.flow) }
  }
  if (code !== 'accepted-without-reason') return undefined
  const node = accepted.find((each) => each.range.start === range.start && each.reason === undefined)?.node
  if (node?.kind !== 'map') return undefined
  const changes = pairOf(node, 'reason') ? setPath(text, node, ['reason'], blank, asProse) : [insertPair(text, node, 'reason', ` ${blank}`)]
  return { title: say('Add the reason'), ...leaveBlank(changes, node.flow) }
}

/** The fact an adjuster lacks for a count to be converted: its range, or a ratio. */
function noteFact({ text, root, entries }: Notebook, { code, place }: Finding): ReturnType<Make> {
  if (!root || (code !== 'wrong-end' && code !== 'wrong-unit')) return undefined
  const setting = entries.find(({ key }) => key === place?.entry)?.settings.get(place?.row?.replace(/^settings\//, '') ?? '')
  const missing = setting?.reading.value && ownCount(setting.reading.value, setting.adjuster).missing
  const fact = missing === undefined ? undefined : factsIn(missing)[0]
  if (!setting || fact === undefined) return undefined
  const { id, label } = setting.adjuster
  return { title: say`Note \`${fact}\` on ${label}, to convert it`, ...leaveBlank(setPath(text, root, ['adjusters', id, fact], blank, asProse), false) }
}

/** The definition of an adjuster that is set and not defined, for each thing it can be. */
function define(notebook: Notebook, { code, place }: Finding): ReturnType<Make> {
  return code === 'unknown-adjuster' && place?.row !== undefined ? definitionsOf(notebook, place.row.replace(/^settings\//, '')) : undefined
}

/** What a rule finds can be accepted, for a reason; what reading tells cannot. */
function accept(notebook: Notebook, finding: Finding): ReturnType<Make> {
  if (!acceptable.has(finding.code)) return undefined
  const where = finding.place?.entry === undefined ? say('everywhere in this notebook') : say`in ‘${finding.place.entry}’`
  const list = pairOf(notebook.root, 'accepted')?.value
  const flow = list?.kind === 'list' && list.flow && list.items.length > 0
  return { title: say`Accept ${finding.code} ${where}, with a reason`, ...leaveBlank(acceptFinding(notebook, finding, blank), flow || notebook.root?.flow === true) }
}

const acceptable = new Set(rules.map(({ code }) => code).filter((code) => code !== 'accepted-without-reason' && code !== 'newer-format' && code !== 'unknown-rule'))
