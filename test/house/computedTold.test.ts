import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { computedTold, computedToldPath } from './docs/computedTold'

describe('the calculations', () => {
  it('answer what they answered when somebody last looked: see what differs, and `npm run docs`', () => {
    assert.equal(computedTold(), readFileSync(computedToldPath, 'utf8'))
  }).timeout(20_000)
})
