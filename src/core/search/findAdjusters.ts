import { slotsOf, type Adjuster } from '../adjusters/adjuster'
import type { Notebook } from '../notebook/notebook'
import { fold } from './readQuery'

/** The adjusters that go by a name: `fork_rebound`, `Fork rebound`; `rebound` is all that control it. */
export function findAdjusters(notebook: Notebook, name: string): Adjuster[] {
  const wanted = plain(name)
  const all = [...notebook.adjusters.values()]
  const named = all.filter(({ id, label }) => plain(id) === wanted || plain(label) === wanted)
  return named.length > 0 ? named : all.filter(({ control }) => plain(control.name) === wanted)
}

/** What can be asked about in a notebook, for hints. */
export function adjusterNames(notebook: Notebook): string[] {
  return [...notebook.adjusters.values()].filter((adjuster) => slotsOf(adjuster).length > 0).map(({ id }) => id)
}

const plain = (name: string) => fold(name).replace(/[\s_-]+/g, ' ').trim()
