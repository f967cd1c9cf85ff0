// Bundles the editor tests and runs them in an editor: the embedded one, or with `--desktop [version]` a desktop editor
// that the runner downloads. `--grep TEXT` runs only the tests whose title contains it, `--results FILE` keeps the sums.
//   --packed   with the packed .vsix installed, as people have it, in place of the development folder
//   --measure  what is measured in place of the tests: `test/editor/**/*.measure.ts`; the figures go beside the file of --results, as `….figures.json`
//   --only, --except NAME,…   the files of that name alone, or all others
//   --again    leaves the pictures of the run before, which tell of what is tried once more
//   --web      the same, in the browser's own extension host: a web worker, without Node
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import { parseArgs } from 'node:util'
import { downloadAndUnzipVSCode, runTests } from '@vscode/test-electron'
import { build } from 'esbuild'
import { removeFolder, temporaryFolder } from './folders.mjs'
import { cache, root } from './install.mjs'
import { packExtension } from './packExtension.mjs'
import { freePort, quietSettings } from './server.mjs'

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: { desktop: { type: 'boolean' }, packed: { type: 'boolean' }, web: { type: 'boolean' }, measure: { type: 'boolean' }, again: { type: 'boolean' }, grep: { type: 'string' }, only: { type: 'string' }, except: { type: 'string' }, results: { type: 'string' } },
})
if (options.desktop && (options.packed || options.web)) throw new Error('--packed and --web are for the embedded editor.')
const output = join(cache, `editor-suite${options.web ? '-web' : ''}${options.only ? '-only' : ''}`)
// Below the repository, so that it finds the packages; of our own, so that two runs do not meet.
const bundle = join(output, `run-${process.pid}`)
const entry = join(bundle, 'index.js')
const logs = join(output, 'logs')
const folder = temporaryFolder()

// Where the extension runs in a web worker, the suite stays in the Node host beside it, with its files and its hold on the
// window. What it asks of the extension goes through the editor, as always.
const webHost = { 'remote.extensionKind': { 'detent.detent': ['web'] } }

// Whoever asks us to end asks the editor too; we tidy up when it has ended.
process.on('SIGTERM', () => undefined)

try {
  await bundleSuite()
  process.exitCode = await run()
} catch (error) {
  console.error(error instanceof Error ? error.message : error)
  process.exitCode = 1
} finally {
  await removeFolder(folder)
  await removeFolder(bundle)
}

// The files are found by pattern, so that a test that exists is a test that runs.
async function bundleSuite() {
  const files = readdirSync(join(root, 'test', 'editor'), { recursive: true })
    .filter(isWanted).map(name => `test/editor/${name.split(sep).join('/')}`).sort()
  const list = files.map(path => `{ path: ${JSON.stringify(path)}, load: () => require(${JSON.stringify(`./${path}`)}) }`)
  await build({
    stdin: { contents: `import { runSuite } from './test/editor/suite'\nexport const run = () => runSuite([${list.join(', ')}])\n`, resolveDir: root, loader: 'ts' },
    outfile: join(bundle, 'suite.js'), bundle: true, platform: 'node', format: 'cjs', target: 'node20', sourcemap: 'inline', logLevel: 'warning',
    external: ['vscode', 'mocha', 'playwright-core', 'axe-core'],
  })
  // Source maps count only for what is loaded after they are asked for, hence the two files.
  writeFileSync(entry, `process.setSourceMapsEnabled(true)\nexports.run = () => require('./suite.js').run()\n`)
}

function isWanted(file) {
  const [name] = file.split(sep).at(-1).split('.')
  if (options.only && !options.only.split(',').includes(name)) return false
  return !options.except?.split(',').includes(name) && file.endsWith(options.measure ? '.measure.ts' : '.test.ts')
}

// Tests run in the host of the extension that is in development, so with ours installed they are one of their own.
function packedExtension() {
  writeFileSync(join(bundle, 'package.json'), JSON.stringify({ name: 'suite', publisher: 'detent', version: '0.0.0', engines: { vscode: '*' } }))
  return { developed: bundle, install: [`--install=${packExtension(join(folder, 'detent.vsix'))}`] }
}

async function run() {
  const debuggingPort = await freePort()
  const workspace = join(folder, 'notebooks')
  const userData = join(folder, 'user')
  mkdirSync(workspace)
  mkdirSync(join(userData, 'User'), { recursive: true })
  writeFileSync(join(userData, 'User', 'settings.json'), JSON.stringify({ ...quietSettings, ...(options.web ? webHost : {}) }))
  const pictures = join(output, 'pictures')
  for (const stale of [...(options.again ? [] : [pictures]), logs]) rmSync(stale, { recursive: true, force: true })
  mkdirSync(logs)
  const results = options.results ?? join(folder, 'results.json')
  const settings = { debuggingPort, workspace, pictures, results, samples: join(root, 'samples'), grep: options.grep ?? '', web: options.web ?? false, measure: options.measure ?? false }

  const { developed, install } = options.packed || options.web ? packedExtension() : { developed: root, install: [] }
  const { program, first } = options.desktop ? await desktopEditor() : embeddedEditor()
  return runTests({
    vscodeExecutablePath: program,
    launchArgs: [
      ...first, workspace, `--remote-debugging-port=${debuggingPort}`, `--user-data-dir=${userData}`,
      `--extensions-dir=${join(folder, 'extensions')}`, `--logsPath=${logs}`, '--disable-extensions', '--password-store=basic', ...install,
    ],
    extensionDevelopmentPath: developed,
    extensionTestsPath: entry,
    extensionTestsEnv: { DETENT_SUITE: JSON.stringify(settings) },
  })
}

function embeddedEditor() {
  return { program: process.execPath, first: [join(root, 'test', 'workbench', 'launcher.mjs')] }
}

async function desktopEditor() {
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) {
    throw new Error('A desktop editor needs a display. Run it under xvfb-run, or test in the embedded editor: npm test -- --editor')
  }
  const downloads = join(cache, 'desktop')
  if (!existsSync(downloads)) mkdirSync(downloads, { recursive: true })
  return { program: await downloadAndUnzipVSCode({ version: positionals[0] ?? 'stable', cachePath: downloads }), first: [] }
}
