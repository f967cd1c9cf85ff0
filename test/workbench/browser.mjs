// Finds a browser for tests and pictures: one that is installed, else the one that comes with the embedded editor.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { ensureWorkbench } from './install.mjs'

const names = ['google-chrome', 'google-chrome-stable', 'chrome', 'chromium', 'chromium-browser', 'msedge', 'microsoft-edge']
const places = {
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap(variable => [
    join(process.env[variable] ?? '', 'Google', 'Chrome', 'Application', 'chrome.exe'),
    join(process.env[variable] ?? '', 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
  ]),
}

/**
 * The browser to use. `DETENT_BROWSER` names one; `DETENT_BROWSER=bundled` insists on the one from the package registry.
 * @returns {{path: string, environment: object}} the program, and variables it needs
 * @throws an Error with a sentence for people when there is none for this machine
 */
export function findBrowser() {
  const wished = process.env.DETENT_BROWSER
  if (wished && wished !== 'bundled') return { path: wished, environment: {} }
  const path = wished ? undefined : findInstalled()
  return path ? { path, environment: {} } : unpackBundled()
}

function findInstalled() {
  const suffix = process.platform === 'win32' ? '.exe' : ''
  const onPath = (process.env.PATH ?? '').split(delimiter).flatMap(folder => names.map(name => join(folder, name + suffix)))
  return [...onPath, ...(places[process.platform] ?? [])].find(path => existsSync(path) && answers(path))
}

// Some systems put a note that a browser could be installed where the browser would be; on Windows asking opens a window.
function answers(path) {
  if (process.platform === 'win32') return true
  const { status, stdout } = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 20_000 })
  return status === 0 && /\d+\.\d+/.test(stdout)
}

// The package is made for bare servers: it carries the few libraries and the font that such a machine lacks. It unpacks
// them only where it believes itself to be on one, so it is told so, in a process of its own.
function unpackBundled() {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('No browser found. Install Chrome, Chromium or Edge, or name one in DETENT_BROWSER.')
  }
  const { folder } = ensureWorkbench()
  const target = join(folder, 'browser')
  const path = join(target, 'chromium')
  if (!existsSync(join(target, 'complete'))) {
    mkdirSync(target, { recursive: true })
    const script = `import(${JSON.stringify(pathToFileURL(join(folder, 'node_modules', '@sparticuz', 'chromium', 'build', 'esm', 'index.js')).href)}).then(m => m.default.executablePath())`
    const environment = { ...process.env, TMPDIR: target, AWS_LAMBDA_JS_RUNTIME: 'nodejs20.x' }
    const { status, stderr } = spawnSync(process.execPath, ['--eval', script], { env: environment, encoding: 'utf8' })
    if (status !== 0) throw new Error(`The browser could not be unpacked.\n${stderr}`)
    writeFileSync(join(target, 'fonts', 'own.conf'), fontSettings(join(target, 'fonts')))
    writeFileSync(join(target, 'complete'), '')
  }
  const libraries = [join(target, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':')
  const fonts = existsSync('/etc/fonts/fonts.conf') ? {} : { FONTCONFIG_FILE: join(target, 'fonts', 'own.conf') }
  return { path, environment: { LD_LIBRARY_PATH: libraries, ...fonts } }
}

const fontSettings = folder => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${folder}</dir><dir>/usr/share/fonts</dir><cachedir>${folder}/cache</cachedir></fontconfig>
`

/**
 * Opens the browser without a window, with a fresh profile.
 * @param {{profile: string, viewport: {width: number, height: number}, debuggingPort?: number}} options `profile` is an
 *   empty folder; with `debuggingPort` others may connect to the same browser
 * @returns {Promise<import('playwright-core').BrowserContext>}
 */
export function launchBrowser({ profile, viewport, debuggingPort }) {
  const { path, environment } = findBrowser()
  return chromium.launchPersistentContext(profile, {
    executablePath: path,
    headless: true,
    chromiumSandbox: false,
    viewport,
    env: { ...process.env, ...environment },
    // Our own handlers end the browser; Playwright's would end the process before they are done.
    handleSIGINT: false, handleSIGTERM: false, handleSIGHUP: false,
    args: [
      '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
      ...(debuggingPort ? [`--remote-debugging-port=${debuggingPort}`] : []),
    ],
  })
}

/**
 * Has a window that is not opened yet believe that it is shown in a language: its own words stay English, for want of a
 * language pack; ours do not.
 * @param {import('playwright-core').Page} page
 * @param {string} language
 */
export async function speakIn(page, language) {
  // As text: what some loaders put around a function is not there in the page.
  await page.addInitScript(`Object.defineProperty(globalThis, '_VSCODE_NLS_LANGUAGE', { get: () => ${JSON.stringify(language)}, set() {}, configurable: true })`)
}
