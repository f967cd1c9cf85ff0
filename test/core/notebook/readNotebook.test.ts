import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { Choices } from '../grid/choices'
import { head } from '../grid/editing'
import { randomGesture } from '../grid/randomGesture'
import { writeRandomNotebook } from '../grid/writeRandomNotebook'

const more = Number(process.env['DETENT_RUNS'] ?? 1)
const runs = 40 * more

/** Reads, checks, shows and edits a text; all of it must come to an end without a throw, and point inside the text. */
function survives(text: string, choices: Choices): void {
  const notebook = readNotebook(text)
  const findings = checkNotebook(notebook)
  for (const { range } of [...notebook.findings, ...findings]) assert.ok(range.start >= 0 && range.start <= range.end && range.end <= text.length, `${range.start} to ${range.end} of ${text.length}`)
  buildGrid(notebook, findings)
  const answer = applyGesture(notebook, findings, randomGesture(notebook, choices))
  if (notebook.broken) assert.ok(answer.refused)
}

describe('reading a text', () => {
  it('never throws on what looks like YAML', function () {
    this.timeout(30_000 * more)
    const pieces = fc.array(fc.constantFrom(...[
      'entries:', 'adjusters:', 'format: 1', 'settings', 'id', 'from', ': ', ':', '\n', '\n  ', '\n    ', '  - ', '- ', '[', ']', '{', '}', ', ', ',', '#', '"', "'", '|', '>', '|+', '&a ', '*a', '!t ', '? ', '---', '...', '%YAML 1.1',
      '\t', '\r\n', '\r', '\0', '\ufeff', '\ud800', 'on: fork', 'controls: rebound', 'counts: clicks', 'legs: [left, right]', 'sag', 'front', 'null', '~', '3 out', '<<', '__proto__', '1e999', '.nan', '-',
    ]), { maxLength: 40 })
    fc.assert(fc.property(pieces, fc.array(fc.nat(9999), { minLength: 10, maxLength: 10 }), (text, tape) => survives(text.join(''), new Choices(tape))), { numRuns: runs * 10, seed: 4 })
  })

  it('never throws on a notebook with a hole, a copy or a stray character in it', function () {
    this.timeout(30_000 * more)
    const tape = fc.array(fc.nat(9999), { maxLength: 600, size: 'max' })
    fc.assert(fc.property(tape, fc.nat(9999), fc.nat(200), fc.constantFrom('', ' ', '\n', '"', '{', ']', ':', '#', '\t', '- ', '&', '*', '\0', '|', '\ud800'), (numbers, at, size, put) => {
      const choices = new Choices(numbers)
      const text = writeRandomNotebook(choices)
      const start = at % (text.length + 1)
      survives(text.slice(0, start) + put + text.slice(start + size), choices)
      survives(text.slice(0, start + size) + put + text.slice(start), choices)
    }), { numRuns: runs, seed: 5 })
  })

  it('finds a name from JavaScript’s own like any other', () => {
    const names = ['__proto__', 'constructor', 'toString', 'hasOwnProperty']
    const text = `format: 1\nadjusters:\n${names.map((name) => `  ${name}: {on: shock, controls: rebound, counts: clicks}\n`).join('')}entries:\n  - id: __proto__\n    settings:\n${names.map((name) => `      ${name}: 3\n`).join('')}`
    const notebook = readNotebook(text)
    assert.deepEqual([...notebook.adjusters.keys()], names)
    assert.deepEqual([...notebook.entries[0]!.settings.keys()], names)
    assert.deepEqual(notebook.findings, [])
  })

  it('keeps the first error apart, and a newer format', () => {
    assert.equal(readNotebook(`${head}entries: [\n`).broken?.severity, 'error')
    assert.equal(readNotebook('format: 2\nfork: whatever\n').newer, true)
    assert.equal(readNotebook('format: 1.0\n').newer, false)
    assert.equal(readNotebook('format: "2"\n').newer, false)
  })

  it('reads nothing out of an empty text, and says nothing', () => {
    for (const text of ['', '\n', '# c\n', '---\n', '---\n...\n', '\ufeff']) {
      const notebook = readNotebook(text)
      assert.deepEqual([notebook.root, notebook.findings, notebook.entries], [undefined, [], []], JSON.stringify(text))
    }
  })

  it('says what a text is that is no group of keys', () => {
    for (const text of ['3\n', '- a\n', '"x"\n', '~\n']) assert.equal(readNotebook(text).findings[0]?.code, 'wrong-shape', text)
  })
})
