import assert from 'node:assert/strict'
import fc from 'fast-check'
import { compareStates } from '../../../src/core/compare/compareStates'
import { comparisonReport } from '../../../src/core/compare/report/comparisonReport'
import { reportMarkdown } from '../../../src/core/compare/report/reportMarkdown'
import { reportText } from '../../../src/core/compare/report/reportText'
import { reviewReport } from '../../../src/core/compare/report/reviewReport'
import { reviewNotebooks } from '../../../src/core/compare/reviewNotebooks'
import { turnList } from '../../../src/core/compare/turnList'
import { turnListText } from '../../../src/core/compare/turnListText'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { Choices } from '../grid/choices'
import { writeRandomNotebook } from '../grid/writeRandomNotebook'
import { trials } from './randomStates'

const tape = fc.array(fc.nat(9999), { maxLength: 700, size: 'max' })
/** Everything there is to say of two notebooks, from one entry to another. */
function everything(left: Notebook, right: Notebook, at: number): string[] {
  const of = (notebook: Notebook, place: number) => ({ notebook, file: 'x', ...(notebook.entries.length > 0 ? { entry: notebook.entries[place % notebook.entries.length]! } : {}) })
  return [true, false].flatMap((oneMachine) => {
    const comparison = compareStates(of(left, at), of(right, at + 1), { oneMachine })
    JSON.stringify(comparison)
    const report = comparisonReport(comparison)
    return [reportText(report), reportMarkdown(report), turnListText(turnList(of(left, at), of(right, at + 1), { oneMachine }))]
  }).concat([reportText, reportMarkdown].map((print) => print(reviewReport(reviewNotebooks({ notebook: left, file: 'a' }, { notebook: right, file: 'b' })))))
}

describe('comparing any notebooks', () => {
  it('never throws, and prints no control character and no lone word that reads as a number that is none', function () {
    this.timeout(60_000)
    fc.assert(fc.property(tape, tape, fc.nat(9), (one, other, at) => {
      const [a, b] = [one, other].map((numbers) => readNotebook(writeRandomNotebook(new Choices(numbers)))) as [Notebook, Notebook]
      for (const text of [...everything(a, b, at), ...everything(a, a, at)]) {
        assert.doesNotMatch(text, /\p{Cc}(?<!\n)/u)
        assert.doesNotMatch(text, /\b(NaN|Infinity|undefined|\[object Object\])\b/)
      }
    }), trials(12))
  })

  it('never throws on a text that is cut off or has two of a thing', () => {
    const base = 'format: 1\nadjusters:\n  a: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10}\nentries:\n  - id: x\n    settings: {a: 3}\n  - id: x\n    settings: {a: {left: 4}}\n  - {settings: {a: soft, __proto__: 3}}\n'
    for (let length = 0; length <= base.length; length += 7) everything(readNotebook(base.slice(0, length)), readNotebook(base), length)
  })
})
