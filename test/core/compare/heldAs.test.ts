import assert from 'node:assert/strict'
import { heldAs } from '../../../src/core/compare/heldAs'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const notebook = (logger: string, log: string) => readNotebook(`format: 1
machine:
  name: Tern 650
  ${logger}
entries:
  - id: one
    date: 2026-06-13
    ride: {${log}}
`)
const logger = 'logger: {time: {column: t}, front: {column: fork}}'

describe('heldAs', () => {
  it('says of which time the logs of another version are, where there are any that would be read', () => {
    assert.equal(heldAs(notebook(logger, 'log: logs/one.csv'), 'HEAD~2'), 'as it is in HEAD~2; its logs as they lie beside the file now')
    assert.equal(heldAs(notebook(logger, 'log: logs/one.csv'), undefined), 'as it is staged; its logs as they lie beside the file now')
    assert.equal(heldAs(notebook(logger, 'track: Sandhill'), 'HEAD~2'), 'as it is in HEAD~2')
    assert.equal(heldAs(notebook('use: track', 'log: logs/one.csv'), undefined), 'as it is staged')
  })
})
