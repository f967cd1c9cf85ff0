import assert from 'node:assert/strict'
import { run } from '../../src/cli/run'
import { UsageError, type World } from '../../src/cli/outcome'
import { ternSketch } from '../core/derived/ternSketch'

const world: World = {
  create: () => assert.fail('nothing is written'),
  write: () => assert.fail('nothing is written'),
  today: () => assert.fail('no day is asked'),
  find: (paths) => [...paths],
  read: (path) => {
    if (path === 'tern.setup.yaml') return ternSketch
    if (path === 'empty.setup.yaml') return 'format: 1\n'
    throw new UsageError(`${path}: there is no such file or folder`)
  },
}

describe('detent advise', () => {
  it('names the next step after the last entry, or after the one that is named', () => {
    assert.match(run(['advise', 'tern.setup.yaml'], world).out, /^run-1\nA starting point: turn Fork preload/)
    assert.match(run(['advise', 'tern.setup.yaml', '--entry', 'as-found'], world).out, /^as-found\nA starting point: bring the right leg/)
  })

  it('ends with exit code 2 and a sentence for what is used wrongly', () => {
    for (const args of [[], ['a', 'b'], ['missing'], ['tern.setup.yaml', '--entry', 'gone'], ['empty.setup.yaml']]) assert.equal(run(['advise', ...args], world).code, 2, args.join(' '))
  })
})
