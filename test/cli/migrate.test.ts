import assert from 'node:assert/strict'
import { run } from '../../src/cli/run'
import { aShelf } from './aShelf'

const files = (): Record<string, string> => ({
  'old.setup.yaml': 'format: 0\nbike: {name: Tern 650}\n',
  'now.setup.yaml': 'format: 1\nmachine: {name: Wren 250}\n',
  'torn.setup.yaml': 'format: 0\nbike: {name: Tern 650}\nmachine: {}\n',
})

function shelf() {
  const world = aShelf(files())
  return { ...world, find: (paths: readonly string[]) => (paths[0] === '.' ? Object.keys(world.files).filter((path) => !path.startsWith('torn')) : world.find(paths)) }
}

describe('detent migrate', () => {
  it('says which notebooks are old, writes nothing, and ends with exit code 1', () => {
    const world = shelf()
    assert.deepEqual(run(['migrate', '.'], world), { out: 'old.setup.yaml: format 0\n', code: 1 })
    assert.deepEqual(world.files, files())
  })

  it('brings them to the format of today with --write, and then finds none', () => {
    const world = shelf()
    assert.deepEqual(run(['migrate', '.', '--write'], world), { out: 'old.setup.yaml: brought from format 0 to today\'s\n', code: 0 })
    assert.deepEqual(world.files, { ...files(), 'old.setup.yaml': 'format: 1\nmachine: {name: Tern 650}\n' })
    assert.deepEqual(run(['migrate', '.'], world), { out: '', code: 0 })
  })

  it('says where something must be put right by hand, with exit code 2, and writes nothing there', () => {
    const world = shelf()
    const { err, code } = run(['migrate', 'torn.setup.yaml', '--write'], world)
    assert.deepEqual([err, code], ['torn.setup.yaml:1:9: both `bike` and `machine` stand here; keep one of them\n', 2])
    assert.deepEqual(world.files, files())
  })

  it('wants to be told what', () => {
    assert.equal(run(['migrate'], shelf()).code, 2)
  })
})
