import assert from 'node:assert/strict'
import { adviceCard } from '../../src/core/advice/adviceCard'
import { cardMarkdown } from '../../src/core/card/cardMarkdown'
import { cardFor } from '../../src/core/card/cardFor'
import { buildCharts } from '../../src/core/charts/buildCharts'
import { compareStates } from '../../src/core/compare/compareStates'
import { comparisonReport } from '../../src/core/compare/report/comparisonReport'
import { reportMarkdown } from '../../src/core/compare/report/reportMarkdown'
import { reviewReport } from '../../src/core/compare/report/reviewReport'
import { reviewNotebooks } from '../../src/core/compare/reviewNotebooks'
import { turnList } from '../../src/core/compare/turnList'
import { turnListHtml } from '../../src/core/compare/turnListHtml'
import { turnListText } from '../../src/core/compare/turnListText'
import { exportNotebook } from '../../src/core/export/exportNotebook'
import { toCsv } from '../../src/core/export/toCsv'
import type { Finding } from '../../src/core/finding'
import { applyGesture } from '../../src/core/grid/applyGesture'
import { findingIds } from '../../src/core/grid/findingIds'
import { buildGrid } from '../../src/core/grid/buildGrid'
import { mergeNotebooks } from '../../src/core/merge/mergeNotebooks'
import type { Notebook } from '../../src/core/notebook/notebook'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { searchNotebooks } from '../../src/core/search/searchNotebooks'
import { makeSheet } from '../../src/core/sheet/makeSheet'
import { sheetHtml } from '../../src/core/sheet/sheetHtml'
import { summarizeNotebook } from '../../src/core/summary/summarizeNotebook'
import { applyChanges, type Range } from '../../src/core/text'
import { foldingRanges } from '../../src/language'
import type { Choices } from '../core/grid/choices'
import { keptPromises } from '../core/grid/keptPromises'
import { randomGesture } from '../core/grid/randomGesture'
import { askAt } from '../language/askAt'
import { slip } from './makeCase'
import { readCsv } from './readCsv'

/** A text, read and checked once, for all that is asked of it. */
export interface Read {
  text: string
  notebook: Notebook
  findings: readonly Finding[]
}

export type Driver = (read: Read, choices: Choices) => void

const within = (text: string, { start, end }: Range) => assert.ok(start >= 0 && start <= end && end <= text.length, `${start} to ${end} lie in ${text.length}`)
const someEntry = ({ entries }: Notebook, choices: Choices) => (entries.length === 0 ? undefined : choices.of(entries))

