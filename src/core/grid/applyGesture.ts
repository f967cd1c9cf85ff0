import type { Finding } from '../finding'
import { slotKey } from '../adjusters/adjuster'
import { findArchitecture } from '../adjusters/architectures'
import { writeNotebook } from '../adjusters/architectures/writeNotebook'
import { acceptFinding } from '../notebook/edits/acceptFinding'
import { addAdjuster } from '../notebook/edits/addAdjuster'
import { composeChanges } from '../notebook/edits/composeChanges'
import { addEntry, removeEntry, renameEntry } from '../notebook/edits/entries'
import { duplicateAdjuster, moveAdjuster } from '../notebook/edits/adjusterOrder'
import { removeAdjuster } from '../notebook/edits/removeAdjuster'
import { duplicateEntry, insertEntry, moveEntry } from '../notebook/edits/reorder'
import { returnTo } from '../notebook/edits/returnTo'
import { asFigure, asProse, clearPath, Refusal, setPath } from '../notebook/edits/setPath'
import { clearSetting, setSetting } from '../notebook/edits/setSetting'
import { settingRow, type Notebook } from '../notebook/notebook'
import { readNotebook } from '../notebook/readNotebook'
import { nodeAt, scalarAt } from '../notebook/tree'
import { applyChanges, type TextChange } from '../text'
import { say } from '../words/say'
import { clearOne, setOne } from './cellEdits'
import { cautions } from './cautions'
import { entryAt } from './entryAt'
import { findingIds } from './findingIds'
import { nudge } from './nudge'
import { slotOf } from './slotOf'
import { rowsOf } from './rows'
import type { Gesture } from './gesture'
import type { GridPlace } from './view'

/** A cell that was left as it is while others were written, and why. */
export type LeftOut = { why: string } & GridPlace

/** What a gesture comes to: the changes of the text, where to look next, and what of it was left out; or why it is refused. */
export type Answer = { changes: TextChange[]; reveal?: GridPlace; left?: LeftOut[]; refused?: undefined } | { refused: string; changes?: undefined }

/**
 * Turns what a person did in the grid into the smallest changes of the text that do it. Never throws: what cannot be
 * done is refused with a sentence that says why.
 */
export function applyGesture(notebook: Notebook, findings: readonly Finding[], gesture: Gesture): Answer {
  return answered(notebook, () => answer(notebook, findings, gesture), gesture.kind === 'applyFix')
}

/** What an edit of a notebook comes to; refused where the notebook is one that is not written, or the edit itself refuses. */
export function answered(notebook: Notebook, edit: () => Answer, isFix = false): Answer {
  if (notebook.broken) return { refused: say`The text has an error, so the grid does not write: ${notebook.broken.message}` }
  if (notebook.older && !isFix) return { refused: say('This notebook is written in an older format. Take the fix of its finding first; it stays undoable.') }
  if (notebook.newer) return { refused: say('This notebook is written in a newer format. Update Detent to edit it.') }
  try {
    return edit()
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.message }
    throw error
  }
}

function answer(notebook: Notebook, findings: readonly Finding[], gesture: Gesture): Answer {
  switch (gesture.kind) {
    case 'setCell': return { changes: setOne(notebook, gesture, gesture.text) }
    case 'setCells': return gesture.partly ? inPart(notebook, gesture.cells, (now, cell) => setOne(now, cell, cell.text)) : { changes: inRounds(notebook, gesture.cells, (now, cell) => setOne(now, cell, cell.text)) }
    case 'setBothLegs': return { changes: setBothLegs(notebook, gesture) }
    case 'nudge': return { changes: nudgeAll(notebook, gesture.cells, gesture.toward) }
    case 'clearCells': return gesture.partly ? inPart(notebook, gesture.cells, clearOne) : { changes: inRounds(notebook, gesture.cells, clearOne) }
    case 'setHeader': return { changes: setHeader(notebook, gesture) }
    case 'addEntry': return newEntry(notebook, gesture)
    case 'returnTo': return goBack(notebook, gesture)
    case 'duplicateEntry': return duplicate(notebook, gesture)
    case 'insertEntry': return insert(notebook, gesture)
    case 'moveEntry': return move(notebook, gesture)
    case 'removeAdjuster': return { changes: removeAdjuster(notebook, gesture.id, gesture.withPositions) }
    case 'removeEntry': return { changes: removeEntry(notebook, entryAt(notebook, gesture.column)) }
    case 'annotate': return { changes: annotate(notebook, gesture) }
    case 'applyFix': return applyFix(findingOf(findings, gesture.finding), gesture.fix)
    case 'acceptFinding': return accept(notebook, findingOf(findings, gesture.finding), gesture.reason)
    case 'addAdjuster': return { changes: addAdjuster(notebook, gesture) }
    case 'moveAdjuster': return { changes: moveAdjuster(notebook, gesture.id, gesture.toward) }
    case 'duplicateAdjuster': return { changes: duplicateAdjuster(notebook, gesture.id).changes }
    case 'begin': return begin(notebook, gesture)
  }
}

