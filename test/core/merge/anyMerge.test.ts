import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import type { Entry, Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../src/core/text'
import { Choices } from '../grid/choices'
import { randomGesture } from '../grid/randomGesture'
import { writeRandomNotebook } from '../grid/writeRandomNotebook'
import { merge } from './merging'

/** `DETENT_RUNS=20` runs twenty times as many, `DETENT_SEED=1` others, and `DETENT_SHRINK=1` looks for the smallest that fails. */
const more = Number(process.env['DETENT_RUNS'] ?? 1)
const options = { seed: Number(process.env['DETENT_SEED'] ?? 20260418), endOnFailure: process.env['DETENT_SHRINK'] === undefined }
const tape = fc.array(fc.nat(9999), { minLength: 500, maxLength: 900, size: 'max' })

/** A text after some gestures of a person, with some lines taken out or put in. What is written is like nothing else. */
function changed(text: string, choices: Choices, name: string): string {
  let now = text
  for (let at = 1 + choices.below(4); at > 0; at--) {
    const mark = `${name}${at}`
    if (choices.once(5)) now = scribbled(now, choices, mark)
    else {
      const gesture = randomGesture(readNotebook(now), choices)
      const own = gesture.kind === 'setCell' || gesture.kind === 'annotate' ? { ...gesture, text: `${gesture.text} ${mark}` } : gesture
      const { changes } = applyGesture(readNotebook(now), [], own)
      if (changes) now = applyChanges(now, changes)
    }
  }
  return now
}

function scribbled(text: string, choices: Choices, mark: string): string {
  const lines = text.split('\n')
  const at = choices.below(lines.length)
  const end = lines[at]!.endsWith('\r') ? '\r' : ''
  switch (choices.below(4)) {
    case 0: lines.splice(at, 1); break
    case 1: lines.splice(at, 0, `# ${mark} was here${end}`); break
    case 2: lines.splice(at, 0, end); break
    default: lines[at] = `${lines[at]!.replace('\r', '')} # ${mark}${end}`
  }
  return lines.join('\n')
}

interface Sides { base: string; ours: string; theirs: string }

function randomSides(numbers: readonly number[]): Sides {
  const choices = new Choices(numbers)
  const base = writeRandomNotebook(choices)
  return { base, ours: changed(base, choices, 'one'), theirs: changed(base, choices, 'other') }
}

type Parts = Map<string, number>

function counted(parts: readonly string[]): Parts {
  const counts: Parts = new Map<string, number>()
  for (const part of parts) counts.set(part, (counts.get(part) ?? 0) + 1)
  return counts
}

/** The words of a text; commas and braces of what is written in one line may be set anew. */
const words = (text: string) => text.split(/[\s,{}[\]\ufeff]+/).filter((word) => word !== '')
/** The lines that stand for themselves. */
const lines = (text: string) => text.replace('\ufeff', '').split(/\r?\n/).filter((line) => !/[{}]/.test(line) && line.trim() !== '')

/**
 * What a side wrote that the base has not is there as often as that side has it, and what stood once and both sides
 * still have is there. More cannot be told by counting: what both did alike is there once, and of two like words each
 * side may have taken out another.
 */
function assertKept({ base, ours, theirs }: Sides, merged: string): void {
  for (const partsOf of [words, lines]) {
    const [before, one, other, now] = [base, ours, theirs, merged].map((text) => counted(partsOf(text))) as [Parts, Parts, Parts, Parts]
    for (const part of new Set([...one.keys(), ...other.keys()])) {
      const [mine, yours] = [one.get(part) ?? 0, other.get(part) ?? 0]
      const least = before.has(part) ? (before.get(part) === 1 ? Math.min(1, mine, yours) : 0) : Math.max(mine, yours)
      assert.ok((now.get(part) ?? 0) >= least, `‘${part}’: ${now.get(part) ?? 0} of ${least}`)
    }
  }
}

const written = (entry: Entry) => JSON.stringify([...entry.settings].map(([slot, { node }]) => [slot, node.text]))
const standing = (entry: Entry) => Object.fromEntries([...entry.state].map(([slot, { setting }]) => [slot, setting.node.text]))
const entryOf = (notebook: Notebook, id: string) => notebook.entries.find(({ key }) => key === id)

/** An entry stands as on the side it comes from, as long as the other side changed nothing above it. */
function assertStandsAsItStood(sides: Sides, merged: string): number {
  const [ours, theirs, now] = [sides.ours, sides.theirs, merged].map((text) => readNotebook(text)) as [Notebook, Notebook, Notebook]
  const before = new Set(readNotebook(sides.base).entries.map(({ id }) => id?.value))
  let compared = 0
  for (const [side, other] of [[ours, theirs], [theirs, ours]] as const) {
    for (const entry of side.entries.filter(({ id, key }) => id && id.value === key)) {
      const chain: Entry[] = []
      for (let at: Entry | undefined = entry; at; at = at.parent) chain.push(at)
      const isAlone = chain.every((each) => {
        const twin = entryOf(other, each.key)
        return each.id?.value === each.key && (!twin ? !before.has(each.key) : written(twin) === written(each) && twin.parent?.key === each.parent?.key)
      })
      const there = entryOf(now, entry.key)
      if (!isAlone || !there) continue
      assert.deepEqual(standing(there), standing(entry), entry.key)
      compared++
    }
  }
  return compared
}

describe('any merge', () => {
  it('loses nothing of either side, marks or not, and lets every entry stand as it stood', function () {
    this.timeout(60_000 * more)
    const told = { clean: 0, conflicts: 0, compared: 0 }
    fc.assert(fc.property(tape, (numbers) => {
      const sides = randomSides(numbers)
      const { text, conflicts } = merge(sides.base, sides.ours, sides.theirs)
      assertKept(sides, text)
      told[conflicts.length === 0 ? 'clean' : 'conflicts']++
      const [ours, theirs] = [readNotebook(sides.ours), readNotebook(sides.theirs)]
      if (ours.broken || theirs.broken || conflicts.length > 0) return
      const known = new Set([...checkNotebook(ours), ...checkNotebook(theirs)].map(({ code }) => code))
      assert.deepEqual(checkNotebook(readNotebook(text)).filter(({ severity, code }) => severity === 'error' && !known.has(code)), [])
      told.compared += assertStandsAsItStood(sides, text)
    }), { ...options, numRuns: 40 * more })
    assert.ok(told.clean > 8 * more && told.conflicts > 2 * more && told.compared > 8 * more, JSON.stringify(told))
  })

  it('is the other side where one side changed nothing, and both where both did the same', function () {
    this.timeout(60_000 * more)
    fc.assert(fc.property(tape, (numbers) => {
      const { base, ours } = randomSides(numbers)
      for (const sides of [[base, base, ours], [base, ours, base], [base, ours, ours]] as const) assert.deepEqual(merge(...sides), { text: ours, conflicts: [] })
    }), { ...options, numRuns: 20 * more })
  })

  it('is the same from the other side, up to the order of what both added', function () {
    this.timeout(60_000 * more)
    fc.assert(fc.property(tape, (numbers) => {
      const { base, ours, theirs } = randomSides(numbers)
      const [one, other] = [merge(base, ours, theirs), merge(base, theirs, ours)]
      assert.equal(one.conflicts.length === 0, other.conflicts.length === 0)
      if (one.conflicts.length > 0) return
      const entries = (text: string) => Object.fromEntries(readNotebook(text).entries.filter(({ id }) => id).map((entry) => [entry.key, standing(entry)]))
      assert.deepEqual(entries(one.text), entries(other.text))
      const sorted = (text: string) => words(text).filter((word) => word !== 'from:').sort()
      const [mine, yours] = [counted(sorted(one.text)), counted(sorted(other.text))]
      for (const [word, count] of mine) if (!/^['"]?(?:run-\d|#?\d)/.test(word)) assert.equal(yours.get(word), count, word)
    }), { ...options, numRuns: 20 * more })
  })
})
