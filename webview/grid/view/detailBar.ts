import { createButton } from '../../controls'
import type { GridFinding } from '../../../src/core/grid/view'
import { say } from '../strings'
import { headerMore, historyMore, spotName, withUnit } from '../model/describe'
import type { Session } from '../model/session'
import { HEADER, LABELS } from '../model/spot'
import { make, setAttribute } from './dom'
import { severityMark } from './findingLine'

/**
 * The strip above the grid: where the current cell is, all of what it holds, what is wrong with it and what can be
 * done about that. Its height does not depend on the cell, so that the grid beneath never jumps.
 */
export class DetailBar {
  readonly element = make('section', 'detail')
  #drawn = ''

  constructor(readonly session: Session, readonly accept: (finding: GridFinding, anchor: HTMLElement) => void) {}

  draw(): void {
    const { session } = this
    const facts = factsOf(session)
    const findings = session.model.findingsAt(session.active)
    const canFix = session.model.writable
    const key = JSON.stringify([facts, findings, canFix])
    if (key === this.#drawn) return
    this.#drawn = key
    setAttribute(this.element, 'aria-label', say('detail.name'))
    const said = make('div', 'detail-said', {}, make('div', 'detail-place', {}, ...facts.place), make('div', 'detail-text', {}, facts.text))
    for (const more of facts.more) said.append(make('div', 'detail-more', {}, more))
    const about = make('ul', 'detail-findings', {}, ...findings.map((finding) => this.#line(finding, canFix)))
    this.element.replaceChildren(said, ...(findings.length > 0 ? [about] : []))
    // What does not fit, as on a small or enlarged page, can be scrolled by keys too. Looked at once all is drawn, since looking makes the page lay out.
    requestAnimationFrame(() => {
      for (const part of [said, about]) if (part.scrollHeight > part.clientHeight + 1) part.tabIndex = 0
    })
  }

  #line(finding: GridFinding, canFix: boolean): HTMLElement {
    const line = make('li', 'finding', {}, severityMark(finding.severity), make('span', 'finding-message', {}, finding.message))
    if (!canFix) return line
    const buttons = finding.fixes.map((title, fix) => createButton(title, 'plain', () => void this.#fix(finding.id, fix)).element)
    const accept = createButton(say('findings.accept'), 'quiet', () => this.accept(finding, accept.element))
    line.append(make('span', 'finding-buttons', {}, ...buttons, accept.element))
    return line
  }

  async #fix(finding: number, fix: number): Promise<void> {
    const { refused } = await this.session.ask({ kind: 'applyFix', finding, fix })
    this.session.note(refused === undefined ? undefined : say('refused.title', refused))
    this.session.ports.changed({ kind: 'focus' })
  }
}

interface Facts {
  place: HTMLElement[] | string[]
  text: string
  more: string[]
}

function factsOf({ model, active, pending, activePlace }: Session): Facts {
  const place = [spotName(model, active)]
  const column = model.column(active.column)
  const row = model.row(active.row)
  if (active.row === HEADER && column) return { place, text: column.reason, more: [[...headerMore(column), ...historyMore(model, active.column)].join(' · ')] }
  if (active.column === LABELS || !row) return { place, text: row?.about ?? '', more: [] }
  const cell = model.cell(active)
  const typed = pending.at(activePlace)
  const text = typed?.text ?? cell?.text ?? ''
  const state = cell?.state === 'carried' ? say('cell.carried') : cell?.changed ? say('cell.changed') : cell?.state === 'computed' ? say('cell.computed') : ''
  return {
    place: [`${place[0]}${column?.date ? ` · ${column.date}` : ''}${state ? ` · ${state}` : ''}`],
    text: typed ? text : withUnit(text, row.unit),
    more: [cell?.about, cell?.remark && say('cell.remark', cell.remark)].filter((each): each is string => Boolean(each)),
  }
}