/** Changes the cells that can be changed; of the others says why. Refused as a whole where none can. */
function inPart<T extends GridPlace>(notebook: Notebook, cells: readonly T[], change: (notebook: Notebook, cell: T) => TextChange[]): Answer {
  const left: LeftOut[] = []
  const changes = inRounds(notebook, cells, (now, cell) => {
    try {
      return change(now, cell)
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      left.push({ column: cell.column, row: cell.row, why: error.message })
      return []
    }
  })
  if (left.length === cells.length && left.length > 0) return { refused: left[0]!.why }
  return { changes, ...(left.length > 0 ? { left } : {}) }
}

function setBothLegs(notebook: Notebook, { column, row, text }: Extract<Gesture, { kind: 'setBothLegs' }>): TextChange[] {
  const slot = slotOf(notebook, entryAt(notebook, column), row)
  const legs = slot ? notebook.adjusters.get(slot.id)!.legs : []
  if (!slot || legs.length < 2) throw new Refusal(say('there is only one of this, so there are no two legs to set'))
  const entry = entryAt(notebook, column)
  const isSplit = nodeAt(entry.node, ['settings', slot.id])?.kind === 'map'
  if (text.trim() !== '' && !isSplit) return setSetting(notebook.text, entry, slot.id, undefined, text)
  if (text.trim() === '' && !isSplit) return clearSetting(notebook.text, entry, slot.id, undefined)
  return inRounds(notebook, legs.map((leg) => ({ column, row: settingRow(slotKey(slot.id, leg)) })), (now, cell) => setOne(now, cell, text))
}

function nudgeAll(notebook: Notebook, cells: readonly GridPlace[], toward: 'more' | 'less'): TextChange[] {
  const moved = nudge(notebook, cells, toward).map((each) => ({ ...each, column: each.entry.key, row: '' }))
  return inRounds(notebook, moved, (now, { column, adjuster, leg, text }) => setSetting(now.text, entryAt(now, column), adjuster.id, leg, text))
}

/**
 * Several cells as one list of changes. Cells of one entry may touch the same lines, so in each round only one cell of
 * an entry is changed and the text is read again between rounds.
 */
function inRounds<T extends GridPlace>(notebook: Notebook, cells: readonly T[], change: (notebook: Notebook, cell: T) => TextChange[]): TextChange[] {
  const steps: TextChange[][] = []
  let now = notebook
  let waiting = [...cells]
  while (waiting.length > 0) {
    const touched = new Set<string>()
    const round = waiting.filter(({ column }) => !touched.has(column) && touched.add(column))
    waiting = waiting.filter((cell) => !round.includes(cell))
    const changes = round.flatMap((cell) => change(now, cell))
    if (changes.length === 0) continue
    steps.push(changes)
    if (waiting.length > 0) now = readNotebook(applyChanges(now.text, changes))
  }
  return steps.length === 1 ? steps[0]! : composeChanges(notebook.text.length, steps)
}

function setHeader(notebook: Notebook, { column, field, text }: Extract<Gesture, { kind: 'setHeader' }>): TextChange[] {
  const entry = entryAt(notebook, column)
  const typed = text.trim()
  if (field === 'id') {
    const id = typed.replace(/\s+/g, ' ')
    if (id === '') throw new Refusal(say('an entry needs an id: it is what others come from and go back to'))
    if (notebook.entries.some((other) => other !== entry && other.id?.value === id)) throw new Refusal(say`‘${id}’ names another entry already`)
    return renameEntry(notebook, entry, id)
  }
  if (typed === '') return clearPath(notebook.text, entry.node, [field])
  return setPath(notebook.text, entry.node, [field], typed, field === 'date' ? asFigure : asProse)
}

function newEntry(notebook: Notebook, { after, id, date, reason }: Extract<Gesture, { kind: 'addEntry' }>): Answer {
  const wanted = freeId(notebook, id)
  const parent = after === undefined ? undefined : entryAt(notebook, after)
  const isLast = parent === undefined || parent === notebook.entries.at(-1)
  if (!isLast && !parent.id) return { refused: say('only an entry with an id can be come from; give it one first') }
  const changes = addEntry(notebook, {
    id: wanted, date,
    ...(isLast ? {} : { from: parent.id!.value }),
    ...(reason?.trim() ? { reason } : {}),
    ...(notebook.entries.length === 0 ? { asFound: true } : {}),
  })
  return { changes, reveal: { column: wanted, row: firstRow(notebook) } }
}

function goBack(notebook: Notebook, { column, id, date, reason }: Extract<Gesture, { kind: 'returnTo' }>): Answer {
  const wanted = freeId(notebook, id)
  return { changes: returnTo(notebook, entryAt(notebook, column), { id: wanted, date, reason }), reveal: { column: wanted, row: firstRow(notebook) } }
}

