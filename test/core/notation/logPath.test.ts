import assert from 'node:assert/strict'
import fc from 'fast-check'
import { readLogPath } from '../../../src/core/notation/logPath'

describe('readLogPath', () => {
  it('reads paths beside the notebook and below, and takes out steps that lead nowhere', () => {
    assert.deepEqual(readLogPath('logs/run-1.csv'), { value: 'logs/run-1.csv' })
    assert.deepEqual(readLogPath(' ./logs//a b.csv.gz '), { value: 'logs/a b.csv.gz' })
    assert.deepEqual(readLogPath('..csv'), { value: '..csv' })
  })

  it('understands nothing that leads out: parents, roots, drives, addresses, homes', () => {
    for (const path of ['../a.csv', 'logs/../../a.csv', 'a/..', '/etc/a.csv', '\\\\server\\a.csv', 'C:/a.csv', 'c:a.csv', 'file:///a.csv', 'https://example.org/a.csv', '~/a.csv', '~a/b.csv', 'logs/', '', ' ', '.', 'a\u0000.csv', 'a\n.csv', '..\\a.csv']) {
      assert.ok(readLogPath(path).problem, JSON.stringify(path))
    }
  })

  it('offers the other stroke for a path of one system', () => {
    assert.equal((readLogPath('logs\\run-1.csv') as { suggestion?: string }).suggestion, 'logs/run-1.csv')
  })

  it('never gives a path with a step up or a root, whatever is written', () => {
    const part = fc.constantFrom('..', '.', '', 'a', '~', 'C:', '\\', '/', 'logs', '%2e%2e', '. .')
    fc.assert(fc.property(fc.array(part, { maxLength: 6 }).map((parts) => parts.join('/')), (text) => {
      const { value } = readLogPath(text)
      if (value === undefined) return
      assert.ok(!/^[\\/~]|^[a-z]:/i.test(value) && !value.split(/[\\/]/).includes('..'), value)
    }))
  })
})
