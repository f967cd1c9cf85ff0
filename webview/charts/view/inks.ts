import { inkCount } from './manners'
import { make } from './make'

/** What a canvas draws with, as the theme has it now. */
export interface Inks {
  text: string
  line: string
  ground: string
  window: string
  series: string[]
  /** In CSS px, as a canvas takes it. */
  font: string
  fontSize: number
}

const roles = ['text', 'line', 'ground', 'window'] as const

/** A canvas knows no CSS variables, so each ink is put on an element and read off it again. charts.css says which they are. */
export class InkPot {
  readonly element = make('div', 'chart-inks', { 'aria-hidden': 'true' })
  readonly #probes = new Map<string, HTMLElement>()

  constructor() {
    for (const role of [...roles, ...Array.from({ length: inkCount }, (_, series) => `series-${series}`)]) {
      const probe = make('span', `chart-ink chart-ink-${role}`)
      this.#probes.set(role, probe)
      this.element.append(probe)
    }
  }

  read(): Inks {
    const { fontFamily, fontSize } = getComputedStyle(this.element)
    const ink = (role: string) => getComputedStyle(this.#probes.get(role)!).color
    return {
      text: ink('text'), line: ink('line'), ground: ink('ground'), window: ink('window'),
      series: Array.from({ length: inkCount }, (_, series) => ink(`series-${series}`)),
      font: `${fontSize} ${fontFamily}`, fontSize: parseFloat(fontSize),
    }
  }
}

/** Calls back when the theme may have changed: the editor then changes the variables on the root and the classes of the body. */
export function onThemeChange(changed: () => void): () => void {
  const observer = new MutationObserver(changed)
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ['style', 'class'] })
  observer.observe(document.body, { attributes: true, attributeFilter: ['class'] })
  return () => observer.disconnect()
}
