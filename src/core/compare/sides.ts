import { wordsAt } from '../notebook/machine'
import type { Entry } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'
import { lineAndColumn } from '../text'
import { say } from '../words/say'
import type { CompareSide, SideEntry, StateRef } from './comparison'
import type { State } from './settingRow'

/** A state without an entry named is that of the last one. */
export function withEntry(ref: StateRef): StateRef {
  const entry = ref.entry ?? ref.notebook.entries.at(-1)
  return entry ? { ...ref, entry } : ref
}

/** `undefined` where there is nothing that can be relied on. */
export function stateOf({ notebook, entry, missing }: StateRef): State | undefined {
  return entry && !notebook.broken && missing === undefined ? { notebook, entry } : undefined
}

/** A side's head: what it is called, its entry, and what keeps it from being compared. */
export function sideOf({ notebook, entry, file, readOnly, missing }: StateRef): CompareSide {
  if (missing !== undefined) return { title: file, file, missing, ...(readOnly === undefined ? {} : { readOnly }) }
  const trouble = troubleOf(notebook, entry)
  return {
    title: wordsAt(notebook, ['machine', 'name']) || file, file,
    ...(readOnly === undefined ? {} : { readOnly }),
    ...(trouble ? { trouble } : {}),
    ...(entry && !trouble ? { entry: entryOf(entry) } : {}),
  }
}

function troubleOf({ broken, text }: StateRef['notebook'], entry: Entry | undefined): CompareSide['trouble'] {
  if (broken) return { message: broken.message, line: lineAndColumn(text, broken.range.start).line + 1, text }
  return entry ? undefined : { message: say('this notebook has no entries yet'), line: 1 }
}

function entryOf(entry: Entry): SideEntry {
  return {
    key: entry.key, date: entry.date?.value ?? '', reason: entry.reason?.value.trim() ?? '', asFound: entry.asFound, baseline: entry.baseline,
    verdict: scalarAt(entry.node, ['verdict'])?.text ?? '', ...(entry.from ? { from: entry.from.value } : {}),
  }
}
