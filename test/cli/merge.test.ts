import assert from 'node:assert/strict'
import { run } from '../../src/cli/run'
import { aShelf } from './aShelf'

const base = 'format: 1\nadjusters:\n  shock_rebound: {on: shock, controls: rebound, counts: clicks}\nentries:\n  - id: a\n    settings: {shock_rebound: 3 out}\n'

const shelf = (ours: string, theirs: string) => aShelf({ base, ours, theirs })

describe('detent merge', () => {
  const [one, other] = [`${base}  - id: b\n    from: a\n`, base.replace('3 out', '4 out')]

  it('writes the merged text to OURS and says nothing', () => {
    const world = shelf(one, other)
    assert.deepEqual(run(['merge', 'base', 'ours', 'theirs'], world), { out: '', code: 0 })
    assert.equal(world.files.ours, `${other}  - id: b\n    from: a\n`)
    assert.deepEqual([world.files.base, world.files.theirs], [base, other])
  })

  it('prints it with --stdout or -p and writes nothing', () => {
    for (const option of ['--stdout', '-p']) {
      const world = shelf(one, other)
      assert.equal(run(['merge', 'base', 'ours', 'theirs', option], world).out, `${other}  - id: b\n    from: a\n`)
      assert.equal(world.files.ours, one)
    }
  })

  it('marks conflicts, names them with their line, and ends with exit code 1', () => {
    const world = shelf(base.replace('3 out', '5 out'), other)
    const { code, err } = run(['merge', 'base', 'ours', 'theirs', '--marker-size', '9', '--ours', 'HEAD', '--theirs', 'topic\nbranch', '--path', 'garage/tern.setup.yaml'], world)
    assert.equal(code, 1)
    assert.equal(err, 'garage/tern.setup.yaml:6: both sides changed shock_rebound in settings of ‘a’\n')
    assert.match(world.files.ours!, /\n<{9} HEAD\n.*5 out\}\n={9}\n.*4 out\}\n>{9} topic branch\n/)
  })

  it('ends with exit code 2 and a sentence for what is used wrongly, and writes nothing then', () => {
    for (const args of [[], ['base'], ['base', 'ours'], ['base', 'ours', 'theirs', 'more'], ['base', 'ours', 'gone'], ['base', 'ours', 'theirs', '--marker-size', '0'], ['base', 'ours', 'theirs', '--marker-size', 'x']]) {
      const world = shelf(one, other)
      const { code, err } = run(['merge', ...args], world)
      assert.deepEqual([code, world.files.ours], [2, one], args.join(' '))
      assert.ok(err)
    }
  })
})
