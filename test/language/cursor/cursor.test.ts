import assert from 'node:assert/strict'
import { findCursor } from '../../../src/language/cursor/cursor'
import { marked } from '../marked'

/** `expects path «typed»`, then what stands beside; `none` where nothing can be typed. */
function check(source: string, expected: string) {
  const { text, offset } = marked(source)
  const found = findCursor(text, offset)
  const beside = found && found.beside.size > 0 ? ` beside ${[...found.beside].sort().join(' ')}` : ''
  assert.equal(found ? `${found.expects} ${found.path.join('/')} «${found.typed}»${beside}` : 'none', expected)
}

/** The text that what is typed stands in, cursor included. */
function checkRange(source: string, expected: string) {
  const { text, offset } = marked(source)
  const found = findCursor(text, offset)
  assert.ok(found)
  assert.equal(text.slice(found.range.start, found.range.end), expected)
}

describe('findCursor', () => {
  describe('in block style', () => {
    it('expects a key of the notebook in an empty text', () => check('|', 'key  «»'))
    it('expects a key of the notebook at the beginning of a line', () => check('format: 1\nma|\nentries:\n', 'key  «ma» beside entries format'))
    it('knows the sections above and below it', () => check('format: 1\nrider: {name: x}\n|\nadjusters:\n  a: {}\n', 'key  «» beside adjusters format rider'))
    it('expects a value behind a colon', () => check('format: |', 'value format «»'))
    it('expects a value right behind a colon', () => check('format:|', 'value format «»'))
    it('takes a colon inside of a word for a part of it', () => check('format:1|', 'key  «format:1»'))
    it('reads the value up to the cursor', () => check('machine:\n  use: tra|\n', 'value machine/use «tra»'))
    it('expects a key where it is indented under its section', () => check('machine:\n  na|\n', 'either machine «na»'))
    it('expects a key beside another', () => check('machine:\n  name: x\n  us|\n', 'key machine «us» beside name'))
    it('reads the column of a blank line', () => check('machine:\n  front:\n    travel: 120\n  |\n', 'key machine «» beside front'))
    it('goes deeper on a blank line that is indented further', () => check('machine:\n  front:\n    |', 'either machine/front «»'))
    it('expects nothing below a value', () => check('machine:\n  name: x\n      |', 'none'))
    it('expects nothing in a comment', () => check('format: 1 # not |', 'none'))
    it('expects nothing in a line of comment', () => check('machine:\n  # na|', 'none'))
    it('expects nothing in a text of several lines', () => check('notes: |+\n  some wo¦rds\n'.replace('|', '>').replace('¦', '|'), 'none'))
    it('leaves a text of several lines with its indentation', () => check('notes: >\n  some words\n\n  more\nru|', 'key  «ru» beside notes'))
    it('passes over anchors and tags', () => check('machine: &m\n  front: !x {tra|', 'key machine/front «tra»'))
    it('reads lines that end in CR LF', () => check('machine:\r\n  name: x\r\n  us|\r\n  notes: y\r\n', 'key machine «us» beside name notes'))
    it('begins anew at the text’s first line', () => check('\n|', 'key  «»'))
  })

  describe('in lists', () => {
    it('expects a key behind a dash', () => check('entries:\n  - |', 'either entries/0 «»'))
    it('counts the items', () => check('entries:\n  - id: a\n  - id: b\n  - i|', 'either entries/2 «i»'))
    it('counts items that begin with nothing, or on the next line', () => check('entries:\n  - id: a\n  -\n    id: b\n  - - c\n  - id: d\n    x: |', 'value entries/3/x «»'))
    it('counts items under their key', () => check('entries:\n- id: a\n- id: b\n- id: c\n  x: |', 'value entries/2/x «»'))
    it('takes no dash in a text for an item', () => check('entries:\n  - id: a\n    notes: >\n      x\n      - y\n  - id: b\n    x: |', 'value entries/1/x «»'))
    it('expects a key of the item', () => check('entries:\n  - id: a\n    da|', 'key entries/0 «da» beside id'))
    it('expects the item’s keys below it too', () => check('entries:\n  - |\n    id: a\n', 'either entries/0 «» beside id'))
    it('expects an item under the dashes', () => check('entries:\n  - id: a\n  |', 'item entries «»'))
    it('expects the next section where the dashes stand under their key', () => check('entries:\n- id: a\n|', 'key  «» beside entries'))
    it('reads dashes that stand under their key', () => check('entries:\n- id: a\n  settings:\n    fork|', 'either entries/0/settings «fork»'))
    it('expects a value in a list of words', () => check('adjusters:\n  a:\n    legs:\n      - le|', 'either adjusters/a/legs/0 «le»'))
    it('expects nothing below an item that is a word', () => check('legs:\n  - left\n      |', 'none'))
    it('reads lists in lists', () => check('a:\n  - - x\n    - y|', 'either a/0/1 «y»'))
    it('expects nothing right behind a dash', () => check('entries:\n  -|', 'none'))
    it('tells the keys of one item from those of the next', () => check('entries:\n  - id: a\n    |\n  - id: b\n    from: a\n', 'key entries/0 «» beside id'))
    it('sees the keys below the cursor', () => check('entries:\n  - id: a\n    |\n\n    # why\n    reason: b\n', 'key entries/0 «» beside id reason'))
  })

  describe('inside of brackets', () => {
    it('expects a key behind a brace', () => check('rider: {|}', 'key rider «»'))
    it('expects a key behind a comma', () => check('rider: {name: x, ki|}', 'key rider «ki» beside name'))
    it('expects a value behind a colon', () => check('rider: {name: x, kitted_mass: 8|, notes: z}', 'value rider/kitted_mass «8»'))
    it('knows the keys before and behind', () => check('rider: {name: x, |, notes: z}', 'key rider «» beside name notes'))
    it('reads braces in braces', () => check('a: {b: {c: 1}, d: {e: [1, 2, |', 'value a/d/e/2 «»'))
    it('expects nothing behind a closed value', () => check('a: {b: [1] |}', 'none'))
    it('expects nothing behind a closed brace', () => check('a: {b: 1} |', 'none'))
    it('goes on over lines', () => check('adjusters:\n  a: {on: fork,\n    controls: rebound, co|', 'key adjusters/a «co» beside controls on'))
    it('goes on over lines with a blank one', () => check('adjusters:\n  a: {on: fork,\n\n    |', 'key adjusters/a «» beside on'))
    it('gives a brace up that was never closed', () => check('adjusters:\n  a: {on: fork,\n  b: {on: sh|', 'value adjusters/b/on «sh»'))
    it('gives a bracket up at the next section', () => check('a: [1, 2\nb: |', 'value b «»'))
    it('gives a quote up that was never closed', () => check("entries:\n  - id: a\n    reason: 'because\n    verdict: ke|", 'value entries/0/verdict «ke»'))
    it('gives a quote up inside of braces', () => check("entries:\n  - ride: {felt: 'well, laps: 3}\n    verdict: ke|", 'value entries/0/verdict «ke»'))
    it('reads on behind a quote of several lines', () => check('a: {b: "one\n    two", c: |', 'value a/c «»'))
    it('expects nothing inside of a quote of several lines', () => check('a:\n  b: "one\n    tw|o"\n', 'none'))
    it('looks no further than the closing brace', () => check('a: {b: {|}, c: 1}', 'key a/b «»'))
    it('passes over quotes with commas and braces in them', () => check(`a: {b: 'x, }', "c d": "\\"}", |`, 'key a «» beside b c d'))
    it('expects a value in the braces of a list item', () => check('accepted:\n  - {finding: |', 'value accepted/0/finding «»'))
  })

  describe('what is typed', () => {
    it('is the whole value, cursor anywhere in it', () => checkRange('a: 3 cl|icks out # why', '3 clicks out'))
    it('is the value alone inside of braces', () => checkRange('a: {b: 3 cl|icks out, c: 1}', '3 clicks out'))
    it('is what the quotes hold', () => checkRange("a: '3 cl|icks out' # why", '3 clicks out'))
    it('is the key without its colon', () => checkRange('a: 1\nfork_|rebound: 3', 'fork_rebound'))
    it('is a word before something else', () => checkRange('a: 1\nfork_|rebound 3', 'fork_rebound'))
    it('is nothing on a blank line', () => checkRange('a:\n  |   \n', ''))
    it('knows that a colon follows', () => {
      const { text, offset } = marked('a: {b|: 1}')
      assert.equal(findCursor(text, offset)?.hasColon, true)
    })
    it('knows that no colon follows', () => {
      const { text, offset } = marked('a: {b|, c: 1}')
      assert.equal(findCursor(text, offset)?.hasColon, false)
    })
  })
})
