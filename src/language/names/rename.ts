import { renameEntry } from '../../core/notebook/edits/entries'
import { Refusal } from '../../core/notebook/edits/setPath'
import { proseText } from '../../core/notebook/edits/writeScalar'
import { findField } from '../../core/notebook/fields'
import type { Notebook } from '../../core/notebook/notebook'
import type { Range, TextChange } from '../../core/text'
import { say } from '../../core/words/say'
import { occurrenceAt, occurrencesIn, sameName, type Occurrence } from './occurrences'

/** The changes that rename something everywhere in the file, or a sentence that says why not. */
export type Renaming = { changes: TextChange[]; refused?: undefined } | { refused: string; changes?: undefined }

/** What would be renamed at an offset, or a sentence that says why nothing can be. */
export function findRenamable(notebook: Notebook, offset: number): { range: Range; name: string; refused?: undefined } | { refused: string } {
  const refused = whyNotEdited(notebook)
  if (refused !== undefined) return { refused }
  const at = occurrenceAt(notebook, offset)
  if (!at) return { refused: say('Only adjusters and entries can be renamed.') }
  const isDefined = sameName(notebook, at).some(({ role }) => role === 'definition')
  return isDefined ? { range: at.range, name: at.name } : { refused: at.of === 'adjuster' ? say`‘${at.name}’ is no adjuster of this machine.` : say`‘${at.name}’ is no entry of this notebook.` }
}

/** Renames the adjuster or entry at an offset, wherever the file names it. Never throws. */
export function renameAt(notebook: Notebook, offset: number, typed: string): Renaming {
  const found = findRenamable(notebook, offset)
  if (found.refused !== undefined) return { refused: found.refused }
  const at = occurrenceAt(notebook, offset)!
  const name = typed.trim()
  if (name === at.name) return { changes: [] }
  const refused = at.of === 'adjuster' ? whyNoAdjuster(notebook, name) : whyNoEntry(notebook, name)
  if (refused !== undefined) return { refused }
  return at.of === 'adjuster' ? { changes: sameName(notebook, at).map((each) => renamed(each, name)) } : renameEntryAt(notebook, at, name)
}

function whyNotEdited({ broken, newer }: Notebook): string | undefined {
  if (broken) return say`The text has an error, so nothing is renamed: ${broken.message}`
  return newer ? say('This notebook is written in a newer format. Update Detent to edit it.') : undefined
}

function renamed({ node, before, behind }: Occurrence, name: string): TextChange {
  // Written as for inside of braces, it is right outside of them too.
  return { ...node.range, text: proseText(before + name + behind, { flow: true, indent: '', lineEnd: '\n' }, node.style) }
}

function whyNoAdjuster(notebook: Notebook, name: string): string | undefined {
  if (name === '') return say('An adjuster needs a name.')
  if (!/^\p{L}[\p{L}\p{N}_-]*$/u.test(name)) return say`‘${name}’ is no name for an adjuster: write letters, digits, ‘_’ and ‘-’, a letter first.`
  if (occurrencesIn(notebook).some((each) => each.of === 'adjuster' && each.name === name)) return say`‘${name}’ is in this notebook already.`
  return findField(name) ? say`‘${name}’ is the name of something else in every entry.` : undefined
}

function whyNoEntry(notebook: Notebook, name: string): string | undefined {
  if (name === '') return say('An entry needs a name.')
  if (/[\x00-\x1f\x7f\u2028\u2029]/.test(name)) return say('An entry’s name is one line.')
  if (name.includes('#')) return say('A ‘#’ sets a file apart from its entry, so it cannot be in an entry’s name.')
  return occurrencesIn(notebook).some((each) => each.of === 'entry' && each.name === name) ? say`‘${name}’ is in this notebook already.` : undefined
}

function renameEntryAt(notebook: Notebook, at: Occurrence, name: string): Renaming {
  const entry = notebook.entries.find(({ id }) => id?.range.start === at.node.range.start) ?? notebook.entries.find(({ id }) => id?.value === at.name)
  if (!entry) return { refused: say`‘${at.name}’ is no entry of this notebook.` }
  try {
    return { changes: renameEntry(notebook, entry, name) }
  } catch (error) {
    if (error instanceof Refusal) return { refused: say`It cannot be renamed: ${error.message}.` }
    throw error
  }
}
