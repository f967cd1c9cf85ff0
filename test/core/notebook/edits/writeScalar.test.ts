import assert from 'node:assert/strict'
import fc from 'fast-check'
import { parse } from 'yaml'
import { figureText, proseText, type Context } from '../../../../src/core/notebook/edits/writeScalar'
import { busyMs } from '../../../busyMs'

const block: Context = { flow: false, indent: '  ', lineEnd: '\n' }
const flow: Context = { flow: true, indent: '', lineEnd: '\n' }
const styles = ['plain', 'single', 'double', 'block', 'empty', undefined] as const

describe('words in YAML', () => {
  it('are read back by the YAML library as exactly these, in every place and style', () => {
    const nasty = fc.oneof(fc.string({ unit: 'binary', maxLength: 30 }), fc.string({ unit: fc.constantFrom(..." \t\n\r:#-'\"\\{}[],&*!|>%@`?~a1\u00a0\u0085\u2028\ufeff\ud800𝄞"), maxLength: 12 }))
    fc.assert(fc.property(nasty, fc.constantFrom(...styles), (text, style) => {
      const wanted = text.replace(/\r\n?/g, '\n')
      assert.deepEqual(parse(`a:\n  b: ${proseText(text, block, style)}\n  c: 1\n`), { a: { b: wanted, c: 1 } })
      assert.deepEqual(parse(`a: {b: ${proseText(text, flow, style)}, c: 1}\n`), { a: { b: wanted, c: 1 } })
      assert.deepEqual(parse(`a: [${proseText(text, flow, style)}, 1]\n`), { a: [wanted, 1] })
    }), { numRuns: 200 * Number(process.env['DETENT_RUNS'] ?? 1), seed: 1 })
  })

  it('have their line ends as the text has them', () => {
    assert.equal(proseText('a\nb', { ...block, lineEnd: '\r\n' }), '|-\r\n    a\r\n    b')
  })
})

describe('a figure in YAML', () => {
  it('stands as it was typed wherever it may', () => {
    for (const text of ['3', '3 out', '1.0', '1 3/4 turns in', '¾', '-5', '2026-04-18', '32 psi', '30 %', '.5', '68 °F', '0.95 kgf/mm', '+2', '4½″']) {
      assert.equal(figureText(text, flow), text)
      assert.equal(figureText(text, block), text)
    }
  })

  it('is quoted where it would be something else', () => {
    for (const text of ['3, 4', '~', 'null', 'true', '- 3', '{3}', '3: 4', '%', '# 3', '']) assert.match(figureText(text, flow), /^["']/, text)
  })

  it('is read back as what was typed, less the blanks around and between', () => {
    fc.assert(fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.-+/ %°½:#,{}outin'), maxLength: 14 }), fc.constantFrom(...styles), (text, style) => {
      const wanted = text.trim().replace(/\s+/g, ' ')
      const back = (written: string) => (parse(`a: ${written}`, { schema: 'failsafe' }) as { a: string }).a
      assert.equal(back(figureText(text, block, style)), wanted)
      assert.equal((parse(`[${figureText(text, flow, style)}]`, { schema: 'failsafe' }) as string[])[0], wanted)
    }), { numRuns: 200 * Number(process.env['DETENT_RUNS'] ?? 1), seed: 2 })
  })

  it('takes no time to be refused, however long it is', () => {
    assert.ok(busyMs(() => figureText(`-${'1 '.repeat(200_000)}#`, block)) < 1000)
  })
})