/** Everything that is done with a text, each with what it promises. */
export const drivers: Record<string, Driver> = {
  findings({ text, notebook, findings }) {
    for (const { range, fixes, message } of [...notebook.findings, ...findings]) {
      within(text, range)
      assert.ok(message !== '' && !/\bNaN\b|undefined|\[object/.test(message.replaceAll(text, '')) || /NaN|undefined|\[object/i.test(text), message)
      for (const { changes } of fixes ?? []) changes.forEach((change) => within(text, change))
    }
  },
  incremental({ text, notebook }, choices) {
    let before = notebook
    let now = text
    for (let left = 3; left > 0; left--) {
      now = slip(now, choices)
      const next = readNotebook(now, before)
      const anew = readNotebook(now)
      const [found, foundAnew] = [checkNotebook(next), checkNotebook(anew)]
      assert.deepEqual(found, foundAnew, 'findings')
      assert.deepEqual(buildGrid(next, found), buildGrid(anew, foundAnew), 'grid')
      before = next
    }
  },
  language({ text, notebook, findings }, choices) {
    for (let left = 3; left > 0; left--) askAt(text, choices.below(text.length + 1), notebook, [...findings])
    foldingRanges({ text })
  },
  halfTyped({ text }, choices) {
    const at = choices.below(text.length + 1)
    askAt(text.slice(0, at) + (choices.once(2) ? text.slice(text.indexOf('\n', at) < 0 ? at : text.indexOf('\n', at)) : ''), at)
  },
  grid({ notebook, findings }, choices) {
    const { rows, columns, cells } = buildGrid(notebook, findings)
    assert.equal(cells.length, rows.length)
    for (const line of cells) assert.ok(line.length === 0 || line.length === columns.length)
    const row = rows.length === 0 ? undefined : choices.of(rows)
    const card = row && cardFor(notebook, row.key, someEntry(notebook, choices)?.key)
    if (card) cardMarkdown(card)
  },
  edits({ text }, choices) {
    let now = text
    for (let left = 2; left > 0; left--) {
      const outcome = keptPromises(now, randomGesture(readNotebook(now), choices))
      if (outcome.refused === undefined) now = outcome.text
    }
  },
  fixes({ text, notebook, findings }, choices) {
    const fixable = findings.flatMap(({ fixes }, at) => (fixes ?? []).map((_, fix) => ({ finding: findingIds(findings)[at]!, fix })))
    if (fixable.length === 0) return
    const { changes } = applyGesture(notebook, findings, { kind: 'applyFix', ...choices.of(fixable) })
    if (changes) assert.equal(readNotebook(applyChanges(text, changes)).broken, undefined, 'a fix leaves a text that parses')
  },
  compare({ notebook, findings }, choices) {
    const other = readNotebook(slip(notebook.text, choices))
    const [entry, then] = [someEntry(notebook, choices), someEntry(other, choices)]
    const [left, right] = [{ notebook, findings, file: 'a', ...(entry ? { entry } : {}) }, { notebook: other, file: 'b', ...(then ? { entry: then } : {}) }]
    reportMarkdown(comparisonReport(compareStates(left, right)))
    reportMarkdown(reviewReport(reviewNotebooks(left, right)))
    assert.equal(compareStates(left, left).changes, 0, 'nothing differs from itself')
  },
  turns({ notebook }, choices) {
    const [from, to] = [someEntry(notebook, choices), someEntry(notebook, choices)]
    const list = turnList({ notebook, file: 'a', ...(from ? { entry: from } : {}) }, { notebook, file: 'a', ...(to ? { entry: to } : {}) })
    turnListText(list)
    turnListHtml(list)
    if (from === to) assert.deepEqual(list.groups, [], 'nothing to turn')
  },
  export({ notebook }) {
    const exported = exportNotebook(notebook)
    assert.deepEqual(JSON.parse(JSON.stringify(exported)), exported, 'JSON read again')
    const table = readCsv(toCsv(exported))
    assert.ok(table.every((row) => row.length === table[0]!.length))
    assert.deepEqual(table.slice(1).map((row) => row[0]!.replace(/^'(?=[=+\-@\t\r])/, '')), exported.entries.map(({ id }) => id), 'CSV read again')
  },
  merge({ text }, choices) {
    const [ours, theirs] = [slip(text, choices), slip(text, choices)]
    const markers = { size: 7, ours: 'ours', theirs: 'theirs' }
    const once = mergeNotebooks({ base: text, ours, theirs: text }, markers)
    assert.deepEqual(once, { text: ours, conflicts: [] }, 'only one side changed')
    const { text: merged, conflicts } = mergeNotebooks({ base: text, ours, theirs }, markers)
    if (conflicts.length === 0 && !readNotebook(ours).broken && !readNotebook(theirs).broken) assert.equal(readNotebook(merged).broken, undefined, 'merged without marks, it parses')
  },
  sheet({ notebook, findings }, choices) {
    const entry = someEntry(notebook, choices)
    if (!entry) return
    const html = sheetHtml(makeSheet(notebook, entry, undefined, [...findings]))
    assert.ok(!/<script|<img|<iframe|javascript:/i.test(html.replaceAll('&#60;', '')), 'nothing runs or loads')
    adviceCard(notebook, entry)
  },
  charts({ notebook }, choices) {
    for (const group of ['sag', 'geometry', 'force'] as const) buildCharts(notebook, group, someEntry(notebook, choices)?.key)
  },
  lists({ notebook, findings, text }, choices) {
    summarizeNotebook(notebook, findings, '2026-05-01')
    const at = choices.below(text.length + 1)
    searchNotebooks([{ source: 1, notebook }], text.slice(at, at + 30))
  },
}
