import assert from 'node:assert/strict'
import { parseByLibrary, shiftParsed } from '../../../../src/core/notebook/parseTree'
import { readPlain } from '../../../../src/core/notebook/plain/readPlain'

/** Texts that are read without the library. */
const plain: Record<string, string> = {
  'keys of words, and comments': 'a: 3 out   # why\n# alone\n  # further in\n\nb: x # y # z\nc: a#b\n',
  'keys in keys, over comments at any indentation': 'a:\n# c\n  b:\n      c: 1\n   # d\n      e: 2\n  f: 3\ng: 4',
  'lists below their key, further in or not': 'a:\n- 1\n- 2\nb:\n  - 3\n  -   c: 4\n      d: 5\n  - - 6\n    - 7\n',
  'lists of what begins on the next line': '-\n  a: 1\n- # c\n    b: 2\n',
  'an entry cut out of a notebook': '  - id: x\n    settings:\n      fork: {left: 3 out, right: 4}\n\n# of the next\n',
  'brackets on one line': 'a: {b: 1, c: [2, "d", {e: f}]}\ng: [ ]\nh: {}\ni: [1,2]\nj: {"k":1,\'l\':[m]}\n',
  'quotes on one line': 'a: "x: y # z"\nb: \'it\'\'s\'\n"c d": \'\'\n\'1\': ""\n',
  'a value on a line of its own': 'a:\n  3 out\nb:\n  [1]\nc:\n  "x"\n',
  'nothing where a value would be': 'a:\nb:   \nc:   # d\ne:\n  f:\n',
  'items of nothing': '- \n-\n-   # a\n- x\n',
  'words with marks in them': 'a: b:c\nd: -5\ne: -x\nf: x-y?!&*\ng: [a:b, -c, d e]\nh: x, [y]\n-k: 1\n',
  'line ends of two characters': 'a: 1  # b\r\n\r\nc:\r\n  - "d"\r\n  - \r\n',
  'words in every script': 'ä: 日本 💥\nb: "é"\nc: x\u00a0\n',
}

/** Texts that are left to the library, right or wrong. */
const left: Record<string, string> = {
  'nothing': '', 'comments alone': '# a\n', 'a word alone over two lines': 'a\nb\n', 'a word over two lines': 'a: x\n  y\n', 'quotes over two lines': 'a: "x\n  y"\n',
  'brackets over two lines': 'a: [1,\n  2]\n', 'an escape': 'a: "\\n"\n', 'a block of text': 'a: |\n  x\n', 'a folded block': 'a: >\n  x\n',
  'an anchor': 'a: &x 1\n', 'an alias': 'a: *x\n', 'a tag': 'a: !!str 1\n', 'a document’s mark': '---\na: 1\n', 'its end': 'a: 1\n...\n', 'a directive': '%YAML 1.2\n---\na: 1\n',
  'a tab': 'a:\t1\n', 'a carriage return alone': 'a: 1\rb: 2', 'a mark of the encoding': '\ufeffa: 1\n', 'a forbidden character': 'a: \0\n',
  'a key twice': 'a: 1\na: 2\n', 'a key twice in brackets': '{a: 1, a: 2}\n', 'no key': ': 1\n', 'a question': '? a\n: b\n', 'a key in brackets': '{a}: 1\n',
  'a pair in a list': '[a: 1]\n', 'a key without a value in brackets': '{a}\n', 'nothing between commas': '[1, , 2]\n', 'a comma at the end': '[1,]\n',
  'a colon before a comma': 'a: [x:, y]\n', 'a dash before a bracket': 'a: [-]\n', 'a mark of a document in a quote': 'a: "x\n--- y"\n', 'marks at the left edge': '---a: 1\n...b: 2\n', 'an open bracket': 'a: [1\n', 'an open quote': 'a: "x\n', 'a bracket too many': 'a: [1]]\n', 'words behind quotes': 'a: "x" y\n', 'a comment against quotes': 'a: "x"#y\n',
  'two keys on a line': 'a: b: c\n', 'a list on the line of its key': 'a: - b\n', 'no colon': 'a: 1\nb\n', 'a blank before the colon': 'a : 1\n',
  'a line further in': 'a: 1\n  b: 2\n', 'a line between two columns': 'a:\n    b: 1\n  c: 2\n', 'an item among keys': 'a: 1\n- b\n', 'a key among items': '- a\nb: 1\n',
  'a reserved mark': 'a: @x\n', 'a very long key': `${'k'.repeat(1001)}: 1\n`, 'very many levels': `${'['.repeat(60)}${']'.repeat(60)}\n`,
}

describe('what is read without the library', () => {
  for (const [title, text] of Object.entries(plain)) {
    it(title, () => {
      const root = readPlain(text)
      assert.ok(root)
      assert.deepEqual({ root, findings: [] }, parseByLibrary(text))
      assert.deepEqual({ root: readPlain(text, 7), findings: [] }, shiftParsed(parseByLibrary(text), 7))
    })
  }
})

describe('what is left to the library', () => {
  for (const [title, text] of Object.entries(left)) it(title, () => assert.equal(readPlain(text), undefined))
})
