import { changeWords } from '../adjusters/changeWords'
import { isMissing, type Outcome } from '../compute/working/result'
import { fileUnits, printShown, type DisplayUnits } from '../notation/displayUnits'
import { fieldNodes, type Field } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'
import { countOf, isSame } from '../rules/standings'
import { lineEnd } from '../text'
import { say } from '../words/say'
import type { Computed, NumberRow } from './computedRow'
import type { RowSource } from './rows'
import type { Cell } from './view'

/** The cell of a row in an entry's column. */
export function cellOf(source: Exclude<RowSource, { kind: 'group' }>, notebook: Notebook, entry: Entry, units = fileUnits): Cell {
  switch (source.kind) {
    case 'setting': return settingCell(source.key, source.slot.adjuster.id, notebook, entry)
    case 'field': return fieldCell(source.field, notebook, entry)
    case 'computed': return computedCell(source.computed, notebook, entry, units)
  }
}

function settingCell(slot: string, adjusterId: string, notebook: Notebook, entry: Entry): Cell {
  const standing = entry.state.get(slot)
  if (!standing) return { state: 'empty', text: '', ...remarkOf(notebook, entry, [slot, adjusterId]) }
  const { setting, setIn } = standing
  const text = setting.node.text.trimEnd()
  if (setIn !== entry) return { state: 'carried', text, about: say`as in ${setIn.key}`, ...remarkOf(notebook, entry, [slot, adjusterId]) }
  return { state: 'set', text, ...changeOf(slot, entry), ...remarkOf(notebook, entry, [slot, adjusterId], setting.node.range.end) }
}

/** That a setting is another than it was, and by how much and to what end. */
function changeOf(slot: string, entry: Entry): { changed?: true; about?: string } {
  const [setting, before] = [entry.settings.get(slot), entry.inherited.get(slot)?.setting]
  const [now, then] = [countOf(setting), countOf(before)]
  if (!setting || !before || now === undefined || then === undefined || isSame(now, then)) return {}
  return { changed: true, about: say`${changeWords(setting.adjuster, now - then)}; before: ${before.node.text.trimEnd()}` }
}

function fieldCell(field: Field, notebook: Notebook, entry: Entry): Cell {
  const nodes = fieldNodes(entry, field)
  const remark = remarkOf(notebook, entry, [field.key, field.key.replace(/\.[a-z]+$/, '')], nodes.at(-1)?.range.end)
  return nodes.length > 0 ? { state: 'set', text: nodes.map(({ text }) => text.trimEnd()).join(', '), ...remark } : { state: 'empty', text: '', ...remark }
}

function computedCell(computed: Computed, notebook: Notebook, entry: Entry, units: DisplayUnits): Cell {
  const remark = remarkOf(notebook, entry, [`computed/${computed.key}`])
  const said = 'compute' in computed ? numberCell(computed, notebook, entry, units) : computed.say(notebook, entry, units)
  if (isMissing(said)) return { state: 'computed', text: '', about: say`needs ${said.missing.map((fact) => say(fact)).join(say(' and '))}`, ...remark }
  return { state: 'computed', text: said.text, ...(said.about ? { about: said.about } : {}), ...remark }
}

function numberCell({ compute, note, unit, digits, plusMinus }: NumberRow, notebook: Notebook, entry: Entry, units: DisplayUnits): Outcome<{ text: string; about?: string }> {
  const outcome = compute(notebook, entry)
  if (isMissing(outcome)) return outcome
  const about = note?.(notebook, entry, outcome, units)
  const { value, u } = outcome
  return { text: printShown(plusMinus && u !== undefined ? { value, u } : { value }, unit, digits, units), ...(about ? { about } : {}) }
}

/** What a person wrote about a value: under `remarks`, or as a comment behind it on its line. */
function remarkOf(notebook: Notebook, entry: Entry, names: readonly string[], end?: number): { remark?: string } {
  const said = names.map((name) => scalarAt(entry.node, ['remarks', name])?.text).find((text) => text !== undefined)
  const comment = end === undefined ? undefined : commentBehind(notebook.text, end)
  const remark = [said, comment].filter(Boolean).join(' · ')
  return remark === '' ? {} : { remark }
}

/** The comment behind a value, if nothing but closing brackets stands between. */
function commentBehind(text: string, end: number): string | undefined {
  return /^[ \t}\],]*[ \t]#([^]*)$/.exec(text.slice(end, Math.min(lineEnd(text, end), end + 1000)))?.[1]!.replace(/^[ \t]+/, '')
}
