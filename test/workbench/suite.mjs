// Bundles the editor tests and runs them in an editor: the embedded one, or with `--desktop [version]` a desktop editor
// that the runner downloads. `--grep TEXT` runs only the tests whose title contains it, `--results FILE` keeps the sums.
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import { parseArgs } from 'node:util'
import { downloadAndUnzipVSCode, runTests } from '@vscode/test-electron'
import { build } from 'esbuild'
import { removeFolder, temporaryFolder } from './folders.mjs'
import { cache, root } from './install.mjs'
import { freePort, quietSettings } from './server.mjs'

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: { desktop: { type: 'boolean' }, grep: { type: 'string' }, results: { type: 'string' } },
})
const output = join(cache, 'editor-suite')
// Below the repository, so that it finds the packages; of our own, so that two runs do not meet.
const bundle = join(output, `run-${process.pid}`)
const entry = join(bundle, 'index.js')
const logs = join(output, 'logs')
const folder = temporaryFolder()

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
    .filter(name => name.endsWith('.test.ts')).map(name => `test/editor/${name.split(sep).join('/')}`).sort()
  const list = files.map(path => `{ path: ${JSON.stringify(path)}, load: () => require(${JSON.stringify(`./${path}`)}) }`)
  await build({
    stdin: { contents: `import { runSuite } from './test/editor/suite'\nexport const run = () => runSuite([${list.join(', ')}])\n`, resolveDir: root, loader: 'ts' },
    outfile: join(bundle, 'suite.js'), bundle: true, platform: 'node', format: 'cjs', target: 'node20', sourcemap: 'inline', logLevel: 'warning',
    external: ['vscode', 'mocha', 'playwright-core', 'axe-core'],
  })
  // Source maps count only for what is loaded after they are asked for, hence the two files.
  writeFileSync(entry, `process.setSourceMapsEnabled(true)\nexports.run = () => require('./suite.js').run()\n`)
}

async function run() {
  const debuggingPort = await freePort()
  const workspace = join(folder, 'notebooks')
  const userData = join(folder, 'user')
  mkdirSync(workspace)
  mkdirSync(join(userData, 'User'), { recursive: true })
  writeFileSync(join(userData, 'User', 'settings.json'), JSON.stringify(quietSettings))
  const pictures = join(output, 'pictures')
  for (const stale of [pictures, logs]) rmSync(stale, { recursive: true, force: true })
  mkdirSync(logs)
  const results = options.results ?? join(folder, 'results.json')
  const settings = { debuggingPort, workspace, pictures, results, samples: join(root, 'samples'), grep: options.grep ?? '' }

  const { program, first } = options.desktop ? await desktopEditor() : embeddedEditor()
  return runTests({
    vscodeExecutablePath: program,
    launchArgs: [
      ...first, workspace, `--remote-debugging-port=${debuggingPort}`, `--user-data-dir=${userData}`,
      `--extensions-dir=${join(folder, 'extensions')}`, `--logsPath=${logs}`, '--disable-extensions', '--password-store=basic',
    ],
    extensionDevelopmentPath: root,
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
