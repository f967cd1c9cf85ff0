import assert from 'node:assert/strict'
import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { usages } from '../../src/cli/usages'
import { apiPath, apiReport } from './docs/apiReport'
import { codeBlocks } from './docs/codeBlocks'

const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const readme = readFileSync('README.md', 'utf8')
const installed = join(folder, 'node_modules', 'detent')
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'

/** Runs a line of a shell where the package was installed, with its program on the PATH. */
function run(line: string, environment: Record<string, string> = {}) {
  const PATH = join(folder, 'node_modules', '.bin') + delimiter + process.env.PATH
  const { status, stdout, stderr } = spawnSync('bash', ['-o', 'pipefail', '-c', line], { cwd: folder, encoding: 'utf8', env: { ...process.env, PATH, ...environment } })
  return { code: status, out: stdout, err: stderr }
}

/** What a person calls each command by, on the samples. */
const calls: Record<string, string> = {
  check: 'samples --fail-on never', show: 'samples/wren-250.setup.yaml', compare: 'samples/tern-650.setup.yaml#run-1 samples/tern-650.setup.yaml#run-2',
  turns: 'samples/tern-650.setup.yaml#run-2 samples/tern-650.setup.yaml#run-1', new: 'own.setup.yaml --from split-damping --date 2026-04-18',
  export: 'samples/tern-650.setup.yaml --format csv', merge: 'base.yaml base.yaml base.yaml --stdout', advise: 'samples/tern-650.setup.yaml',
  log: 'samples/logs/fa-3.csv --notebook samples/tern-650.setup.yaml', migrate: 'samples', completion: 'zsh',
}

/** Python's own pty.spawn takes a terminal with nothing to read yet for one that has ended, and drops the rest. */
const terminal = `
import os, pty, sys
pid, shown = pty.fork()
if pid == 0:
    os.execvp(sys.argv[1], sys.argv[1:])
while True:
    try:
        said = os.read(shown, 65536)
    except OSError:
        break
    if not said:
        break
    sys.stdout.buffer.write(said)
sys.exit(os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1]))
`

