import type { CompareSide } from '../../../src/core/compare/comparison'
import type { SideName } from '../../../src/protocol'
import { createButton } from '../../controls'
import { make } from '../../page/dom'
import type { Session } from '../model/session'
import { say } from '../strings'

/** A side that cannot be compared: why, and its text as it is written, with the line of the error. */
export class TextPane {
  readonly element = make('section', 'pane')
  #drawn = ''

  constructor(readonly session: Session, readonly side: SideName) {
    this.element.hidden = true
  }

  /** Shows the side's trouble; with none the pane is hidden. */
  draw(shown: CompareSide | undefined): void {
    const { trouble, missing } = shown ?? {}
    this.element.hidden = !trouble && missing === undefined
    const drawn = JSON.stringify(shown)
    if (!shown || this.element.hidden || drawn === this.#drawn) return
    this.#drawn = drawn
    this.element.setAttribute('aria-label', `${say(this.side === 'left' ? 'side.left' : 'side.right')}: ${say('trouble.title')}`)
    const text = trouble?.text === undefined ? undefined : textOf(shown.file, trouble.text, trouble.line)
    this.element.replaceChildren(this.#head(trouble ? say('trouble.line', trouble.line, trouble.message) : missing!, trouble?.line), ...(text ? [text.element] : []))
    // Into the middle of its own box: the page itself must not move.
    if (text?.wrong) text.element.scrollTop = text.wrong.offsetTop - text.element.clientHeight / 2
  }

  #head(message: string, line: number | undefined): HTMLElement {
    const choose = createButton(say('trouble.choose'), 'plain', () => void this.session.do({ kind: 'choose', side: this.side }))
    const open = line === undefined ? [] : [createButton(say('trouble.open', line), 'plain', () => this.session.ports.send({ type: 'lineOpened', side: this.side, line }))]
    return make(
      'div', 'pane-head', {}, make('span', 'mark mark-error', { 'aria-hidden': 'true' }), make('p', 'pane-why', {}, message),
      make('div', 'pane-buttons', {}, ...open.map(({ element }) => element), choose.element),
    )
  }
}

function textOf(file: string, text: string, wrongLine: number): { element: HTMLElement; wrong?: HTMLElement } {
  const lines = text.split(/\r\n|\r|\n/).map((each, at) => {
    const isWrong = at + 1 === wrongLine
    const number = make('span', 'text-number', { 'aria-hidden': 'true' }, String(at + 1))
    return make('div', isWrong ? 'text-line is-wrong' : 'text-line', {}, number, make('span', 'text-words', {}, each || ' '))
  })
  const wrong = lines[wrongLine - 1]
  return { element: make('div', 'text', { tabindex: '0', role: 'region', 'aria-label': say('trouble.text', file) }, ...lines), ...(wrong ? { wrong } : {}) }
}
