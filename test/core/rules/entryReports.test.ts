import assert from 'node:assert/strict'
import type { Finding } from '../../../src/core/finding'
import type { Entry, Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { findingsOf, reportsOf } from '../../../src/core/rules/entryReports'
import type { EntryRule, Report } from '../../../src/core/rules/rule'

const text = 'format: 1\nentries:\n  - id: a\n    reason: first\n  - id: b\n    reason: second\n'
const longer = text.replace('reason: first', 'reason: first of all')
const moved = longer.length - text.length

/** What is reported of the second entry of three versions, the later two further down, and how often the rule was asked for it. */
function told(...report: ((entry: Entry, notebook: Notebook) => Report)[]): { asked: number; reports: Report[] } {
  let asked = 0
  const rule: EntryRule = { code: 'mine', severity: 'info', says: '', why: '', checkEntry: (entry, notebook) => (asked++, report.map((each) => each(entry, notebook))) }
  let before: Notebook | undefined
  const reports = [text, longer, longer.replace('first of all', 'first of all five')].map((each) => {
    const notebook = before = readNotebook(each, before)
    return reportsOf(rule, notebook.entries[1]!, notebook)[0]!
  })
  return { asked, reports }
}
const changes = (start: number, end: number) => [{ title: 'Mend it', changes: [{ start, end, text: 'x' }] }]

describe('what was reported of an entry', () => {
  it('is moved to where the entry stands in a later version, and its fixes with it, without asking again', () => {
    const { asked, reports } = told(({ node: { range } }) => ({ message: 'here', range, fixes: changes(range.start, range.end) }))
    const [first, second, third] = reports
    assert.equal(asked, 1)
    for (const [{ range, fixes }, by] of [[second!, moved], [third!, moved + 5]] as const) {
      assert.deepEqual([range.start, range.end], [first!.range.start + by, first!.range.end + by])
      assert.deepEqual(fixes, changes(first!.range.start + by, first!.range.end + by))
    }
  })

  it('is moved as it is where nothing mends it', () => {
    assert.ok(!('fixes' in told(({ node: { range } }) => ({ message: 'here', range })).reports[1]!))
  })

  it('is asked for anew in each version where it, or another report, is about another entry', () => {
    const [here, there] = [({ node: { range } }: Entry) => ({ message: 'here', range }), ({ node: { range } }: Entry, { entries }: Notebook) => ({ message: 'there', range, entry: entries[0]! })]
    assert.deepEqual([told(here, there).asked, told(there, here).asked, told(here, here).asked], [3, 3, 1])
    assert.equal(told(({ node: { range } }, { entries }) => ({ message: 'there', range, entry: entries[0]! })).asked, 3)
  })

  it('is asked for anew where it, or any change of its fixes, lies before the entry or behind it', () => {
    for (const [from, to] of [[-1, 0], [0, 1]] as const) {
      const beyond = ({ start, end }: { start: number; end: number }) => ({ start: start + from, end: end + to })
      assert.equal(told(({ node: { range } }) => ({ message: 'here', range: beyond(range) })).asked, 3)
      const reaching = ({ node: { range } }: Entry) => changes(beyond(range).start, beyond(range).end)
      assert.equal(told((entry) => ({ message: 'here', range: entry.node.range, fixes: reaching(entry) })).asked, 3)
      assert.equal(told((entry) => ({ message: 'here', range: entry.node.range, fixes: [...changes(entry.node.range.start, entry.node.range.end), ...reaching(entry)] })).asked, 3)
      assert.equal(told((entry) => {
        const [inside, reach] = [changes(entry.node.range.start, entry.node.range.start), reaching(entry)].map(([fix]) => fix!.changes)
        return { message: 'here', range: entry.node.range, fixes: [{ title: 'Both', changes: [...inside!, ...reach!] }] }
      }).asked, 3)
    }
  })
})

describe('the findings of an entry', () => {
  /** How often they were made for two versions, told so about an entry. */
  function made(place: Finding['place'], guards: readonly unknown[] = [1, 1]): number {
    let count = 0
    let before: Notebook | undefined
    for (const [at, each] of [text, longer].entries()) {
      const notebook = before = readNotebook(each, before)
      const entry = notebook.entries[1]!
      findingsOf(entry, guards[at], () => (count++, [{ code: 'mine', severity: 'info', message: 'here', range: entry.node.range, ...(place ? { place } : {}) }]))
    }
    return count
  }

  it('are kept where they are about that entry, and made anew where about another or none', () => {
    assert.equal(made({ entry: 'b' }), 1)
    assert.equal(made({ entry: 'a' }), 2)
    assert.equal(made(undefined), 2)
  })

  it('are made anew where they would be told otherwise', () => {
    assert.equal(made({ entry: 'b' }, [1, 2]), 2)
  })
})
