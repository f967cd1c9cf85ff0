import type { DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'

/** In the order in which the trade works: what comes first is put right first, one thing at a time. */
export const topics = ['figures', 'legs', 'friction', 'sag', 'springs', 'travel', 'rebound', 'geometry', 'ride'] as const
export type Topic = (typeof topics)[number]

/** One next step for the state of an entry. A starting point with its reason, never a promise. */
export interface Advice {
  topic: Topic
  /** `change`: something to turn or fit. `measure`: the evidence for a change is not there yet. `ride`: nothing asks for a change. */
  kind: 'change' | 'measure' | 'ride'
  /** What to do, one thing. */
  step: string
  /** What in this notebook speaks for it, and in which entry. */
  evidence: string[]
  /** What it should do, in numbers where there are some. */
  expect: string[]
  assumes: string[]
}

/** One thing the trade looks at, told in the units asked for. `undefined` where it has nothing to say, and the next one is asked. */
export type Advisor = (notebook: Notebook, entry: Entry, units: DisplayUnits) => Advice | undefined
