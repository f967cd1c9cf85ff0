import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { findCursor } from '../../src/language/cursor/cursor'
import { askAt } from './askAt'

/** One of everything: braces over lines, quotes, comments, anchors, texts of several lines, CR LF, wrong values. */
const everything = [
  '%YAML 1.2', '---', '# a comment', 'format: 1', 'machine: {name: "T: 1", front: {travel: 120}, # why', '  rear: {travel: 130}}',
  'adjusters:', '  a: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10}', '  "b": &b', '    on: shock', '    controls: preload',
  '    counts: turns', 'entries:', '- id: x', '  settings: &s {a: {left: 3 out, right: 4 in}, b: 1 1/2}', '  notes: |+', '    one', '', "  reason: 'it''s, so'",
  '-', '  id: "y"', '  from: x', '  settings: *s', '  remarks: {a/left: z}', '- {settings: {c: 5 ¾}}', 'accepted: [{finding: legs-differ, entry: x, about: a}]', '...', '',
]

describe('a half-typed text', () => {
  it('is no trouble for any feature, wherever it ends', function () {
    this.timeout(60_000)
    const text = everything.join('\n')
    for (let end = 0; end <= text.length; end++) askAt(text.slice(0, end))
  })

  it('is no trouble with CR LF', () => {
    const text = everything.join('\r\n')
    for (let end = 0; end <= text.length; end += 23) askAt(text.slice(0, end))
  })

  it('is no trouble in the middle of a notebook', () => {
    const text = readFileSync('samples/wren-250.setup.yaml', 'utf8')
    for (let end = 0; end <= text.length; end += 211) askAt(text.slice(0, end) + text.slice(text.indexOf('\n', end)), end)
  })

  it('lets the cursor be looked for anywhere in a sample', () => {
    const text = readFileSync('samples/tern-650.setup.yaml', 'utf8')
    for (let end = 0; end <= text.length; end += 11) findCursor(text, end)
  })

  it('is no trouble whatever it is made of', () => {
    const pieces = fc.constantFrom(...everything, ...everything.map((line) => line.trim()), '{', '}', '[', ']', ',', ': ', '"', "'", '|', '>', '&a', '*a', '- ', '  ', '\t', '\r\n', '\n', '\u2028', '💥', '\ue000', '#', ' #')
    fc.assert(fc.property(fc.array(pieces, { maxLength: 12 }), fc.nat(), (parts, at) => {
      const text = parts.join('\n').replace(/\n(?=[,\]}:"'])/g, '')
      askAt(text, at % (text.length + 1))
    }), { numRuns: 150 })
  })
})
