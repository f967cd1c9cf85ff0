import assert from 'node:assert/strict'
import { longestText, parseTree } from '../../../src/core/notebook/parseTree'
import { nodeAt, scalarAt, type TreeNode } from '../../../src/core/notebook/tree'

function stands(text: string, path: (string | number)[]): string {
  const node = nodeAt(parseTree(text).root, path)!
  return text.slice(node.range.start, node.range.end)
}

/** The findings of a text, each with what it underlines. */
function told(text: string): string[] {
  return parseTree(text).findings.map(({ message, range }) => `${text.slice(range.start, range.end)}: ${message}`)
}

describe('a value’s place in the text', () => {
  it('is the value alone, without what stands around it', () => {
    const text = '\ufeff# c\na: 3 out   # d\nb: "x y" # e\nc: [1, {d: 2}] # f\ng:\n  h: 1\n\n\ni: \'\'\n'
    assert.equal(stands(text, ['a']), '3 out')
    assert.equal(stands(text, ['b']), '"x y"')
    assert.equal(stands(text, ['c']), '[1, {d: 2}]')
    assert.equal(stands(text, ['c', 1, 'd']), '2')
    assert.equal(stands(text, ['g']), 'h: 1')
    assert.equal(stands(text, ['i']), "''")
  })

  it('leaves out an anchor and a tag', () => {
    assert.equal(stands('a: &x !!str 3 out\n', ['a']), '3 out')
    assert.equal(nodeAt(parseTree('a: &x !!str 3 out\n').root, ['a'])?.marked, true)
  })

  it('takes in the blanks that are part of it, and of a block all its lines', () => {
    assert.equal(stands('a: x\u00a0\n', ['a']), 'x\u00a0')
    assert.equal(stands('a: |\n  x  \n   \n\nb: 1\n', ['a']), '|\n  x  \n   ')
    assert.equal(stands('a: |+\r\n  x\r\n\r\nb: 1\r\n', ['a']), '|+\r\n  x\r\n')
    assert.equal(stands('a: |  # c\n  x', ['a']), '|  # c\n  x')
  })

  it('is an alias’s own, with the value it stands for', () => {
    const text = 'a: &x {b: 1}\nc: *x\n'
    const { root } = parseTree(text)
    assert.equal(stands(text, ['c']), '*x')
    assert.equal(stands(text, ['c', 'b']), '1')
    assert.deepEqual([nodeAt(root, ['a'])?.shared, nodeAt(root, ['a', 'b'])?.shared, nodeAt(root, ['c'])?.alias], [true, true, true])
  })
})

describe('a value’s text', () => {
  it('is as it was written, without its quotes', () => {
    const text = 'a: 1.0\nb: 012\nc: 0x1f\nd: "a\\tb"\ne: \'it\'\'s\'\nf: >\n  one\n  two\ng: yes\nh: 1_000\ni: ~\nj: !!timestamp 2026-04-18\nk: 9007199254740993\n'
    const { root } = parseTree(text)
    const words = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'j', 'k'].map((key) => scalarAt(root, [key])?.text)
    assert.deepEqual(words, ['1.0', '012', '0x1f', 'a\tb', "it's", 'one two\n', 'yes', '1_000', '2026-04-18', '9007199254740993'])
    assert.equal(scalarAt(root, ['i']), undefined)
  })

  it('does not depend on the version a directive names', () => {
    const { root } = parseTree('%YAML 1.1\n---\na: yes\nb: 12:30\n<<: {c: 1}\n')
    assert.deepEqual([scalarAt(root, ['a'])?.value, scalarAt(root, ['b'])?.value, scalarAt(root, ['<<', 'c'])?.value], ['yes', '12:30', 1])
  })
})

