import assert from 'node:assert/strict'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { adviceCard } from '../../src/core/advice/adviceCard'
import { cardFor } from '../../src/core/card/cardFor'
import { buildCharts } from '../../src/core/charts/buildCharts'
import { compareStates } from '../../src/core/compare/compareStates'
import { turnList } from '../../src/core/compare/turnList'
import { turnListHtml } from '../../src/core/compare/turnListHtml'
import { turnListText } from '../../src/core/compare/turnListText'
import { isMissing } from '../../src/core/compute/working/result'
import { buildGrid } from '../../src/core/grid/buildGrid'
import { computedRows } from '../../src/core/grid/computed'
import type { Entry, Notebook } from '../../src/core/notebook/notebook'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { makeSheet } from '../../src/core/sheet/makeSheet'
import { sheetHtml } from '../../src/core/sheet/sheetHtml'
import { speak } from '../../src/core/words/say'
import { documentSymbols, inlayHints, type NotebookSymbol } from '../../src/language'
import { lettersLeft, namesOfFormat, speakNothing } from './words/lettersLeft'

/** Published sources are cited as they were published. */
const cited = [
  /(R\. Paul, Adjusting Suspension, )?Motor Cycle News[^·◊]*/g, /Thede & Parks[^·◊]*/g, /(Suspension sorted|Dirt bike suspension|Suspension tuning|J\. Siddall|sasquatchrider|Quick tips)[^·◊]*/g,
  /G\. Byrnes[^·◊)]*/g, /a manufacturer’s (service|owner’s|competition)[^·◊)]*/g, /T\. Foale[^·◊)]*|A\. Trevitt[^·◊)]*/g,
]

const samples = readdirSync('samples').filter((name) => name.endsWith('.setup.yaml')).map((name) => join('samples', name))
const fixtures = readdirSync('test/fixtures/rules').filter((name) => name.endsWith('.setup.yaml')).map((name) => join('test/fixtures/rules', name))
const textOf = (html: string) => html.replace(/<style>[^]*?<\/style>/g, ' ').replace(/<[^>]*>/g, ' ')

/** A file, read anew: what was read in another language is remembered with its text. */
function opened(file: string): { text: string; notebook: Notebook } {
  const text = `${readFileSync(file, 'utf8')}\n`
  return { text, notebook: readNotebook(text) }
}

function workingsOf(notebook: Notebook, entry: Entry): unknown[] {
  return computedRows.flatMap((row) => {
    if (!('compute' in row)) return []
    const outcome = row.compute(notebook, entry)
    return isMissing(outcome) ? [outcome.missing] : [outcome.working.inputs.map(({ name }) => name), outcome.working.assumptions]
  })
}

const detailsOf = (symbols: readonly NotebookSymbol[]): unknown[] => symbols.flatMap(({ detail, children }) => [detail, ...detailsOf(children)])

describe('in a language without words nothing readable is left', () => {
  before(speakNothing)
  after(() => speak())
  const leftIn = (view: unknown, text: string) => assert.deepEqual(lettersLeft(view, text, cited), [])

  for (const file of samples) {
    it(`of ${file}: grid, cards, workings and advice`, () => {
      const { text, notebook } = opened(file)
      const grid = buildGrid(notebook, checkNotebook(notebook))
      leftIn(grid, text)
      const last = notebook.entries.at(-1)!
      leftIn(grid.rows.filter(({ kind }) => kind === 'setting' || kind === 'field').map(({ key }) => cardFor(notebook, key, last.key)?.sections), text)
      for (const entry of new Set([notebook.entries[notebook.entries.length >> 1]!, last])) leftIn([workingsOf(notebook, entry), adviceCard(notebook, entry)], text)
    })

    it(`of ${file}: comparison, turn list, sheets and charts`, () => {
      const { text, notebook } = opened(file)
      const [from, to] = [{ notebook, entry: notebook.entries[0]!, file: 'x' }, { notebook, entry: notebook.entries.at(-1)!, file: 'x' }]
      const turns = turnList(to, from)
      leftIn([compareStates(from, to), turns.cannot, turns.cautions, turnListText(turns), textOf(turnListHtml(turns)), textOf(sheetHtml(makeSheet(notebook, to.entry)))], text)
      leftIn((['sag', 'force', 'geometry'] as const).map((group) => buildCharts(notebook, group, to.entry.key)), text)
    })

    it(`of ${file}: outline and hints`, () => {
      const { text, notebook } = opened(file)
      // The outline's names are keys of the file.
      leftIn([detailsOf(documentSymbols(notebook)), inlayHints(notebook, { start: 0, end: text.length }).map(({ about }) => about)], text)
    })
  }

  it('of the findings in every fixture of the rules', () => {
    for (const file of fixtures) {
      const { text, notebook } = opened(file)
      leftIn(checkNotebook(notebook).map(({ message }) => message), `${text} ${namesOfFormat}`)
    }
  })
})
