import type { Notebook } from '../notebook/notebook'
import { readNotebook } from '../notebook/readNotebook'
import { cutNotebook } from './cutBlocks'
import { evenOut } from './evenOut'
import { mergeInsides } from './mergeBlocks'
import { mergeLines } from './mergeLines'
import { nameParents, type Version } from './nameParents'
import { newErrors } from './newErrors'
import { printPieces, type Conflict, type Markers, type Piece } from './piece'
import { mapThree, settle, type Three } from './threeWay'

/** A merged text. Without conflicts it is whole and no worse than either side; else a person has to look at it. */
export interface Merged {
  text: string
  conflicts: Conflict[]
}

/**
 * Merges two versions of a notebook that began from the same one, entry by entry and adjuster by adjuster. Whole lines
 * of either side are taken over as they are; only where both wrote different things about the same one are there marks.
 * What is no notebook, or does not parse, is merged by lines.
 */
export function mergeNotebooks(texts: Three<string>, markers: Markers): Merged {
  const settled = settle(texts)
  if (settled) return { text: settled.value, conflicts: [] }
  const { texts: even, restore } = evenOut(texts)
  const print = (pieces: Piece[]): Merged => {
    const { text, conflicts } = printPieces(pieces, markers)
    return { text: restore(text, conflicts.length > 0), conflicts }
  }
  const byLines = () => print(mergeLines(even, 'both sides changed this'))
  const notebooks = mapThree(even, (text) => readNotebook(text))
  if (notebooks.ours.broken || notebooks.theirs.broken) return byLines()
  const check = (merged: Merged) => ({ ...merged, conflicts: merged.conflicts.length > 0 ? merged.conflicts : newErrors(merged.text, notebooks.ours, notebooks.theirs) })
  const pieces = mergeParts(notebooks)
  const merged = pieces && check(print(pieces))
  if (merged && (merged.conflicts.length === 0 || !readNotebook(merged.text).broken)) return merged
  // Marks are no YAML either, so only a text without any can be worse than one merged by lines.
  if (merged && pieces.some((piece) => typeof piece !== 'string')) return merged
  return check(byLines())
}

/** `undefined` where a version is not written one thing a line. */
function mergeParts(notebooks: Three<Notebook>): Piece[] | undefined {
  const settled = settle(mapThree(notebooks, ({ text }) => text))
  if (settled) return [settled.value]
  const versions = cutAll(notebooks)
  if (!versions) return undefined
  const { ours, theirs, disputed } = nameParents(versions)
  const again = (text: string, notebook: Notebook) => (text === notebook.text ? notebook : readNotebook(text))
  const named = cutAll({ base: notebooks.base, ours: again(ours, notebooks.ours), theirs: again(theirs, notebooks.theirs) })
  return named && mergeInsides(mapThree(named, ({ inside }) => inside), '', disputed)
}

function cutAll(notebooks: Three<Notebook>): Three<Version> | undefined {
  const { base, ours, theirs } = mapThree(notebooks, (notebook): Version | undefined => {
    const inside = notebook.broken ? undefined : cutNotebook(notebook.text, notebook.root)
    return inside && { notebook, inside }
  })
  return base && ours && theirs && { base, ours, theirs }
}