describe('a text that is wrong', () => {
  it('is told so at its place', () => {
    const cases: [string, RegExp][] = [
      ['a: 1\nb: 2\na: 3\n', /^a: this key stands here twice/],
      ['{a: 1, "a": 2}\n', /^"a": this key stands here twice/],
      ['1: a\n"1": b\n', /^"1": this key stands here twice/],
      ['a: *x\n', /^\*x: no anchor `&x` stands before this/],
      ['a: &x [*x]\n', /^\*x: this value would hold itself/],
      ['a: *x\nb: &x 1\n', /^\*x: no anchor/],
      ['a:\n\tb: 1\n', /a tab cannot indent/],
      ['a: 1\n---\nb: 1\n', /one YAML document/],
      ['a: [1\n', /a bracket is not closed/],
      ['a: 1\n b: 2\n', /nested value cannot stand on the line of its key/],
      [': 1\n', /a key is missing here/],
      ['a: x\0y\n', /^\0: a character that no YAML file may hold stands here \(U\+0000\)/],
      ['a: x\ud800y\n', /^\ud800: .*U\+D800/],
      ['a: x\udc00y\n', /^\udc00: .*U\+DC00/],
      ['a: x\rb: y\n', /^\r: this line ends with a carriage return alone/],
      ['a: !what 3\n', /Unresolved tag/],
    ]
    for (const [text, words] of cases) assert.match(told(text).find((each) => words.test(each)) ?? told(text).join('\n'), words, JSON.stringify(text))
  })

  it('is right with whole pairs of surrogates, tabs and every line end', () => {
    assert.deepEqual(told('a: 𝄞\tb\r\nc: "d\te"\r\n'), [])
  })

  it('is refused at once when it is too long for a notebook', () => {
    assert.match(told(`a: ${'x'.repeat(longestText)}`)[0]!, /too long for a notebook/)
  })
})

/** Texts that are made to break a reader, or broken by accident. */
const bombs: [string, () => string, RegExp | undefined][] = [
  ['brackets in brackets', () => `a: ${'['.repeat(10_000)}`, /nested too deeply/],
  ['closed brackets in brackets', () => `a: ${'['.repeat(10_000)}${']'.repeat(10_000)}`, /nested too deeply/],
  ['braces in braces', () => '{a: '.repeat(10_000), /nested too deeply/],
  ['dashes behind dashes', () => `${'- '.repeat(10_000)}x`, /nested too deeply/],
  ['keys below keys', () => Array.from({ length: 1200 }, (_, at) => `${' '.repeat(at)}a:\n`).join(''), /nested too deeply/],
  ['lists of lists that stand for lists', () => `${Array.from({ length: 30 }, (_, at) => `a${at}: &a${at} [${Array(9).fill(at === 0 ? 'x' : `*a${at - 1}`).join(', ')}]`).join('\n')}\n`, /too many values are shared/],
  ['a map of very many keys', () => Array.from({ length: 30_000 }, (_, at) => `k${at}: ${at}\n`).join(''), undefined],
  ['a million keys', () => 'k: 1\n'.repeat(1_000_000), /too long for a notebook/],
  ['a million keys as short as can be', () => '{'.padEnd(1_000_000, 'a,'), /too long for a notebook/],
  ['as many short keys as are read', () => '{'.padEnd(100_000, 'a,'), /twice/],
  ['very many commas', () => `[${','.repeat(40_000)}`, /./],
  ['very many quotes', () => '"'.repeat(20_000), /./],
  ['very many question marks', () => '? '.repeat(50_000), /./],
  ['very many anchors', () => '&a '.repeat(5_000), /./],
  ['very many documents', () => '---\n'.repeat(50_000), /one YAML document/],
  ['very many blank lines', () => `a:\n  b:\n    c: 1${'\n'.repeat(90_000)}d: 1\n`, undefined],
  ['a very long line', () => `a: ${'x'.repeat(900_000)}`, undefined],
  ['a very long number', () => `a: ${'9'.repeat(900_000)}`, undefined],
  ['a very long key', () => `${'k'.repeat(900_000)}: 1`, /./],
]

describe('a text made to break its reader', () => {
  for (const [title, make, words] of bombs) {
    it(`is read or refused in a moment: ${title}`, function () {
      this.timeout(30_000)
      const text = make()
      const started = process.cpuUsage()
      const { root, findings } = parseTree(text)
      assert.ok(process.cpuUsage(started).user < 5e6, 'seconds')
      if (words) assert.match(findings.map(({ message }) => message).join('\n'), words)
      else assert.deepEqual(findings, [])
      for (const { range } of findings) assert.ok(range.start >= 0 && range.start <= range.end && range.end <= text.length)
      assert.ok(root === undefined || depthOf(root) < 2000)
    })
  }
})

function depthOf(node: TreeNode): number {
  const inside = node.kind === 'map' ? node.pairs.map(({ value }) => value) : node.kind === 'list' ? node.items : []
  return 1 + inside.reduce((most, each) => Math.max(most, depthOf(each)), 0)
}