describe('the package that npm makes', function () {
  this.timeout(120_000)

  before(() => {
    // Nothing of npm's own surroundings, as when this runs below `npm test`.
    const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_/i.test(name)))
    const silent = { encoding: 'utf8' as const, env, shell: process.platform === 'win32', stdio: ['ignore', 'pipe', 'pipe'] as ['ignore', 'pipe', 'pipe'] }
    const made = JSON.parse(execFileSync(npm, ['pack', '--json', '--foreground-scripts=false', '--pack-destination', folder], silent).replace(/^[^[]*/, '')) as [{ filename: string }]
    writeFileSync(join(folder, 'package.json'), '{"private": true}')
    execFileSync(npm, ['install', '--offline', '--no-audit', '--no-fund', `./${made[0].filename}`], { ...silent, cwd: folder })
    cpSync('samples', join(folder, 'samples'), { recursive: true })
    cpSync('samples/wren-250.setup.yaml', join(folder, 'base.yaml'))
  })
  after(() => rmSync(folder, { recursive: true, force: true }))

  it('holds what runs and what tells about it, and nothing of the extension', () => {
    const files = readdirSync(installed, { recursive: true, withFileTypes: true }).filter((each) => each.isFile()).map((each) => join(each.parentPath, each.name).slice(installed.length + 1).replaceAll('\\', '/'))
    assert.deepEqual(files.sort(), [
      'CHANGELOG.md', 'LICENSE', 'README.md', 'dist/checkProgram.js', 'dist/cli.js', 'dist/core.js', 'dist/logsBeside.js', 'dist/parquet.js', 'dist/program.js', 'dist/threads.js', 'dist/yaml.js', 'package.json', 'schemas/FORMAT.md',
      'schemas/setup.schema.json', 'src/cli/detent.1', 'src/core/api.d.ts',
    ])
    assert.deepEqual(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.')), ['detent'])
  })

  it('runs by npx, in a folder with nothing else', () => {
    const { out, code } = run('npx --no-install detent --help')
    assert.equal(code, 0)
    assert.ok(out.startsWith('detent: '))
    assert.equal(run('detent --version').out.trim(), (JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }).version)
  })

  it('explains every command and runs it', () => {
    assert.deepEqual(Object.keys(calls).sort(), Object.keys(usages).sort())
    for (const [name, words] of Object.entries(calls)) {
      const help = run(`detent ${name} --help`)
      assert.deepEqual([help.code, help.err], [0, ''], name)
      assert.ok(help.out.startsWith(`detent ${name} `))
      const { code, err, out } = run(`detent ${name} ${words}`)
      assert.deepEqual([code, err], [0, ''], name)
      assert.ok(out.length > 0 || name === 'migrate', name)
    }
    assert.ok(existsSync(join(folder, 'own.setup.yaml')))
  })

  it('says what the README says it does', () => {
    const shown = codeBlocks(readme).filter(({ text }) => text.startsWith('$ detent '))
    assert.ok(shown.length >= 2)
    for (const { text } of shown) {
      const [line = '', ...rest] = text.split('\n')
      assert.equal(run(line.slice(2)).out.trimEnd(), rest.join('\n').trimEnd(), line)
    }
  })

  it('ends with the code that is promised', () => {
    assert.equal(run('detent check samples/wren-250.setup.yaml').code, 0)
    assert.equal(run('detent check samples --fail-on info').code, 1)
    assert.equal(run('detent check none.setup.yaml').code, 2)
    assert.equal(run('detent').code, 2)
    assert.equal(run('detent nothing').code, 2)
  })

  it('reads standard input and paths that no shell has spelt out', () => {
    assert.match(run('detent check - < samples/wren-250.setup.yaml').out, /^1 notebook: /m)
    assert.match(run(`detent check 'samples/*50.setup.yaml' --fail-on never`).out, /^3 notebooks: /m)
    assert.equal(run('detent show samples/tern-650.setup.yaml --all | head -1').code, 0)
  })

  it('colours on a terminal alone, and not where that is refused', function () {
    const escape = '\u001b['
    const plain = run('detent check samples --fail-on never', { FORCE_COLOR: '' })
    assert.ok(!plain.out.includes(escape), JSON.stringify(plain))
    const python = ['python3', 'python'].find((name) => spawnSync(name, ['-c', 'import pty']).status === 0)
    if (!python) return this.skip() // Nothing else here makes a terminal, and Node and git are all that is promised to be there.
    writeFileSync(join(folder, 'terminal.py'), terminal)
    // Alone with what is set here: a forge, too, sets what takes colours away (NO_COLOR, CI) or asks for them.
    const shown = (environment: Record<string, string>) => JSON.stringify(run(`env -i PATH="$PATH" TERM=xterm-256color ${Object.entries(environment).map(([name, value]) => `${name}=${value}`).join(' ')} ${python} terminal.py detent check samples --fail-on never`))
    const yellow = JSON.stringify(`${escape}33mwarning${escape}0m`).slice(1, -1)
    const coloured = shown({})
    assert.ok(coloured.includes(yellow), coloured)
    for (const [name, value] of [['NO_COLOR', '1'], ['TERM', 'dumb']] as const) {
      const text = shown({ [name]: value })
      assert.ok(text.includes('warning') && !text.includes('\\u001b'), text)
    }
  })

  it('is a library that does what the README shows, and has types for it', () => {
    const examples = codeBlocks(readme.slice(readme.indexOf('<!-- library:'), readme.indexOf('<!-- library: end'))).map(({ text }) => text)
    assert.ok(examples.length >= 4)
    examples.forEach((text, at) => {
      const expected = [...text.matchAll(/^\/\/ (.*)$/gm)].map(([, line]) => line).join('\n')
      writeFileSync(join(folder, `example${at}.mjs`), text)
      const { out, err, code } = run(`node --no-warnings example${at}.mjs`)
      assert.equal(code, 0, err)
      assert.equal(out.trim().replace(/\s*\n\s*/g, ' '), expected)
      writeFileSync(join(folder, `example${at}.mts`), text)
    })
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({
      compilerOptions: { target: 'es2022', module: 'nodenext', moduleResolution: 'nodenext', strict: true, noEmit: true, types: ['node'], typeRoots: [join(process.cwd(), 'node_modules/@types')], resolveJsonModule: true, skipLibCheck: true },
      include: ['*.mts'],
    }))
    const { stdout, status } = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', folder], { encoding: 'utf8' })
    assert.equal(status, 0, stdout)
  })
})

describe('the types of the library', function () {
  this.timeout(60_000)

  it('are those that are made (npm run docs writes them anew)', () => {
    assert.ok(readFileSync(apiPath, 'utf8').replaceAll('\r\n', '\n') === apiReport(), `${apiPath} is not what src/core/index.ts exports`)
  })
})
