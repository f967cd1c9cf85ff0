import assert from 'node:assert/strict'
import fc from 'fast-check'
import { architectures } from '../../../src/core/adjusters/architectures'
import { writeNotebook } from '../../../src/core/adjusters/architectures/writeNotebook'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import { cautions } from '../../../src/core/grid/cautions'
import { cellOf } from '../../../src/core/grid/cells'
import type { Gesture } from '../../../src/core/grid/gesture'
import { rowsOf, type RowSource } from '../../../src/core/grid/rows'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { applyChanges } from '../../../src/core/text'
import { Choices } from '../grid/choices'
import { merge } from './merging'

type CellSource = Exclude<RowSource, { kind: 'group' }>

/** The text after a gesture that must be possible. */
function after(text: string, gesture: Gesture): string {
  const { changes, refused } = applyGesture(readNotebook(text), [], gesture)
  assert.equal(refused, undefined)
  return applyChanges(text, changes!)
}

const rowsIn = (text: string) => rowsOf(readNotebook(text)).filter((source): source is CellSource => source.kind === 'setting' || (source.kind === 'field' && !source.row.choices))
/** What may be written as one value, or in more than one shape, is one thing: legs of a pair, the lengths at an end, loads, a bounce. */
const thingOf = (row: string) => row.replace(/\/(left|right)$/, '').replace(/^((?:sag|axle_loads|bounce)\.[^.]+).*/, '$1')

/** A notebook of some machine with a few entries. */
function begin(choices: Choices): string {
  let text = writeNotebook(choices.of(architectures), { name: 'Tern 650', date: '2026-04-18', cautions })
  for (let at = 1 + choices.below(3); at > 0; at--) {
    for (const { row } of rowsIn(text)) if (choices.once(3)) text = after(text, { kind: 'setCell', column: readNotebook(text).entries.at(-1)!.key, row: row.key, text: `${choices.below(9)}` })
    text = after(text, { kind: 'addEntry', id: `run-${at}`, date: '2026-04-19', reason: choices.of(['a try', 'two\nlines']) })
  }
  return text
}

interface Person {
  text: string
  /** What they wrote, by entry and row. */
  wrote: [column: string, row: string, text: string][]
}

/** What a person writes into cells of theirs, into entries of their own and as comments. */
function work(base: string, choices: Choices, name: string, isTheirs: (column: string, row: string) => boolean): Person {
  const person: Person = { text: base, wrote: [] }
  const set = (column: string, row: string) => {
    const text = `${choices.below(90)}`
    person.text = after(person.text, { kind: 'setCell', column, row, text })
    person.wrote.push([column, row, text])
  }
  for (const { key } of readNotebook(base).entries) for (const { row } of rowsIn(base)) if (isTheirs(key, row.key) && choices.once(3)) set(key, row.key)
  for (let at = 1; at <= choices.below(4); at++) {
    const id = `${name}-${at}`
    person.text = after(person.text, { kind: 'addEntry', id, date: `2026-05-0${1 + choices.below(3) + at}`, reason: `${name} says why` })
    for (const { row } of rowsIn(base)) if (row.key !== 'reason' && choices.once(6)) set(id, row.key)
  }
  if (choices.once(2)) person.text = person.text.replace(choices.of(['machine:', 'adjusters:']), `# ${name} remarks on this\n$&`)
  return person
}

const runs = 8 * Number(process.env['DETENT_RUNS'] ?? 1)

describe('two people at one notebook', () => {
  it('never come into conflict where they write into different cells and add entries of their own', function () {
    this.timeout(60_000 * (runs / 8))
    let written = 0
    fc.assert(fc.property(fc.array(fc.nat(9999), { maxLength: 900, size: 'max' }), (numbers) => {
      const choices = new Choices(numbers)
      const base = begin(choices)
      const owners = new Map<string, number>()
      const owner = (column: string, row: string) => {
        const thing = `${column} ${thingOf(row)}`
        if (!owners.has(thing)) owners.set(thing, choices.below(2))
        return owners.get(thing)
      }
      const ours = work(base, choices, 'mia', (column, row) => owner(column, row) === 0)
      const theirs = work(base, choices, 'noah', (column, row) => owner(column, row) === 1)
      const isBothRemarked = [ours, theirs].every(({ text }) => text.includes('remarks on this'))
      const { text, conflicts } = merge(base, ours.text, theirs.text)
      // Two remarks at one place are for a person to settle; and lengths of two people may well contradict one another.
      const clashes = conflicts.filter(({ message }) => !message.startsWith('an error that neither side had'))
      assert.deepEqual(clashes.filter(({ message }) => !isBothRemarked || !message.includes('comments above')), [])
      if (clashes.length > 0) return
      const notebook = readNotebook(text)
      const sources = new Map(rowsIn(text).map((source) => [source.row.key, source]))
      for (const [column, row, said] of [...ours.wrote, ...theirs.wrote]) {
        assert.equal(cellOf(sources.get(row)!, notebook, notebook.entries.find(({ key }) => key === column)!).text, said, `${column} ${row}`)
        written++
      }
      for (const person of [ours, theirs]) {
        for (const line of person.text.split('\n').filter((each) => each.startsWith('#'))) assert.ok(text.includes(`${line}\n`), line)
        for (const entry of readNotebook(person.text).entries) {
          const there = notebook.entries.find(({ key }) => key === entry.key)
          assert.equal(there?.parent?.key, entry.parent?.key, entry.key)
        }
      }
    }), { seed: Number(process.env['DETENT_SEED'] ?? 20260418), numRuns: runs, endOnFailure: process.env['DETENT_SHRINK'] === undefined })
    assert.ok(written > runs * 4, `${written}`)
  })
})
