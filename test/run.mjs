// The one test command. Installs what is missing, checks types, lint and imports, builds, and runs the unit tests, those of the
// grid's page in a browser and all others in a real editor: two suites beside one another, as each leaves half of a machine
// idle. Nothing stops at the first failure; the last line is the sum of all. A test that fails in a window is tried once more
// at the end, in a new one.
//   npm test                    everything
//   npm test -- --unit          everything but the editor
//   npm test -- --editor        the build, the page and the editor alone
//   npm test -- --web           the build and all of the editor's tests, with the extension in a browser's host
//   npm test -- --grep TEXT     only the tests whose title contains TEXT, without the checks
import util from 'node:util'
import { ensureDependencies, ensureWorkbench, requireNode } from './workbench/install.mjs'
import { check, counted, fail, since, suite, tellEnd, tryAgain } from './workbench/steps.mjs'

requireNode()
const { values: wanted } = util.parseArgs({ options: { unit: { type: 'boolean' }, editor: { type: 'boolean' }, web: { type: 'boolean' }, grep: { type: 'string' } } })
const tools = {
  tsc: 'node_modules/typescript/bin/tsc', eslint: 'node_modules/eslint/bin/eslint.js',
  depcruise: 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
}
const suites = {
  unit: { ...mochaSuite('unit tests', 900, []), output: 'pipe' },
  page: { ...mochaSuite('page tests', 900, apart('webview-browser')), output: 'pipe', windowed: true },
  restart: { ...mochaSuite('restart tests', 400, apart('restart')), output: 'pipe', windowed: true },
  // The longest; it tells of each test as it ends, the others when they have ended.
  editor: editorSuite('editor tests', 1100, '--packed', '--except', 'compare,turns'),
  compared: { ...editorSuite('editor tests of comparisons', 600, '--packed', '--only', 'compare,turns'), output: 'pipe' },
  web: editorSuite('editor tests in a browser’s host', 900, '--web'),
}
/** The part that shows whether the extension runs there at all; the whole takes as long again. */
const inBrowser = '^the grid |^the workbench |^a notebook’s text |^a virtual workspace '

try {
  const started = Date.now()
  if (ensureDependencies()) console.log(`install: done (${since(started)})`)
  await runSteps()
  await tryAgain()
} catch (error) {
  console.error(error instanceof Error ? error.message : error)
  fail('install')
}
process.exit(tellEnd())

async function runSteps() {
  const checks = !wanted.editor && !wanted.web && !wanted.grep
  const unit = !wanted.editor && !wanted.web
  const editor = !wanted.unit
  if (!await check('schema', ['build.mjs', '--generate'])) fail('schema')
  // Before the unit tests, some of which hold ours against what comes with it.
  const fetched = editor && fetchEditor()
  if (checks) {
    await Promise.all([
      counted('types', () => check('types', ...['.', 'webview', 'src/core'].map(project => [tools.tsc, '--noEmit', '-p', project]))),
      counted('lint', () => check('lint', [tools.eslint, '--max-warnings', '0', '.'])).then(() => counted('imports', () => check('imports', [tools.depcruise, '--output-type', 'err', 'src', 'webview']))),
    ])
  }
  const built = checks || editor ? await counted('build', () => check('build', ['build.mjs'])) : false
  if (wanted.web) {
    if (built) await suite(suites.web, wanted.grep)
    return
  }
  const ready = editor && built && fetched
  if (editor && !ready) fail(`editor tests (not run, for want of ${built ? 'an editor' : 'a build'})`)
  await sideBySide([
    ...(ready ? [() => suite(suites.editor, wanted.grep)] : []),
    ...(unit ? [() => suite(suites.unit, wanted.grep)] : []),
    ...(ready ? [suites.page, suites.compared, suites.restart].map(each => () => suite(each, wanted.grep)) : []),
    ...(ready && checks ? [() => suite({ ...suites.web, output: 'pipe', limitSeconds: 400 }, inBrowser)] : []),
  ])
}

/** Two at a time, in their order: the longest first, so that both end at about the same time. */
async function sideBySide(jobs) {
  const lane = async () => {
    for (let job = jobs.shift(); job; job = jobs.shift()) await job()
  }
  await Promise.all([lane(), lane()])
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

function editorSuite(name, limitSeconds, ...options) {
  return { name, limitSeconds, windowed: true, again: ['--again'], command: (results, grep) => ['test/workbench/suite.mjs', ...options, ...grepping(grep), '--results', results] }
}

function mochaSuite(name, limitSeconds, args) {
  return {
    name, limitSeconds,
    command: (results, grep) => [
      'node_modules/mocha/bin/mocha.js', ...args, ...grepping(grep), '--forbid-only', '--reporter', 'test/workbench/sums.cjs', '--reporter-option', `file=${results}`,
    ],
  }
}

function apart(name) {
  return ['--no-config', '--node-option', 'import=tsx', '--timeout', '30000', `test/${name}/*.spec.ts`]
}

function grepping(grep) {
  return grep ? ['--grep', grep] : []
}
