import assert from 'node:assert/strict'
import fc from 'fast-check'
import { parse } from 'yaml'
import { resolvePlain } from '../../../../src/core/notebook/plain/resolvePlain'

const words = [
  '~', 'null', 'Null', 'NULL', 'nUll', 'true', 'True', 'TRUE', 'tRUE', 'false', 'False', 'FALSE', 'yes', 'on', '0', '-0', '+7', '007', '12e3', '1.', '.5', '-.5e-3', '1.50', '.', '1e999',
  '0o17', '0o8', '-0o7', '0x1F', '0xg', '.inf', '-.Inf', '+.INF', '.nan', '.NaN', '.Nan', '-.nan', '1_000', '12:30', '2026-04-18', '9007199254740993', '3 out', 'x',
]
/** What words of more than words are made of. */
const likeNumbers = fc.array(fc.constantFrom(...'0189.+-eEoxfInNaulrs~'), { minLength: 1, maxLength: 6 }).map((chars) => chars.join(''))

describe('what a word without quotes means', () => {
  it('is what the library makes of it', () => {
    const check = (word: string) => assert.deepEqual(resolvePlain(word), (parse(`a: ${word}`, { version: '1.2', schema: 'core' }) as { a: unknown }).a, word)
    words.forEach(check)
    fc.assert(fc.property(likeNumbers.filter((word) => word !== '-'), check), { numRuns: 2000 })
  })
})
