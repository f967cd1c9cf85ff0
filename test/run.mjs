// The one test command. Installs what is missing, checks types, lint and imports, runs the unit tests, builds, and runs the
// tests of the grid's page in a browser and all others in a real editor. What leaves half of a machine idle runs beside
// something else. Nothing stops at the first failure; the last line is the sum of all.
//   npm test                    everything
//   npm test -- --unit          everything but the editor
//   npm test -- --editor        the build, the page and the editor alone
//   npm test -- --web           the build and all of the editor's tests, with the extension in a browser's host
//   npm test -- --grep TEXT     only the tests whose title contains TEXT, without the checks
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import util from 'node:util'
import { endChild, endOnSignal, startChild } from './workbench/children.mjs'
import { cache, ensureDependencies, ensureWorkbench, requireNode, root } from './workbench/install.mjs'

requireNode()
const { values: wanted } = util.parseArgs({ options: { unit: { type: 'boolean' }, editor: { type: 'boolean' }, web: { type: 'boolean' }, grep: { type: 'string' } } })
const inBrowser = '^the grid |^the workbench |^a notebook’s text |^a virtual workspace '
const sums = { passed: 0, failed: 0, skipped: 0 }
const failures = []
/** What failed, once more at the end, where a forge that shows the last lines alone shows it. */
const told = []
const running = new Set()

endOnSignal(async () => {
  await Promise.all([...running].map(child => endChild(child)))
})

try {
  await installStep()
  await runSteps()
} catch (error) {
  console.error(error instanceof Error ? error.message : error)
  fail('install')
}
if (failures.length > 0) console.log(`\nFailed: ${failures.join(', ')}`)
for (const text of told) console.log(`  ${text.slice(0, 600).replaceAll('\n', '\n    ')}`)
console.log(`\n${sums.passed} passed, ${sums.failed} failed${sums.skipped > 0 ? `, ${sums.skipped} skipped` : ''}`)
process.exit(sums.failed > 0 ? 1 : 0)

async function installStep() {
  const started = Date.now()
  if (ensureDependencies()) console.log(`install: done (${since(started)})`)
}

async function runSteps() {
  const checks = !wanted.editor && !wanted.web && !wanted.grep
  const unit = !wanted.editor && !wanted.web
  const editor = !wanted.unit
  const tools = {
    tsc: 'node_modules/typescript/bin/tsc', eslint: 'node_modules/eslint/bin/eslint.js',
    depcruise: 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
  }
  if (!await check('schema', ['build.mjs', '--generate'])) fail('schema')
  // Before the unit tests, some of which hold ours against what comes with it.
  const fetched = editor && fetchEditor()
  if (checks) {
    await Promise.all([
      counted('types', () => checkAll('types', ['.', 'webview', 'src/core'].map(project => [tools.tsc, '--noEmit', '-p', project]))),
      counted('lint', () => check('lint', [tools.eslint, '--max-warnings', '0', '.'])).then(() => counted('imports', () => check('imports', [tools.depcruise, '--output-type', 'err', 'src', 'webview']))),
    ])
  }
  if (unit) await mochaSuite('unit tests', 600, [])
  const built = checks || editor ? await counted('build', () => check('build', ['build.mjs'])) : false
  if (wanted.web) {
    if (built) await suite('editor tests in a browser’s host', 900, results => ['test/workbench/suite.mjs', '--web', ...grep(), '--results', results])
    return
  }
  if (editor && built && fetched) await Promise.all([editorSuite(), otherSuites(checks)])
  else if (editor) fail(`editor tests (not run, for want of ${built ? 'an editor' : 'a build'})`)
}

function fetchEditor() {
  try {
    ensureWorkbench()
    return true
  } catch (error) {
    console.error(error.message)
    return false
  }
}

function editorSuite() {
  return suite('editor tests', 1100, results => ['test/workbench/suite.mjs', '--packed', ...grep(), '--results', results])
}

/** Beside the editor's own, of which half is waiting: what they say is told when they have ended. */
async function otherSuites(checks) {
  const apart = name => ['--no-config', '--node-option', 'import=tsx', '--timeout', '30000', `test/${name}/*.spec.ts`]
  await mochaSuite('page tests', 900, apart('webview-browser'), 'pipe')
  await mochaSuite('restart tests', 400, apart('restart'), 'pipe')
  // The part that shows whether it runs there at all; the whole takes as long again.
  if (checks) await suite('editor tests in a browser’s host', 400, results => ['test/workbench/suite.mjs', '--web', '--grep', inBrowser, '--results', results], 'pipe')
}

function mochaSuite(name, limitSeconds, args, output) {
  return suite(name, limitSeconds, results => [
    'node_modules/mocha/bin/mocha.js', ...args, ...grep(), '--forbid-only', '--reporter', 'test/workbench/sums.cjs', '--reporter-option', `file=${results}`,
  ], output)
}

function grep() {
  return wanted.grep ? ['--grep', wanted.grep] : []
}

/** Adds one to the sums for a step that is a test in itself. */
async function counted(name, step) {
  const good = await step()
  if (good) sums.passed++
  else fail(name)
  return good
}

function fail(name) {
  sums.failed++
  failures.push(name)
}

/** Runs a program quietly and shows its words only when it fails. */
async function check(name, args) {
  return checkAll(name, [args])
}

async function checkAll(name, programs) {
  const started = Date.now()
  const ended = []
  for (const args of programs) ended.push(await run(args, 300, 'pipe'))
  const good = ended.every(({ code }) => code === 0)
  console.log(`${name}: ${good ? 'good' : 'FAILED'} (${since(started)})`)
  for (const { code, said } of ended) if (code !== 0) console.log(said.trimEnd())
  return good
}

/** Runs a test suite that leaves its sums in a file; a suite that ends without them, or hangs, is a failure of its own. */
async function suite(name, limitSeconds, command, output = 'inherit') {
  const results = join(cache, `${name.replaceAll(' ', '-')}-${process.pid}.json`)
  mkdirSync(cache, { recursive: true })
  const started = Date.now()
  if (output === 'inherit') console.log(`\n${name}:`)
  const { code, said } = await run(command(results), limitSeconds, output)
  if (said) console.log(`\n${name}:\n${said.trimEnd()}`)
  const { passed = 0, failed = 0, skipped = 0, finished = false, running: last, told: these = [] } = existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : {}
  rmSync(results, { force: true })
  sums.passed += passed
  sums.failed += failed
  sums.skipped += skipped
  if (failed > 0) failures.push(name)
  told.push(...these)
  if (!finished) fail(`${name} (ended ${last ? `during "${last}"` : 'before the first test'})`)
  else if (code !== 0 && failed === 0) fail(`${name} (ended with code ${code})`)
  console.log(`${name}: ${passed} passed, ${failed} failed, ${skipped} skipped (${since(started)})\n`)
}

/** Runs a Node program to its end, or to the limit. */
async function run(args, limitSeconds, output) {
  const child = startChild(process.execPath, args, { cwd: root, output })
  running.add(child)
  let said = ''
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', chunk => said += chunk)
  const limit = setTimeout(() => {
    said += `\nStill running after ${limitSeconds} s and ended for that: node ${args.join(' ')}`
    endChild(child)
  }, limitSeconds * 1000)
  const code = await new Promise(resolve => child.once('close', resolve))
  clearTimeout(limit)
  running.delete(child)
  return { code, said }
}

function since(started) {
  return `${((Date.now() - started) / 1000).toFixed(1)} s`
}
