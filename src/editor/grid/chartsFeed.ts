import type { ChartsView } from '../../core/charts/view'
import type { FromWebview } from '../../protocol'

type Asked = Pick<Extract<FromWebview, { type: 'chartsAsked' }>, 'group' | 'column' | 'between' | 'within'>

/** Keeps the charts that a page shows as new as the notebook, and sends them only where they have changed. */
export class ChartsFeed {
  #asked: Asked | undefined
  #given = ''

  constructor(readonly build: (asked: Asked) => ChartsView, readonly give: (charts: ChartsView) => void) {}

  /** Charts are shown from now on; given at once. */
  ask(asked: Asked): void {
    this.#asked = asked
    this.#given = ''
    this.update()
  }

  leave(): void {
    this.#asked = undefined
  }

  /** The notebook, or what it is shown in, may have changed. */
  update(): void {
    if (!this.#asked) return
    const charts = this.build(this.#asked)
    const given = JSON.stringify(charts)
    if (given === this.#given) return
    this.#given = given
    this.give(charts)
  }
}
