import { applyChanges, type TextChange } from '../../text'
import { say } from '../../words/say'
import type { Notebook } from '../notebook'
import { readNotebook } from '../readNotebook'
import { pairOf, type MapNode } from '../tree'
import { composeChanges } from './composeChanges'
import { Refusal } from './refusal'
import { removePath } from './setPath'

/** The entries that set an adjuster or remark on it, by their keys. */
export function usesOf(notebook: Notebook, id: string): string[] {
  return notebook.entries.filter(({ node }) => pathsIn(node, id).length > 0).map(({ key }) => key)
}

/**
 * Takes an adjuster out and, where that is wanted, every position and remark that entries hold of it.
 *
 * @throws Refusal where it is in use and that is to stay, and where another adjuster sits in it
 */
export function removeAdjuster(notebook: Notebook, id: string, withPositions: boolean): TextChange[] {
  const adjuster = notebook.adjusters.get(id)
  if (!adjuster || !notebook.root) throw new Refusal(say('there is no such adjuster any more'))
  const inside = [...notebook.adjusters.values()].find((other) => other.inside === id)
  if (inside) throw new Refusal(say`${inside.label} is said to sit inside of it; change that first`)
  const uses = usesOf(notebook, id)
  if (uses.length > 0 && !withPositions) throw new Refusal(say`${adjuster.label} is set in ${listed(uses)}; its positions would be lost`)
  const steps: TextChange[][] = []
  let now = notebook
  const go = (changes: TextChange[]) => {
    if (changes.length === 0) return
    steps.push(changes)
    now = readNotebook(applyChanges(now.text, changes))
  }
  // From the last to the first and one value at a time, since two of one entry may share their lines.
  for (let index = notebook.entries.length - 1; index >= 0; index--) {
    for (const path of pathsIn(notebook.entries[index]!.node, id)) go(removePath(now.text, now.entries[index]!.node, path))
  }
  go(removePath(now.text, now.root!, ['adjusters', id]))
  return composeChanges(notebook.text.length, steps)
}

function pathsIn(node: MapNode, id: string): string[][] {
  const remarks = pairOf(node, 'remarks')?.value
  const about = remarks?.kind === 'map' ? remarks.pairs.map(({ key }) => key.text).filter((name) => [id, `${id}/left`, `${id}/right`].includes(name)) : []
  return [...(pairOf(pairOf(node, 'settings')?.value, id) ? [['settings', id]] : []), ...about.map((name) => ['remarks', name])]
}

function listed(keys: readonly string[]): string {
  const shown = keys.slice(0, 3).map((key) => `‘${key}’`).join(', ')
  return keys.length > 3 ? say`${shown} and ${keys.length - 3} more` : shown
}
