import { say } from '../strings'
import { findingName, headerMore, historyMore, spokenMore, spokenName } from '../model/describe'
import { blockOf, inBlock, isRange, type Block } from '../model/selection'
import type { Session } from '../model/session'
import { HEADER, LABELS, type Spot } from '../model/spot'
import type { HeaderSlot } from './headerSlot'
import { widthOf } from './sizes'
import type { Slot, WordsSlot } from './slots'

/** What of the session every cell's look depends on; worked out once a drawing. */
export interface Look {
  session: Session
  active: Spot
  block: Block
  range: boolean
  /** How many entries stay beside the labels, from the first on. */
  pinned: number
  labelLines: readonly number[]
}

export function lookOf(session: Session, layout: Pick<Look, 'pinned' | 'labelLines'> | undefined): Look {
  const { selection } = session
  return { session, active: selection.active, block: blockOf(selection), range: isRange(selection), pinned: layout?.pinned ?? 0, labelLines: layout?.labelLines ?? [] }
}

export function paintCell(slot: Slot, row: number, column: number, look: Look): void {
  const { model, pending } = look.session
  const rowFacts = model.row(row)!
  const cell = model.cell({ row, column })
  if (!cell) return
  const place = model.placeOf({ row, column })!
  const typed = pending.at(place)
  const findings = model.findingsOf(cell.findings)
  const worst = typed?.state === 'refused' ? 'error' : cell.worst
  slot.text = typed ? typed.text : cell.text
  slot.className = [
    'cell', `is-${cell.state}`, rowFacts.figures && 'figures', rowFacts.lines > 1 && 'several', rowFacts.kind === 'computed' && 'is-computed',
    !isShort(slot.text) && 'is-long', cell.changed && 'is-changed', typed && `is-${typed.state}`, worst && `mark-${worst}`, cell.remark && 'has-remark', column < look.pinned && 'is-pinned',
    ...selectionClasses(row, column, look),
  ].filter(Boolean).join(' ')
  slot.set('aria-colindex', String(column + 2))
  slot.set('aria-selected', inBlock(look.block, row, column) ? 'true' : 'false')
  slot.set('aria-readonly', rowFacts.kind === 'computed' || !model.writable ? 'true' : undefined)
  slot.set('aria-invalid', worst === 'error' || worst === 'warning' ? 'true' : undefined)
  slot.set('title', [...findings.map(findingName), cell.remark && say('cell.remark', cell.remark)].filter(Boolean).join('\n'))
  speak(slot, { row, column }, look)
}

export function paintHeader(slot: HeaderSlot, column: number, look: Look): void {
  const { model } = look.session
  const facts = model.column(column)!
  const findings = model.findingsOf(facts.findings)
  const worst = findings[0]?.severity
  const from = facts.from ? say('entry.from', facts.from) : ''
  const more = [...headerMore(facts), ...(column < model.pinned ? [say('entry.pinned')] : [])]
  const said = [...more.filter((fact) => plain(fact) !== plain(facts.id)), from].filter(Boolean)
  // Where the history branches there is a line more: for all but the date.
  const lines = model.lanes ? [[facts.date], said.filter((fact) => fact !== facts.date)] : [said]
  slot.write(facts.id, ...[0, 1].map((line) => lines[line]?.join(' · ') ?? ''))
  slot.draw(model.lanes?.marks[column], widthOf(facts, look.session.widths), model.lanes?.count ?? 0)
  slot.className = ['cell', 'header-cell', column < look.pinned && 'is-pinned', worst && `mark-${worst}`, column === look.active.column && 'is-lit', ...selectionClasses(HEADER, column, look)]
    .filter(Boolean).join(' ')
  slot.set('aria-colindex', String(column + 2))
  slot.set('aria-selected', inBlock(look.block, HEADER, column) ? 'true' : 'false')
  slot.set('title', [[...more, ...historyMore(model, column)].join(' · '), facts.reason, ...findings.map(findingName)].filter(Boolean).join('\n'))
  speak(slot, { row: HEADER, column }, look)
}

/** An entry that is named `as-found` need not say so twice. */
const plain = (text: string) => text.replace(/[^\p{L}\p{N}]/gu, '').toLowerCase()

export function paintLabel(label: WordsSlot, row: number, look: Look): void {
  const { model } = look.session
  if (row === HEADER) {
    label.write(say('grid.corner'), '', '')
    label.className = 'label corner'
    label.set('aria-colindex', '1')
    return
  }
  const facts = model.row(row)!
  const isFolded = facts.kind === 'group' && model.hiding.folded.has(facts.key)
  label.write(facts.label, isFolded ? say('group.folded') : (facts.detail ?? ''), facts.unit ?? '')
  label.set('aria-expanded', facts.kind === 'group' ? String(!isFolded) : undefined)
  label.className = ['label', `label-${facts.kind}`, isFolded && 'is-folded', (look.labelLines[row] ?? 1) > 1 && 'is-long', row === look.active.row && 'is-lit', ...selectionClasses(row, LABELS, look)].filter(Boolean).join(' ')
  label.set('aria-colindex', '1')
  label.set('aria-selected', inBlock(look.block, row, LABELS) ? 'true' : 'false')
  label.set('aria-colspan', facts.kind === 'group' && model.ground.columns > 0 ? String(model.ground.columns + 1) : undefined)
  label.set('title', facts.about)
  speak(label, { row, column: LABELS }, look)
}

/**
 * Whether a text fits its cell for certain, as most positions and figures do. Only the others are clipped: every
 * clip is one more piece for the browser to put together in each frame of scrolling.
 */
const isShort = (text: string) => /^[\d ,./+\-½¼¾]{0,8}(in|out)?$/.test(text)

function selectionClasses(row: number, column: number, { active, block, range }: Look): (string | false)[] {
  return [
    row === active.row && column === active.column && 'is-active',
    range && inBlock(block, row, column) && 'is-selected',
  ]
}

/** The current cell alone carries a spoken name: the others are read by their text, row and column. */
function speak(slot: Slot, spot: Spot, { session, active }: Look): void {
  const current = spot.row === active.row && spot.column === active.column
  const typed = current ? session.pendingAt(spot) : undefined
  slot.set('aria-label', current ? spokenName(session.model, spot, typed) : undefined)
  slot.set('aria-description', current ? spokenMore(session.model, spot, typed) : undefined)
}
