import assert from 'node:assert/strict'
import { existsSync, readFileSync } from 'node:fs'
import { holdAgainst, survivorsOf, type Explained } from '../mutate/survivors'

const source = 'const a = 1\nif (a > 1 &&\n    b) run()\n'
const at = (start: [number, number], end: [number, number]) => ({ start: { line: start[0], column: start[1] }, end: { line: end[0], column: end[1] } })
const report = {
  files: {
    'src/a.ts': {
      source, mutants: [
        { status: 'Survived', replacement: 'a >= 1', location: at([2, 5], [2, 10]) }, { status: 'Killed', replacement: 'a <= 1', location: at([2, 5], [2, 10]) },
        { status: 'NoCoverage', replacement: 'true', location: at([2, 5], [3, 6]) }, { status: 'Timeout', replacement: '', location: at([3, 8], [3, 13]) },
      ],
    },
  },
}
const [bound, condition] = survivorsOf(report)

describe('what is left of a run of mutations', () => {
  it('is told with what stood there, also over several lines', () => {
    assert.deepEqual(bound, { file: 'src/a.ts', line: 2, original: 'a > 1', replacement: 'a >= 1' })
    assert.deepEqual(condition, { file: 'src/a.ts', line: 2, original: 'a > 1 && b', replacement: 'true' })
    assert.equal(survivorsOf(report).length, 2)
  })

  it('is held against what is explained, and so is an explanation that holds no more', () => {
    const explained: Explained = { 'src/a.ts': [{ original: 'a > 1 && b', replacement: 'true', why: 'b is always there' }, { original: 'a', replacement: 'b', why: 'it was so once' }], 'src/b.ts': [{ original: 'x', replacement: 'y', why: 'not looked at' }] }
    const { unexplained, noticed } = holdAgainst(survivorsOf(report), explained, ['src/a.ts'])
    assert.deepEqual(unexplained, [bound])
    assert.deepEqual(noticed, [{ file: 'src/a.ts', original: 'a', replacement: 'b' }])
  })

  it('is explained for files that are there, and for text that stands in them', () => {
    const explained = JSON.parse(readFileSync('test/mutate/explained.json', 'utf8')) as Explained
    for (const [file, all] of Object.entries(explained)) {
      assert.ok(existsSync(file), file)
      const text = readFileSync(file, 'utf8').replace(/\s+/g, ' ')
      for (const { original, why } of all) assert.ok(text.includes(original) && why.length > 10, `${file}: ${original}`)
    }
  })
})
