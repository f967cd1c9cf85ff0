import assert from 'node:assert/strict'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { disk } from '../../src/cli/disk'

describe('paths that stand for several', () => {
  const folder = mkdtempSync(join(tmpdir(), 'detent-')).replaceAll('\\', '/')
  before(() => {
    for (const path of ['a.setup.yaml', 'b.setup.yaml', '.hidden.setup.yaml', 'notes.yaml', 'team/c.setup.yaml', 'team/deep/d.setup.yml', 'node_modules/e.setup.yaml', '.git/f.setup.yaml', 'odd[1]*.setup.yaml']) {
      mkdirSync(join(folder, path, '..'), { recursive: true })
      writeFileSync(join(folder, path), '')
    }
    symlinkSync(folder, join(folder, 'team', 'loop'), 'junction')
  })
  after(() => rmSync(folder, { recursive: true }))
  const found = (pattern: string) => disk.find([`${folder}/${pattern}`]).map((path) => path.slice(folder.length + 1))

  it('are * and ? within a name', () => {
    assert.deepEqual(found('?.setup.yaml'), ['a.setup.yaml', 'b.setup.yaml'])
    assert.deepEqual(found('*.setup.yaml'), ['a.setup.yaml', 'b.setup.yaml', 'odd[1]*.setup.yaml'])
    assert.deepEqual(found('*/*.setup.y*ml'), ['team/c.setup.yaml'])
    assert.deepEqual(found('.h*.yaml'), ['.hidden.setup.yaml'])
  })

  it('are ** for any folders or none, without following links or looking into what is not ours', () => {
    assert.deepEqual(found('**/*.setup.yaml'), ['a.setup.yaml', 'b.setup.yaml', 'odd[1]*.setup.yaml', 'team/c.setup.yaml'])
    assert.deepEqual(found('team/**/*.yml'), ['team/deep/d.setup.yml'])
  })

  it('are a file of that very name, where there is one', () => {
    assert.deepEqual(found('odd[1]*.setup.yaml'), ['odd[1]*.setup.yaml'])
  })

  it('that fit nothing are told', () => {
    assert.throws(() => found('x*.setup.yaml'), /there is no file like this/)
    assert.throws(() => found('none/*.setup.yaml'), /there is no file like this/)
  })
})
