import assert from 'node:assert/strict'
import { run } from '../../src/cli/run'
import { UsageError, type World } from '../../src/cli/outcome'
import { ternSketch } from '../core/derived/ternSketch'

const files: Record<string, string> = { 'tern.setup.yaml': ternSketch, 'broken.setup.yaml': 'machine: {name: "Tern\n' }
const world: World = {
  find: (paths) => [...paths], create: () => undefined, write: () => undefined, today: () => '2026-04-18',
  read: (path) => {
    if (files[path] === undefined) throw new UsageError(`${path}: there is no such file or folder`)
    return files[path]
  },
}

describe('detent export', () => {
  it('prints JSON by default and CSV on request', () => {
    const { out, code } = run(['export', 'tern.setup.yaml'], world)
    assert.equal(code, 0)
    assert.equal(JSON.parse(out).entries[0].derived.front.rider_sag_mm, 38)
    assert.match(run(['export', 'tern.setup.yaml', '--format', 'csv'], world).out, /^id,from,settings\.fork_preload\.left\.value,/)
  })

  it('ends with exit code 2 and a sentence for no file, two files, another format, and a broken text with its place', () => {
    for (const args of [[], ['a', 'b'], ['missing'], ['tern.setup.yaml', '--format', 'xml']]) assert.equal(run(['export', ...args], world).code, 2)
    assert.match(run(['export', 'broken.setup.yaml'], world).err ?? '', /^detent export: broken\.setup\.yaml:\d+:\d+: /)
  })
})
