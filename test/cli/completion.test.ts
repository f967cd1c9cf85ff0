import assert from 'node:assert/strict'
import { spawnSync } from 'node:child_process'
import { commandSpecs } from '../../src/cli/completion/commandSpecs'
import { completion } from '../../src/cli/completion'
import { usages } from '../../src/cli/usages'

const specs = commandSpecs({ KIND: ['twin-shocks', 'air-fork'] })
const of = (name: string) => specs.find((spec) => spec.name === name)!

/** What bash offers behind these words. */
function offered(...words: string[]): string[] {
  const script = `${completion(['bash']).out}\nCOMP_WORDS=(${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length - 1}; _detent; printf '%s\\n' "\${COMPREPLY[@]}"`
  const { stdout, stderr, status } = spawnSync('bash', ['--norc', '-c', script], { encoding: 'utf8' })
  assert.equal(status, 0, stderr)
  return stdout.split('\n').filter(Boolean)
}

describe('the commands as a shell completes them', () => {
  it('are those of the help, with what they do in a few words', () => {
    assert.deepEqual(specs.map(({ name }) => name), Object.keys(usages))
    assert.deepEqual(specs.filter(({ about }) => about.length < 10 || /\n/.test(about)), [])
  })

  it('have their options with what each may be', () => {
    assert.deepEqual(of('check').options, [
      { name: '--format', values: ['text', 'json', 'github', 'sarif'] }, { name: '--fail-on', values: ['error', 'warning', 'info', 'never'] }, { name: '--no-logs' },
    ])
    assert.deepEqual(of('show').options.slice(0, 2), [{ name: '--entry', values: [] }, { name: '--all' }])
    assert.deepEqual(of('new').options[0], { name: '--from', values: ['twin-shocks', 'air-fork'] })
    assert.deepEqual(of('completion').words, ['bash', 'zsh', 'fish'])
  })
})

describe('completion in bash', () => {
  it('offers commands, options, and what an option may be', () => {
    assert.deepEqual(offered('detent', 'c'), ['check', 'compare', 'completion'])
    assert.deepEqual(offered('detent', 'check', '--f'), ['--format', '--fail-on'])
    assert.deepEqual(offered('detent', 'check', '--fail-on', ''), ['error', 'warning', 'info', 'never'])
    assert.ok(offered('detent', 'new', 'a.setup.yaml', '--from', 'twin').includes('twin-shocks'))
    assert.deepEqual(offered('detent', 'completion', ''), ['bash', 'zsh', 'fish'])
  })

  it('leaves files to the shell', () => {
    assert.deepEqual(offered('detent', 'check', 'sam'), [])
    assert.deepEqual(offered('detent', 'log', 'a.csv', '--notebook', ''), [])
  })
})

describe('completion', () => {
  it('names every command and option for zsh and fish, with quotes that are closed', () => {
    for (const shell of ['zsh', 'fish'] as const) {
      const { out } = completion([shell])
      for (const { name, options } of specs) {
        assert.ok(out.includes(name))
        for (const option of options) assert.ok(out.includes(shell === 'zsh' ? option.name : ` -l ${option.name.slice(2)}`), option.name)
      }
      assert.equal((out.replace(/\\'/g, '').match(/'/g) ?? []).length % 2, 0)
    }
  })

  it('is read without a complaint by the shells that are here', () => {
    const there = (['bash', 'zsh', 'fish'] as const).filter((shell) => spawnSync(shell, ['--version']).status === 0)
    assert.ok(there.includes('bash'))
    for (const shell of there) {
      const { status, stderr } = spawnSync(shell, ['-n'], { input: completion([shell]).out, encoding: 'utf8' })
      assert.equal(status, 0, `${shell}: ${stderr}`)
    }
  })

  it('asks for a shell it knows', () => {
    assert.throws(() => completion([]), /name one shell: bash, zsh, fish/)
    assert.throws(() => completion(['__proto__']), /name one shell/)
  })
})
