import type { Turn, TurnGroup, TurnList, TurnStep, Unreachable } from '../../../src/core/compare/turns'
import { make } from '../../page/dom'
import { tickOf, tickOfFirst } from '../model/ticks'
import { say } from '../strings'

let made = 0
const nextId = () => `words-${made++}`

/** Makes the parts of a list. Each box has the name of its tick in `data-tick`. */
export function listParts(list: TurnList, drawings: Record<string, string>): HTMLElement[] {
  if (list.refused !== undefined) return [make('p', 'refused', { role: 'alert' }, make('span', 'mark mark-error', { 'aria-hidden': 'true' }), list.refused)]
  if (list.cannot.length + list.groups.length === 0) return [make('p', 'nothing', {}, say('nothing'))]
  const said = new Set(list.cautions)
  return [
    ...(list.cannot.length === 0 ? [] : [warningPart('cannot', 'error', say('cannot.title'), list.cannot.map(cannotItem))]),
    ...(list.cautions.length === 0 ? [] : [warningPart('care', 'warning', say('care.title'), list.cautions.map((caution) => make('li', '', {}, caution)))]),
    ...list.groups.map((group) => groupPart(group, said, drawings)),
    ...(list.groups.length === 0 ? [make('p', 'nothing', {}, say('nothing.else'))] : []),
  ]
}

function warningPart(kind: string, severity: 'error' | 'warning', heading: string, items: readonly HTMLElement[]): HTMLElement {
  const title = make('h2', '', {}, make('span', `mark mark-${severity}`, { 'aria-hidden': 'true' }), heading)
  return make('section', `warning is-${kind}`, {}, title, make('ul', '', {}, ...items))
}

function cannotItem({ label, legWords, place, why, instead }: Unreachable): HTMLElement {
  const name = `${label}${legWords ? `, ${legWords}` : ''}${place ? ` (${place})` : ''}`
  return make('li', '', {}, make('strong', '', {}, name), `: ${why}. `, instead)
}

function groupPart({ key, label, first, steps }: TurnGroup, said: ReadonlySet<string>, drawings: Record<string, string>): HTMLElement {
  const firsts = first.map((sentence) => make('li', 'step', {}, box(tickOfFirst(sentence), [], sentence)))
  return make('section', `group is-${key}`, {}, make('h2', '', {}, label), make('ul', 'steps', {}, ...firsts, ...steps.map((step) => stepPart(step, said, drawings))))
}

function stepPart({ label, place, tool, alike, turns, cautions }: TurnStep, said: ReadonlySet<string>, drawings: Record<string, string>): HTMLElement {
  const where = [place, tool].filter(Boolean).join(' · ')
  const step = make('li', 'step', {}, make('h3', '', {}, make('span', 'step-label', {}, label), ...(where ? [' ', make('span', 'step-where', {}, where)] : [])))
  const parts = alike ? [turns] : turns.map((turn) => [turn])
  for (const together of parts) {
    const way = wayPart(together[0]!, drawings)
    step.append(make('div', 'move', {}, ...together.map((turn) => turnBox(turn, way.id)), way))
  }
  for (const caution of cautions.filter((each) => !said.has(each))) step.append(make('p', 'step-care', {}, make('span', 'mark mark-warning', { 'aria-hidden': 'true' }), make('span', '', {}, say('care', caution))))
  return step
}

function turnBox(turn: Turn, describedBy: string): HTMLElement {
  const { legWords, amount, also, from, to } = turn
  const words = [
    ...(legWords ? [make('span', 'turn-leg', {}, legWords), ' '] : []),
    make('span', 'turn-amount', {}, amount), ...(also ? [` (${also})`] : []), ' ',
    make('span', 'turn-way', {}, say('turn.way', from, to)),
  ]
  return box(tickOf(turn), [['aria-describedby', describedBy]], ...words)
}

/** Which way and how to check, with the drawing, which says the same as the words beside it. */
function wayPart({ row, how, check }: Turn, drawings: Record<string, string>): HTMLElement {
  const drawing = drawings[row]
  const words = make('div', 'way-words', {}, make('p', 'way-how', {}, how), make('p', 'way-check', {}, check))
  return make('div', 'way', { id: nextId() }, ...(drawing === undefined ? [] : [picture(drawing)]), words)
}

function picture(svg: string): HTMLElement {
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement
  const frame = make('div', 'drawing', { 'aria-hidden': 'true' })
  if (parsed.nodeName === 'svg') frame.append(document.importNode(parsed, true))
  return frame
}

/** A native box in its label, so that all of the line can be hit with a glove on. */
function box(tick: string, attributes: [string, string][], ...words: (Node | string)[]): HTMLElement {
  const input = make('input', 'tick', { type: 'checkbox', 'data-tick': tick, ...Object.fromEntries(attributes) })
  return make('label', 'turn', {}, input, make('span', 'turn-words', {}, ...words))
}
