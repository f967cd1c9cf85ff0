import assert from 'node:assert/strict'
import { capital, sentence } from '../../../src/core/words/sentence'

describe('words said within others', () => {
  it('become a sentence, with one end', () => {
    assert.deepEqual(['it is so', 'it is so.', 'Is it?', '…', 'ägypten', ''].map(sentence), ['It is so.', 'It is so.', 'Is it?', '…', 'Ägypten.', ''])
  })

  it('begin with a capital', () => {
    assert.deepEqual(['less rebound', '3 out', ''].map(capital), ['Less rebound', '3 out', ''])
  })
})
