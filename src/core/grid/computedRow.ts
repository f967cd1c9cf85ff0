import type { Outcome, Result } from '../compute/working/result'
import type { DisplayUnits } from '../notation/displayUnits'
import { recall } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'

/** A row that is worked out: what it is called and how it comes about. A new one is a row in one of the lists beside this file. */
export type Computed = NumberRow | WordsRow

interface Common {
  /** As in the export where it is exported: `front.static_sag_mm`. */
  key: string
  group: 'sag_front' | 'sag_rear' | 'springs' | 'loads' | 'geometry' | 'bounce' | 'ride' | 'log'
  label: string
  detail?: string
  about: string
  /** Whether a notebook has anything for this row to speak of; a row without it is always there. */
  wanted?: (notebook: Notebook) => boolean
  /** Further computations that the row's number stands on, for who opens it. */
  steps?: (notebook: Notebook, entry: Entry) => { name: string; outcome: Outcome }[]
}

export interface NumberRow extends Common {
  /** In a unit of the format; it is shown in the one that whoever looks has chosen. */
  unit: string
  digits: number
  /** Shown as `18.2 ± 0.9`, with one standard uncertainty. */
  plusMinus?: boolean
  compute: (notebook: Notebook, entry: Entry) => Outcome
  /** A sentence more about the number. */
  note?: (notebook: Notebook, entry: Entry, result: Result, units: DisplayUnits) => string | undefined
}

export interface WordsRow extends Common {
  say: (notebook: Notebook, entry: Entry, units: DisplayUnits) => Outcome<{ text: string; about?: string }>
}

type Has = (notebook: Notebook, entry: Entry) => boolean

const questions: Has[] = []
const answers = new WeakMap<Notebook, readonly boolean[]>()

/** True where any entry of a notebook has what a row needs. Each entry is asked for all rows at once, and once for as long as it says the same. */
export function anyEntry(has: Has): (notebook: Notebook) => boolean {
  const question = questions.push(has) - 1
  return (notebook) => answersOf(notebook)[question]!
}

function answersOf(notebook: Notebook): readonly boolean[] {
  const known = answers.get(notebook)
  if (known) return known
  const found = questions.map(() => false)
  for (const entry of notebook.entries) {
    const here = answersIn(notebook, entry)
    for (let at = 0; at < here.length; at++) if (here[at]) found[at] = true
  }
  answers.set(notebook, found)
  return found
}

/** What an entry has of all that rows need. */
export function answersIn(notebook: Notebook, entry: Entry): readonly boolean[] {
  return recall(entry, questions, notebook.logs, () => questions.map((has) => has(notebook, entry)))
}
