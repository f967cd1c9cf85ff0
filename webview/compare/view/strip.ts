import { make } from '../../page/dom'
import type { SideName } from '../../../src/protocol'
import type { Value } from '../model/lines'
import type { Session } from '../model/session'
import { filled } from '../model/walk'
import { say } from '../strings'

/** The strip below the table: what more there is to say of the current cell, and what Enter does. Its height stays. */
export class Strip {
  readonly element = make('footer', 'strip')
  readonly #words = make('p', 'strip-words', { id: 'strip' })

  constructor(readonly session: Session) {
    this.element.append(this.#words)
  }

  draw(): void {
    this.#words.textContent = aboutActive(this.session)
  }
}

function aboutActive({ activeLine: line, active }: Session): string {
  if (!line || !active) return ''
  const column = filled(line, active.column)
  const about = column === 'label' ? line.about : column === 'change' ? line.change?.about : line[column].about
  const sides: readonly SideName[] = column === 'left' ? ['left'] : column === 'right' ? ['right'] : ['right', 'left']
  const leads = sides.map((side) => leadsTo(line[side])).find(Boolean)
  return [about, leads].filter(Boolean).join(' · ')
}

function leadsTo({ place, line }: Value): string | undefined {
  if (place) return say('grid.keys')
  return line === undefined ? undefined : say('grid.keys.line')
}
