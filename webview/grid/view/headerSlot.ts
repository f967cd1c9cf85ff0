import type { LaneMarks } from '../model/lanes'
import { drawLanes, makeLanes } from './laneDrawing'
import { WordsSlot } from './slots'

/** An entry's header: its name, its facts, where it comes from, and over them the history where it branches. */
export class HeaderSlot extends WordsSlot {
  readonly #lanes = makeLanes()
  #drawn = ''

  constructor() {
    super('columnheader', ['header-id', 'header-more', 'header-from'])
    this.element.prepend(this.#lanes)
  }

  draw(marks: LaneMarks | undefined, width: number, lanes: number): void {
    const key = marks ? JSON.stringify([marks, width, lanes]) : ''
    if (key === this.#drawn) return
    this.#drawn = key
    if (marks) drawLanes(this.#lanes, marks, width, lanes)
    else this.#lanes.replaceChildren()
  }
}
