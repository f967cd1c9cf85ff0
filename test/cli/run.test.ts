import assert from 'node:assert/strict'
import { run } from '../../src/cli/run'
import { UsageError, type World } from '../../src/cli/outcome'

const tern = `format: 1
machine: {name: Tern 650, use: track, front: {travel: 120}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings:
      fork_rebound: {left: 3 out, right: 6 out}
      shock_rebound: 7
  - id: run-1
    date: 2026-04-18
    settings: {fork_rebound: 3 out}
    sag: {front: {extended: 152, rider: [118, 110]}}
    reason: right leg brought to the left
`

function world(files: Record<string, string>): World {
  return {
    find: (paths) => [...paths],
    create: (path, text) => {
      if (path in files) throw new UsageError(`${path}: this file is there already`)
      files[path] = text
    },
    write: (path, text) => {
      files[path] = text
    },
    today: () => '2026-04-18',
    read: (path) => {
      const text = files[path]
      if (text === undefined) throw new UsageError(`${path}: there is no such file or folder`)
      return text
    },
  }
}

const files = world({ 'tern.setup.yaml': tern, 'broken.setup.yaml': 'format: 1\nmachine: {name: "Tern\n', 'clean.setup.yaml': 'format: 1\n', 'error.setup.yaml': tern.replace('7\n', '-7\n') })

describe('detent', () => {
  it('check prints file, line, column, severity, message and code, and passes on warnings by default', () => {
    const { out, code } = run(['check', 'tern.setup.yaml'], files)
    assert.match(out, /^tern\.setup\.yaml:11:42: warning: Fork rebound: the left leg stands at 3 out, the right at 6 out; .* \[legs-differ\]$/m)
    assert.match(out, /^1 notebook: 0 errors, 2 warnings, 0 notes$/m)
    assert.equal(code, 0)
  })

  it('check fails at the severity that --fail-on names and above', () => {
    assert.equal(run(['check', 'tern.setup.yaml', '--fail-on', 'warning'], files).code, 1)
    assert.equal(run(['check', 'error.setup.yaml'], files).code, 1)
    assert.equal(run(['check', 'error.setup.yaml', '--fail-on', 'never'], files).code, 0)
    assert.equal(run(['check', 'clean.setup.yaml', '--fail-on', 'info'], files).code, 0)
  })

  it('check --format json gives every finding with its place in the file and in the notebook', () => {
    const report = JSON.parse(run(['check', 'tern.setup.yaml', '--format', 'json'], files).out)
    const [finding] = report.files[0].findings
    assert.deepEqual([finding.code, finding.line, finding.column, finding.entry, finding.row], ['legs-differ', 11, 42, 'as-found', 'settings/fork_rebound/right'])
    assert.deepEqual(report.summary, { files: 1, errors: 0, warnings: 2, infos: 0 })
  })

  it('check reports a text that does not parse as an error at its line', () => {
    const { out, code } = run(['check', 'broken.setup.yaml'], files)
    assert.match(out, /^broken\.setup\.yaml:\d+:\d+: error: .*\[yaml-syntax\]$/m)
    assert.equal(code, 1)
  })

  it('show prints the resolved state after the last entry, carried positions included', () => {
    const { out, code } = run(['show', 'tern.setup.yaml'], files)
    assert.equal(code, 0)
    assert.match(out, /^Tern 650\nrun-1 · 2026-04-18\n/)
    assert.match(out, /Fork rebound, right +3 out/)
    assert.match(out, /Shock rebound +7 clicks out/)
    assert.match(out, /Rider sag, rider aboard +38 mm/)
  })

  it('show --entry goes back to an entry, and names the entries there are when it is unknown', () => {
    assert.match(run(['show', 'tern.setup.yaml', '--entry', 'as-found'], files).out, /Fork rebound, right +6 out/)
    const unknown = run(['show', 'tern.setup.yaml', '--entry', 'run-9'], files)
    assert.equal(unknown.code, 2)
    assert.match(unknown.err ?? '', /no entry ‘run-9’; did you mean ‘run-1’\? It has as-found, run-1/)
  })

  it('ends with exit code 2 and a sentence for everything that is used wrongly', () => {
    for (const args of [[], ['fly'], ['check'], ['show'], ['show', 'a', 'b'], ['check', 'missing'], ['check', 'tern.setup.yaml', '--format', 'pdf'], ['check', '--colour', 'x'], ['show', 'broken.setup.yaml'], ['__proto__']]) {
      const { code, err } = run(args, files)
      assert.equal(code, 2, args.join(' '))
      assert.ok(err && !err.includes('    at '), args.join(' '))
    }
  })

  it('tells its usage on --help', () => {
    for (const args of [['--help'], ['check', '--help'], ['show', '-h']]) assert.equal(run(args, files).code, 0)
  })

  it('new writes a notebook that check finds nothing against, and never over a file that is there', () => {
    const made: Record<string, string> = { 'old.setup.yaml': 'format: 1\n' }
    const shelf = world(made)
    const { code, out } = run(['new', 'garage/tern-650.setup.yaml', '--from', 'both-circuits-both-legs'], shelf)
    assert.equal(code, 0, out)
    assert.match(made['garage/tern-650.setup.yaml'] ?? '', /name: Tern 650\n[^]*date: 2026-04-18\n/)
    assert.equal(run(['check', 'garage/tern-650.setup.yaml', '--fail-on', 'info'], shelf).code, 0)
    assert.match(run(['new', 'old.setup.yaml', '--from', 'both-circuits-both-legs'], shelf).err ?? '', /there already/)
    assert.equal(made['old.setup.yaml'], 'format: 1\n')
  })

  it('new names the kinds there are, and the one that was probably meant', () => {
    assert.match(run(['new', 'a.setup.yaml'], files).err ?? '', /--from names the kind of machine: /)
    assert.match(run(['new', 'a.setup.yaml', '--from', 'air-fork-'], files).err ?? '', /did you mean air-fork\?/)
    assert.match(run(['new', 'a.yaml', '--from', 'air-fork'], files).err ?? '', /named \*\.setup\.yaml/)
    assert.match(run(['new', '-', '--from', 'air-fork'], files).out, /^entries:$/m)
  })
})
