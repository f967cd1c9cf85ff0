import assert from 'node:assert/strict'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { aRepository, type Repository } from '../cli/aRepository'
import { codeBlocks } from './docs/codeBlocks'
import { aShell, type Shell } from './shell'

interface Step { run?: string; uses?: string; env?: Record<string, string>; with?: Record<string, unknown> }

const readme = readFileSync('README.md', 'utf8')
const block = codeBlocks(readme.slice(readme.indexOf('<!-- forge:')))[0]!
const workflow = parse(block.text) as { on: string; permissions: Record<string, string>; jobs: { setups: { steps: Step[] } } }
const { steps } = workflow.jobs.setups
const scripts = steps.filter((step): step is Step & { run: string } => step.run !== undefined)

const tern = readFileSync('samples/tern-650.setup.yaml', 'utf8')
const changed = tern.replace('\naccepted:', '\n  - id: windy\n    date: 2026-08-01\n    settings: {fork_rebound: {left: 3 out, right: 4 out}}\n    reason: gusts | across the straight\n\naccepted:')

describe('the forge’s file in the README', function () {
  this.timeout(60_000)
  let shell: Shell
  let repository: Repository
  /** What the forge puts in the place of its expressions. */
  const told: Record<string, string> = { 'vars.DETENT': '', 'github.event.number': '7', 'github.token': 'none' }

  before(() => {
    shell = aShell()
    // What needs a network or the forge writes down what it was asked.
    shell.addProgram('npm', 'echo "npm $*" >> "$ASKED"')
    shell.addProgram('gh', 'echo "gh $*" >> "$ASKED"')
  })
  after(() => shell.remove())
  beforeEach(() => {
    repository = aRepository()
    repository.write('bikes/tern 650.setup.yaml', tern)
    repository.write('bikes/wren.setup.yaml', readFileSync('samples/wren-250.setup.yaml', 'utf8'))
    repository.commit('as found')
    repository.git('checkout', '--quiet', '-b', 'topic')
    told['vars.DETENT'] = repository.folder
  })
  afterEach(() => repository.remove())

  const workspace = () => join(repository.folder, 'workspace')
  const read = (path: string) => readFileSync(join(workspace(), path), 'utf8')
  const asked = () => readFileSync(join(repository.folder, 'asked'), 'utf8')

  /** What the forge checks out: the branch with all of the history. */
  function checkOut() {
    assert.equal(shell.run(repository.folder, 'git clone --quiet --branch topic . workspace').code, 0)
  }

  function runStep(step: Step & { run: string }) {
    const env = Object.fromEntries(Object.entries(step.env ?? {}).map(([name, value]) => [name, value.replace(/\$\{\{ (.*?) \}\}/g, (_, expression: string) => told[expression] ?? assert.fail(expression))]))
    return shell.run(workspace(), step.run, { GITHUB_BASE_REF: 'main', ASKED: join(repository.folder, 'asked'), ...env })
  }

  it('hands nothing from outside to the shell but as variables, and asks for no more than it needs', () => {
    for (const { run } of scripts) assert.doesNotMatch(run, /\$\{\{/)
    assert.deepEqual(workflow.permissions, { contents: 'read', 'pull-requests': 'write', 'security-events': 'write' })
    assert.deepEqual(steps.filter(({ uses }) => uses).map(({ uses }) => uses), ['actions/checkout@v4', 'github/codeql-action/upload-sarif@v3'])
  })

  it('runs, step by step, on a change of a notebook', () => {
    repository.write('bikes/tern 650.setup.yaml', changed)
    repository.commit('windy')
    checkOut()
    for (const step of scripts) {
      const { code, err } = runStep(step)
      assert.equal(code, 0, `${step.run}: ${err}`)
    }
    // The program comes from a clone, by scripts that there are.
    const { scripts: known } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> }
    assert.deepEqual(asked().split('\n').slice(0, 3), ['npm ci --ignore-scripts', 'npm run build', 'npm link'])
    assert.ok(known.build && existsSync('package-lock.json') && existsSync(join(repository.folder, 'detent')))
    const log = JSON.parse(read('setups.sarif')) as { version: string; runs: [{ results: { ruleId: string; locations: [{ physicalLocation: { artifactLocation: { uri: string } } }] }[] }] }
    assert.equal(log.version, '2.1.0')
    assert.ok(log.runs[0].results.some(({ ruleId, locations }) => ruleId === 'legs-differ' && locations[0].physicalLocation.artifactLocation.uri === 'bikes/tern%20650.setup.yaml'))
    assert.deepEqual(steps.find(({ uses }) => uses?.includes('sarif'))!.with, { sarif_file: 'setups.sarif' })
    const review = read('review.md')
    assert.match(review, /^#+ Tern 650/m)
    assert.match(review, /windy/)
    assert.match(review, /gusts &#124; across the straight/)
    assert.doesNotMatch(review, /Wren/)
    assert.equal(asked().split('\n')[3], 'gh pr comment 7 --body-file review.md')
    assert.match(runStep(scripts.at(-1)!).out, /^::warning file=bikes\/tern 650\.setup\.yaml,line=\d+,.*title=legs-differ::/m)
  })

  it('says nothing under a pull request that touches no notebook, and fails on an error in one', () => {
    repository.write('notes.txt', 'new tyres\n')
    repository.write('bikes/new.setup.yaml', 'format: 1\nentries: [{id: a, settings: {ghost: 3 out}}]\n')
    repository.commit('no change of a notebook, and a new one')
    checkOut()
    assert.deepEqual(scripts.map((step) => runStep(step).code), [0, 0, 0, 0, 1])
    assert.equal(read('review.md'), '')
    assert.doesNotMatch(asked(), /^gh/m)
  })
})

describe('the file for a second forge in the README', function () {
  this.timeout(60_000)
  const text = codeBlocks(readme.slice(readme.indexOf('<!-- forge 2:')))[0]!.text
  const { setups } = parse(text) as { setups: { script: string[]; artifacts: { paths: string[] } } }

  /** Runs the job’s lines in a clone of a repository whose topic branch has one more commit than main. */
  function runJob(after: string) {
    const shell = aShell()
    const repository = aRepository()
    try {
      shell.addProgram('npm', 'echo "npm $*"')
      repository.write('bikes/tern 650.setup.yaml', tern)
      repository.commit('as found')
      repository.git('checkout', '--quiet', '-b', 'topic')
      repository.write('bikes/tern 650.setup.yaml', after)
      repository.commit('topic')
      assert.equal(shell.run(repository.folder, 'git clone --quiet --branch topic . workspace').code, 0)
      const workspace = join(repository.folder, 'workspace')
      const base = shell.run(workspace, 'git rev-parse HEAD~1').out.trim()
      const ran = shell.run(workspace, setups.script.join('\n'), { DETENT: repository.folder, CI_MERGE_REQUEST_DIFF_BASE_SHA: base })
      return { ...ran, kept: setups.artifacts.paths.map((path) => (existsSync(join(workspace, path)) ? readFileSync(join(workspace, path), 'utf8') : undefined)) }
    } finally {
      shell.remove()
      repository.remove()
    }
  }

  it('runs on a change of a notebook, and keeps its summary and its findings', () => {
    const { code, err, out, kept: [review, sarif] } = runJob(changed)
    assert.equal(code, 0, err)
    assert.match(out, /legs-differ/)
    assert.match(review ?? '', /^#+ Tern 650[^]*windy/m)
    assert.equal((JSON.parse(sarif ?? '') as { version: string }).version, '2.1.0')
  })

  it('fails on an error, and keeps both all the same', () => {
    const { code, kept } = runJob(changed.replace('right: 4 out', 'right: 400 out'))
    assert.equal(code, 1)
    assert.ok(kept.every(Boolean))
  })
})

describe('the hooks for pre-commit', function () {
  this.timeout(60_000)
  const hooks = parse(readFileSync('.pre-commit-hooks.yaml', 'utf8')) as { id: string; entry: string; language: string; files: string }[]

  /** What the framework does: the entry with the paths that match, in the repository’s folder. */
  function runHook(id: string, files: Record<string, string>) {
    const hook = hooks.find((each) => each.id === id)!
    const shell = aShell()
    const repository = aRepository()
    try {
      for (const [path, text] of Object.entries(files)) repository.write(path, text)
      const matching = Object.keys(files).filter((path) => new RegExp(hook.files).test(path))
      return { ...shell.run(repository.folder, `${hook.entry} ${matching.map((path) => `'${path}'`).join(' ')}`), matching }
    } finally {
      shell.remove()
      repository.remove()
    }
  }

  it('are what the README names, run by node', () => {
    const block = parse(codeBlocks(readme.slice(readme.indexOf('<!-- pre-commit:')))[0]!.text) as { repos: [{ hooks: { id: string }[] }] }
    for (const { id } of block.repos[0].hooks) assert.ok(hooks.some((hook) => hook.id === id), id)
    assert.ok(hooks.every(({ language }) => language === 'node'))
  })

  it('pass what is well and stop what cannot be', () => {
    const wren = readFileSync('samples/wren-250.setup.yaml', 'utf8')
    assert.deepEqual(runHook('detent-check', { 'a b.setup.yaml': wren, 'notes.yaml': 'x: [' }).matching, ['a b.setup.yaml'])
    assert.equal(runHook('detent-check', { 'a b.setup.yaml': wren }).code, 0)
    assert.equal(runHook('detent-check', { 'new.setup.yml': 'format: 1\nentries: [{id: a, settings: {ghost: 3 out}}]\n' }).code, 1)
    assert.equal(runHook('detent-migrate', { 'old.setup.yaml': 'format: 0\n' }).code, 1)
    assert.equal(runHook('detent-migrate', { 'now.setup.yaml': wren }).code, 0)
  })
})