function duplicate(notebook: Notebook, { column, date }: Extract<Gesture, { kind: 'duplicateEntry' }>): Answer {
  const id = suggestId(notebook)
  return { changes: duplicateEntry(notebook, entryAt(notebook, column), { id, date }), reveal: { column: id, row: firstRow(notebook) } }
}

function insert(notebook: Notebook, { column, date, id, reason }: Extract<Gesture, { kind: 'insertEntry' }>): Answer {
  const wanted = freeId(notebook, id)
  const changes = insertEntry(notebook, entryAt(notebook, column), { id: wanted, date, ...(reason ? { reason } : {}) })
  return { changes, reveal: { column: wanted, row: firstRow(notebook) } }
}

function move(notebook: Notebook, { column, by }: Extract<Gesture, { kind: 'moveEntry' }>): Answer {
  const entry = entryAt(notebook, column)
  const changes = moveEntry(notebook, entry, by)
  // An entry without an id is named by its place, which is another one now.
  return { changes, reveal: { column: entry.key.startsWith('#') ? `#${entry.index + 1 + by}` : entry.key, row: '' } }
}

const firstRow = (notebook: Notebook): string => rowsOf(notebook).find(({ kind }) => kind !== 'group')?.row.key ?? ''

/** The id typed for a new entry, else one that is offered. @throws Refusal where it is taken */
function freeId(notebook: Notebook, typed: string | undefined): string {
  const wanted = typed?.trim().replace(/\s+/g, ' ') || suggestId(notebook)
  if (notebook.entries.some((entry) => entry.id?.value === wanted)) throw new Refusal(say`‘${wanted}’ names another entry already`)
  return wanted
}

/** The id offered for the next entry. @example 'run-3' after 'run-2', 'as-found' for the first */
export function suggestId(notebook: Notebook): string {
  const taken = new Set(notebook.entries.flatMap((entry) => (entry.id ? [entry.id.value] : [])))
  const numbered = [...notebook.entries].reverse().find((entry) => /\d$/.test(entry.id?.value ?? ''))
  if (notebook.entries.length === 0) return 'as-found'
  const match = /^(.*?)(\d{1,9})$/.exec(numbered?.id?.value ?? 'run-0')!
  for (let n = Number(match[2]) + 1; ; n++) if (!taken.has(`${match[1]}${n}`)) return `${match[1]}${n}`
}

function annotate(notebook: Notebook, { column, row, text }: Extract<Gesture, { kind: 'annotate' }>): TextChange[] {
  const entry = entryAt(notebook, column)
  if (!rowsOf(notebook).some((source) => source.kind !== 'group' && source.row.key === row)) throw new Refusal(say('there is no such row any more'))
  const about = row.replace(/^settings\//, '')
  if (text.trim() !== '') return setPath(notebook.text, entry.node, ['remarks', about], text.trim(), asProse)
  const wider = about.replace(/\/(?:left|right)$|\.[a-z]+$/, '')
  if (!scalarAt(entry.node, ['remarks', about]) && scalarAt(entry.node, ['remarks', wider])) {
    throw new Refusal(say`this remark is about \`${wider}\` as a whole; change it in the text`)
  }
  return clearPath(notebook.text, entry.node, ['remarks', about])
}

const findingOf = (findings: readonly Finding[], id: number): Finding | undefined => findings[findingIds(findings).indexOf(id)]

function applyFix(finding: Finding | undefined, fix: number): Answer {
  const chosen = finding?.fixes?.[fix]
  return chosen ? { changes: chosen.changes } : { refused: say('this finding is gone') }
}

function accept(notebook: Notebook, finding: Finding | undefined, reason: string): Answer {
  if (!finding) return { refused: say('this finding is gone') }
  if (reason.trim() === '') return { refused: say('a finding is accepted with a reason, so that the next reader can judge it') }
  return { changes: acceptFinding(notebook, finding, reason.trim()) }
}

/** Writes a new notebook into a file that holds nothing, or comments only, which stay on top. */
function begin({ text, root }: Notebook, { start, date, name }: Extract<Gesture, { kind: 'begin' }>): Answer {
  const architecture = findArchitecture(start)
  if (!architecture) return { refused: say('there is no such kind of machine to begin from') }
  if (root) return { refused: say('this file holds something already: go on in the text, or begin in an empty file') }
  const written = writeNotebook(architecture, { date, cautions, ...(name ? { name } : {}) })
  if (text.trim() === '') return { changes: [{ start: text.startsWith('\ufeff') ? 1 : 0, end: text.length, text: written }] }
  return { changes: [{ start: text.length, end: text.length, text: `${text.endsWith('\n') ? '\n' : '\n\n'}${written}` }] }
}
