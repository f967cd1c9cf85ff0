import type { Leg } from '../adjusters/adjuster'
import { Refusal } from '../notebook/edits/refusal'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt } from '../notebook/tree'
import { say } from '../words/say'

/** The adjuster and leg of a setting's row. An adjuster's name may hold a slash itself, so both readings are tried. @throws Refusal where it is gone */
export function slotOf(notebook: Notebook, entry: Entry, row: string): { id: string; leg?: Leg } | undefined {
  if (!row.startsWith('settings/')) return undefined
  const name = row.slice('settings/'.length)
  if (notebook.adjusters.get(name)?.legs.length === 0) return { id: name }
  const match = /^([^]*)\/(left|right)$/.exec(name)
  const adjuster = match && notebook.adjusters.get(match[1]!)
  const leg = adjuster?.legs.find((each) => each === match![2])
  if (!adjuster || !leg) throw new Refusal(say('there is no such adjuster any more'))
  // Where only one leg carries one, its position needs no leg's name.
  const isAlone = adjuster.legs.length === 1 && nodeAt(entry.node, ['settings', adjuster.id])?.kind !== 'map'
  return isAlone ? { id: adjuster.id } : { id: adjuster.id, leg }
}
