import type { Finding } from '../finding'
import type { Notebook } from '../notebook/notebook'
import { differing, whatCame, whatWent, type Gap } from './differing'
import { firstId, numberFindings, type Ids } from './findingIds'
import { foundAgain, foundByEntry, type Found } from './found'
import type { GridFinding } from './view'

/** Findings as the grid lists them, and those about each entry, by its key. */
export interface Listed {
  shown: GridFinding[]
  about: ReadonlyMap<string, Found>
}

interface Known extends Listed, Omit<Ids, 'ids'> {
  findings: readonly Finding[]
}

const known = new WeakMap<GridFinding[], Known>()

/** The list made last: mostly the one of the same notebook before a keystroke, of which nearly all findings are the very same. */
let last = new WeakRef<GridFinding[]>([])

/** Lists the findings of a notebook; those of the version before that are still there are not looked at again. */
export function listFindings(findings: readonly Finding[], notebook: Notebook): Listed {
  const lineAt = linesOf(notebook.text)
  const before = last.deref()
  const old = before && known.get(before)
  const listed = (old && listAfter(old, findings, notebook, lineAt)) ?? listAll(findings, notebook, lineAt)
  known.set(listed.shown, listed)
  last = new WeakRef(listed.shown)
  return listed
}

function listAll(findings: readonly Finding[], { entries }: Notebook, lineAt: LineAt): Known {
  const { ids, ...numbers } = numberFindings(findings)
  const shown = findings.map((finding, at) => listFinding(finding, ids[at]!, lineAt))
  return { findings, shown, about: foundByEntry(shown, entries), ...numbers }
}

/** With what came in place of what went; `undefined` where that is much, or changes the numbers of others. */
function listAfter(before: Known, findings: readonly Finding[], { entries }: Notebook, lineAt: LineAt): Known | undefined {
  const { taken, crowded } = before
  const gaps = differing(before.findings, findings)
  if (!gaps) return undefined
  const went = whatWent(before.shown, gaps)
  const came = whatCame(findings, gaps).map((finding) => listFinding(finding, firstId(finding), notYet))
  if ([...went, ...came].some(({ id }) => crowded.has(id))) return undefined
  for (const { id } of went) taken.delete(id)
  for (const { id } of came) {
    if (taken.has(id)) return undefined
    taken.add(id)
  }
  const shown = filled(before.shown, gaps, came)
  for (let at = 0; at < shown.length; at++) if (shown[at]!.column === undefined) shown[at] = listFinding(findings[at]!, shown[at]!.id, lineAt)
  const keys = new Set([...went, ...came].flatMap(({ column }) => column ?? []))
  return { findings, shown, about: foundAgain(before.about, keys, shown, entries), taken, crowded }
}

function filled(before: readonly GridFinding[], gaps: readonly Gap[], came: readonly GridFinding[]): GridFinding[] {
  const shown = before.slice()
  let behind = came.length
  for (const { at, went, came: count } of [...gaps].reverse()) {
    behind -= count
    shown.splice(at, went, ...came.slice(behind, behind + count))
  }
  return shown
}

const listed = new WeakMap<Finding, GridFinding>()

/** The same object for the same finding; one about no entry tells its line, which may have moved. */
function listFinding(finding: Finding, id: number, lineAt: LineAt): GridFinding {
  const known = listed.get(finding)
  if (known?.id === id && known.column !== undefined) return known
  const made = makeFinding(finding, id, lineAt)
  listed.set(finding, made)
  return made
}

function makeFinding(finding: Finding, id: number, lineAt: LineAt): GridFinding {
  const { entry, row } = finding.place ?? {}
  return {
    id, code: finding.code, severity: finding.severity, message: finding.message,
    fixes: (finding.fixes ?? []).map(({ title }) => title),
    ...(entry === undefined ? { line: lineAt(finding.range.start) } : { column: entry }), ...(row === undefined ? {} : { row }),
  }
}

type LineAt = (offset: number) => number

/** For what is listed once more, in the order of the text. */
const notYet: LineAt = () => 0

/** Lines from 1. Findings come in the order of the text, so that it is looked through once, and no further than to the last that is asked for. */
export function linesOf(text: string): LineAt {
  let [from, line] = [0, 1]
  return (offset) => {
    if (offset < from) [from, line] = [0, 1]
    for (let at = text.indexOf('\n', from); at >= 0 && at < offset; at = text.indexOf('\n', from)) {
      from = at + 1
      line++
    }
    return line
  }
}
