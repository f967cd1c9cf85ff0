import assert from 'node:assert/strict'
import { readStateSpec } from '../../src/cli/stateSpec'
import { UsageError } from '../../src/cli/outcome'

describe('how a state is named', () => {
  const cases: [string, ReturnType<typeof readStateSpec>][] = [
    ['tern.setup.yaml', { path: 'tern.setup.yaml' }],
    ['tern.setup.yaml#run-1', { path: 'tern.setup.yaml', entry: 'run-1' }],
    ['tern.setup.yaml##3', { path: 'tern.setup.yaml', entry: '#3' }],
    ['tern.setup.yml#a#b: c', { path: 'tern.setup.yml', entry: 'a#b: c' }],
    ['main:tern.setup.yaml', { revision: 'main', path: 'tern.setup.yaml' }],
    ['main~2:my bikes/tern 650.setup.yaml#run 1', { revision: 'main~2', path: 'my bikes/tern 650.setup.yaml', entry: 'run 1' }],
    ['origin/topic:../x.yaml', { revision: 'origin/topic', path: '../x.yaml' }],
    ['HEAD@{2 days ago}:x.yaml', { revision: 'HEAD@{2 days ago}', path: 'x.yaml' }],
    ['HEAD^{/fix: the fork}:x.yaml', { revision: 'HEAD^{/fix: the fork}', path: 'x.yaml' }],
    [':x.yaml', { revision: '', path: 'x.yaml' }],
    [':2:x.yaml#run-1', { revision: ':2', path: 'x.yaml', entry: 'run-1' }],
    ['C:\\bikes\\x.setup.yaml', { path: 'C:\\bikes\\x.setup.yaml' }],
    ['c:/bikes/x.setup.yaml#run: 1', { path: 'c:/bikes/x.setup.yaml', entry: 'run: 1' }],
    ['HEAD:C:\\x.setup.yaml', { revision: 'HEAD', path: 'C:\\x.setup.yaml' }],
    ['\\\\server\\share\\a:b.yaml', { path: '\\\\server\\share\\a:b.yaml' }],
    ['./a:b.yaml', { path: './a:b.yaml' }],
    ['../a:b.yaml', { path: '../a:b.yaml' }],
    ['/tmp/a:b.yaml', { path: '/tmp/a:b.yaml' }],
    ['x.yaml#a:b', { path: 'x.yaml', entry: 'a:b' }],
    ['-', { path: '-' }],
    ['bikes#2/x.setup.yaml#run-1', { path: 'bikes#2/x.setup.yaml', entry: 'run-1' }],
    ['x#run-1', { path: 'x', entry: 'run-1' }],
  ]
  for (const [text, spec] of cases) it(`reads ${text}`, () => assert.deepEqual(readStateSpec(text), spec))

  it('takes nothing for a revision that git would take for an option, and asks for what is missing', () => {
    for (const text of ['--output=x:y.yaml', '-c:y', 'main:', '', ':', 'x.yaml#', '#run-1', 'main:#x']) assert.throws(() => readStateSpec(text), UsageError, text)
  })
})
