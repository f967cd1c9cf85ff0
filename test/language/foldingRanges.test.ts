import assert from 'node:assert/strict'
import { foldingRanges } from '../../src/language/foldingRanges'

/** Folds as `first-last`, lines counted from 1; comments with a `#`. */
function check(text: string, expected: string[]) {
  const lineAt = (offset: number) => text.slice(0, offset).split('\n').length
  assert.deepEqual(foldingRanges({ text }).map(({ start, end, kind }) => `${lineAt(start)}-${lineAt(end)}${kind ? '#' : ''}`), expected)
}

describe('foldingRanges', () => {
  it('folds a section', () => check('machine:\n  name: x\n  use: y\nrider: {}\n', ['1-3']))
  it('folds groups in groups', () => check('machine:\n  front:\n    travel: 1\n  rear:\n    travel: 1\n', ['1-5', '2-3', '4-5']))
  it('folds entries from dash to dash', () => check('entries:\n  - id: a\n    date: b\n\n  - id: c\n    settings:\n      d: 1\n', ['1-7', '2-3', '5-7', '6-7']))
  it('folds entries whose dashes stand under their key', () => check('entries:\n- id: a\n  date: b\n- id: c\n  date: d\nnotes: e\n', ['1-5', '2-3', '4-5']))
  it('folds an adjuster in braces of several lines', () => check('adjusters:\n  a: {on: fork,\n    counts: clicks}\n  b: {}\n', ['1-4', '2-3']))
  it('folds a text of several lines as one', () => check('notes: |\n  one\n    two\n    three\n  four\nrider: x\n', ['1-5']))
  it('folds comments of several lines', () => check('# one\n# two\nformat: 1\n# alone\nnotes: x\n', ['1-2#']))
  it('leaves blank lines behind a fold unfolded', () => check('a:\n  b: 1\n\n\nc: 1\n', ['1-2']))
  it('takes a comment between keys into the fold', () => check('a:\n  b: 1\n  # why\n  c: 1\nd: 1\n', ['1-4']))
  it('takes a comment at the end of a group into the fold by its indentation', () => check('a:\n  b: 1\n  # inside\n# outside\nd: 1\n', ['1-3']))
  it('folds a half-typed text', () => check('a:\n  b: {c: 1\n  d: [\ne\n', ['1-3']))
  it('reads lines that end in CR LF', () => check('a:\r\n  b: 1\r\n\r\nc: 1\r\n', ['1-2']))
  it('folds nothing in an empty text', () => check('', []))
})
