import assert from 'node:assert/strict'
import fc from 'fast-check'
import { stringify } from 'yaml'
import { deepestNesting } from '../../../src/core/notebook/deepestNesting'
import { parseTree } from '../../../src/core/notebook/parseTree'
import type { TreeNode } from '../../../src/core/notebook/tree'

function depthOf(node: TreeNode): number {
  if (node.kind === 'scalar') return 0
  return 1 + Math.max(0, ...(node.kind === 'list' ? node.items : node.pairs.map(({ value }) => value)).map(depthOf))
}

describe('how deeply a text nests', () => {
  it('is told by brackets and indentation', () => {
    for (const [text, depth] of [['', 0], ['a: 1\nb: 2\n', 1], ['a:\n  b:\n    c: 1\nd: 2\n', 3], ['a: [[1], {b: 2}]', 3], ['- - - a', 4], ['a:\r\n  - b\r\n', 3], [']]]a: [', 2]] as const) {
      assert.equal(deepestNesting(text), depth, text)
    }
  })

  it('is never told too small, however a value is written', () => {
    const value = fc.letrec((tie) => ({
      value: fc.oneof({ maxDepth: 8, withCrossShrink: true }, fc.string({ maxLength: 3 }), fc.array(tie('value'), { maxLength: 3 }), fc.dictionary(fc.string({ maxLength: 2 }), tie('value'), { maxKeys: 3, noNullPrototype: true })),
    })).value
    fc.assert(fc.property(value, fc.boolean(), (made, flow) => {
      const text = stringify(made, { collectionStyle: flow ? 'flow' : 'block', indentSeq: false })
      const { root } = parseTree(text)
      // Lists that stand as far left as their key are a level without an indentation of its own.
      if (root) assert.ok(2 * deepestNesting(text) >= depthOf(root), text)
    }), { numRuns: 300 })
  })
})
