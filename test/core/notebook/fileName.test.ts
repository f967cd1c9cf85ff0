import assert from 'node:assert/strict'
import { asNotebookPath, bareName, isNotebookPath } from '../../../src/core/notebook/fileName'

describe('the name of a notebook’s file', () => {
  for (const [typed, path] of [
    ['bikes/tern', 'bikes/tern.setup.yaml'], ['bikes/tern.yaml', 'bikes/tern.setup.yaml'], ['tern.yml', 'tern.setup.yml'],
    ['tern.setup', 'tern.setup.yaml'], ['tern.yaml.setup.yaml', 'tern.setup.yaml'], ['tern.setup.yaml', 'tern.setup.yaml'],
    ['tern.setup.yml', 'tern.setup.yml'], ['tern.2026', 'tern.2026.setup.yaml'], ['TERN.YAML', 'TERN.setup.yaml'],
  ] as const) {
    it(`is ${path} where ${typed} is typed`, () => {
      assert.equal(asNotebookPath(typed), path)
      assert.ok(isNotebookPath(path))
    })
  }

  it('is told from that of other files', () => {
    assert.ok(['setup.yaml', 'tern.yaml', 'tern.setup.yaml.bak', 'tern.setup.json'].every((name) => !isNotebookPath(name)))
  })

  it('is bare without its folders and its ending', () => {
    assert.deepEqual(['bikes/tern-650.setup.yaml', 'C:\\bikes\\tern.setup.yml', 'tern.txt'].map(bareName), ['tern-650', 'tern', 'tern.txt'])
  })
})
