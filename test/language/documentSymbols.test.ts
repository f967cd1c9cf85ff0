import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { documentSymbols, type NotebookSymbol } from '../../src/language/documentSymbols'
import { aNotebook } from './aNotebook'

function lines(symbols: readonly NotebookSymbol[], indent = ''): string[] {
  return symbols.flatMap(({ kind, name, detail, children }) => [`${indent}${kind} ${name}${detail ? ` (${detail})` : ''}`, ...lines(children, `${indent}  `)])
}

function check(text: string, expected: string[]) {
  assert.deepEqual(lines(documentSymbols(readNotebook(text))), expected)
}

describe('documentSymbols', () => {
  it('lists the machine, its adjusters, and its entries with date, reason and settings', () => check(aNotebook, [
    'section machine (Teal 500)',
    'section adjusters (6)',
    '  adjuster fork_rebound (clicks out · fork, left and right)',
    '  adjuster fork_preload (turns in · fork, left and right)',
    '  adjuster shock_rebound (clicks out · shock)',
    '  adjuster shock_length (mm · shock)',
    '  adjuster shock_cam (steps · shock)',
    '  adjuster left_air (psi · fork, left)',
    'section entries (2)',
    '  entry found (2026-04-18 · as found)',
    '    setting fork_rebound ({left: 3 out, right: 6 out})',
    '    setting fork_preload (4 turns in)',
    '    setting shock_rebound (7)',
    '  entry run-1 (2026-04-18 · brought to the left)',
    '    setting fork_rebound ({right: 3 out})',
  ]))
  it('lists the groups of the machine', () => check('machine:\n  front: {travel: 1}\n  name: x\n', ['section machine (x)', '  section front']))
  it('lists an adjuster that cannot be read', () => check('adjusters:\n  a: {on: fork}\n  b:\n', ['section adjusters (2)', '  adjuster a', '  adjuster b']))
  it('lists entries without an id by their place', () => check('entries:\n  - date: 2026-01-01\n', ['section entries (1)', '  entry #1 (2026-01-01)']))
  it('gives every line a name', () => check('adjusters:\n  "": {}\n', ['section adjusters (1)', '  adjuster …']))
  it('lists nothing in an empty text', () => check('', []))

  for (const file of readdirSync('samples').filter((name) => name.endsWith('.yaml'))) {
    it(`nests every range of ${file}`, () => {
      const text = readFileSync(`samples/${file}`, 'utf8')
      const nested = (symbols: readonly NotebookSymbol[], start: number, end: number) => {
        for (const { range, nameRange, children, name } of symbols) {
          assert.ok(start <= range.start && range.end <= end, name)
          assert.ok(range.start <= nameRange.start && nameRange.end <= range.end, name)
          nested(children, range.start, range.end)
        }
      }
      nested(documentSymbols(readNotebook(text)), 0, text.length)
    })
  }
})
