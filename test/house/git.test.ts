import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { aRepository, type Repository } from '../cli/aRepository'
import { codeBlocks } from './docs/codeBlocks'
import { aShell, type Shell } from './shell'

const readme = readFileSync('README.md', 'utf8')
const lines = codeBlocks(readme.slice(readme.indexOf('<!-- git:')))[0]!

const tern = readFileSync('samples/tern-650.setup.yaml', 'utf8')
const file = 'bikes/tern 650.setup.yaml'
const entry = (id: string, setting: string) => `\n  - id: ${id}\n    date: 2026-08-01\n    settings: {${setting}}\n    reason: ${id} says why\n`
const withEntry = (id: string, setting: string, text = tern) => text.replace('\naccepted:', `${entry(id, setting)}\naccepted:`)

describe('git, set up as the README says', function () {
  this.timeout(60_000)
  let shell: Shell
  let repository: Repository
  const git = (script: string) => shell.run(repository.folder, script)
  const read = () => readFileSync(join(repository.folder, file), 'utf8')

  before(() => {
    shell = aShell()
  })
  after(() => shell.remove())
  beforeEach(() => {
    repository = aRepository()
    repository.write(file, tern)
    assert.equal(lines.info, 'sh')
    assert.equal(lines.text.trim().split('\n').length, 3)
    assert.deepEqual(git(lines.text), { code: 0, out: '', err: '' })
    repository.commit('as found')
  })
  afterEach(() => repository.remove())

  /** Two branches from the same commit, each with its own text of the notebook; on `main` to begin with. */
  function branches(ours: string, theirs: string) {
    assert.equal(git('git checkout -q -b theirs').code, 0)
    repository.write(file, theirs)
    repository.commit('theirs')
    assert.equal(git('git checkout -q main').code, 0)
    repository.write(file, ours)
    repository.commit('ours')
  }

  it('shows the table in a diff, and no line but those that tell what changed', () => {
    repository.write(file, withEntry('windy', 'fork_rebound: 3 out'))
    const { code, out, err } = git('git diff')
    assert.deepEqual([code, err], [0, ''])
    assert.match(out, /^\+windy · 2026-08-01$/m)
    assert.match(out, /^\+ {2}Fork rebound, left +3 out$/m)
    assert.match(out, /^\+ {2}Shock compression +10 out$/m, 'what is carried on')
    assert.doesNotMatch(out, /^-[^-]/m)
    repository.write(file, tern.replace('settings: {shock_rebound: 9 out}\n    reason: back to 9', 'settings: {shock_rebound: 8 out}\n    reason: back to 9'))
    const changed = git('git diff -U0').out.split('\n').filter((line) => /^[+-] /.test(line)).map((line) => line.replace(/\s+/g, ' '))
    assert.deepEqual([...new Set(changed)], ['- Shock rebound 9 out', '+ Shock rebound 8 out'])
  })

  it('shows a text that does not parse beside the table of the one before', () => {
    repository.write(file, tern.replace('machine:', 'machine: [{'))
    const { code, out } = git('git diff')
    assert.equal(code, 0)
    assert.match(out, /^\+This text does not parse: line \d+: /m)
    assert.match(out, /^-Tern 650$/m)
  })

  it('merges an entry from each of two branches', () => {
    branches(withEntry('o-1', 'fork_rebound: 3 out'), withEntry('t-1', 'shock_rebound: 8 out'))
    const { code, err } = git('git merge -q theirs -m both')
    assert.deepEqual([code, err], [0, ''])
    const { entries } = readNotebook(read())
    assert.deepEqual(entries.slice(-2).map(({ key, parent }) => [key, parent?.key]), [['o-1', 'dry-again'], ['t-1', 'dry-again']])
    assert.equal(git('git status --porcelain').out, '')
    assert.equal(git(`detent check "${file}"`).code, git('git show main~1:bikes/*.yaml | detent check -').code)
  })

  it('marks the same adjuster set twice at its line, says so, and leaves the file in conflict', () => {
    const set = (position: string) => tern.replace('settings: {shock_rebound: 9 out}\n    reason: back to 9', `settings: {shock_rebound: ${position}}\n    reason: back to 9`)
    branches(set('8 out'), withEntry('t-1', 'fork_rebound: 3 out', set('10 out')))
    const { code, out, err } = git('git merge theirs -m both')
    assert.equal(code, 1)
    assert.match(err + out, /bikes\/tern 650\.setup\.yaml:\d+: both sides changed shock_rebound in settings of ‘jl-1’/)
    assert.match(read(), /<{7} ours\n {4}settings: \{shock_rebound: 8 out\}\n={7}\n {4}settings: \{shock_rebound: 10 out\}\n>{7} theirs\n/)
    assert.equal(read().match(/^<{7}/gm)!.length, 1)
    assert.match(read(), /id: t-1/)
    assert.equal(git('git status --porcelain').out, `UU "${file}"\n`)
    assert.equal(git('git ls-files --unmerged').out.split('\n').filter(Boolean).length, 3)
  })

  it('merges a notebook that was renamed on one side', () => {
    git('git checkout -q -b theirs')
    repository.write(file, withEntry('t-1', 'shock_rebound: 8 out'))
    repository.commit('theirs')
    git(`git checkout -q main && git mv "${file}" bikes/other.setup.yaml`)
    repository.write('bikes/other.setup.yaml', withEntry('o-1', 'fork_rebound: 3 out'))
    repository.commit('renamed')
    assert.equal(git('git merge -q theirs -m both').code, 0)
    assert.match(readFileSync(join(repository.folder, 'bikes/other.setup.yaml'), 'utf8'), /id: o-1[^]*id: t-1/)
  })

  it('rebases and picks by entries too', () => {
    branches(withEntry('o-1', 'fork_rebound: 3 out'), withEntry('t-1', 'shock_rebound: 8 out'))
    assert.equal(git('git cherry-pick theirs').code, 0)
    assert.match(read(), /id: o-1[^]*id: t-1/)
  })
})
