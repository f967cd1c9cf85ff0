// Fetches the embedded editor and a browser from the package registry, once, into `.cache/workbench/<hash of the lock>`.
// No install scripts run, nothing is compiled and nothing is downloaded from anywhere else.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { chmodSync, copyFileSync, cpSync, existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, symlinkSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = dirname(fileURLToPath(import.meta.url))

/** The repository's own folder. */
export const root = join(here, '..', '..')
/** Everything the tools fetch or write lies below this git-ignored folder. */
export const cache = join(root, '.cache')

/**
 * Ends the process with a sentence for people when Node is too old. Call it before anything else is imported that needs
 * a newer one.
 */
export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 11)) return
  console.error(`This needs Node 20.11 or newer; this is Node ${process.versions.node}.`)
  process.exit(1)
}

/**
 * Makes sure that the packages of the lock file are installed: `npm ci` when they are not those. What is compared is the
 * lock file that npm keeps in node_modules, because a checkout gives files any age.
 * @returns {boolean} whether it had to install
 */
export function ensureDependencies() {
  if (packagesAreThoseOfTheLock()) return false
  console.log('Installing the packages of package-lock.json …')
  npm(['ci', '--ignore-scripts'], root)
  return true
}

function packagesAreThoseOfTheLock() {
  const installed = join(root, 'node_modules', '.package-lock.json')
  if (!existsSync(installed)) return false
  const read = path => JSON.parse(readFileSync(path, 'utf8')).packages
  const there = read(installed)
  return Object.entries(read(join(root, 'package-lock.json')))
    .every(([path, { version, optional, devOptional }]) => path === '' || optional || devOptional || there[path]?.version === version)
}

/**
 * Makes sure that the embedded editor is there, installing it if needed.
 * @returns {{folder: string, editor: string}} the folder of the packages, and the editor's own folder inside it
 * @throws an Error with a sentence for people when the registry cannot be reached
 */
export function ensureWorkbench() {
  const lock = readFileSync(join(here, 'package-lock.json'))
  const folder = join(cache, 'workbench', createHash('sha256').update(lock).digest('hex').slice(0, 12))
  if (!existsSync(folder)) install(folder)
  return { folder, editor: editorFolder(folder) }
}

const editorFolder = folder => join(folder, 'node_modules', 'code-server', 'lib', 'vscode')

// Installs beside the final place and moves the whole at the end: an interrupted run leaves no half an editor behind.
function install(folder) {
  console.log('Fetching the embedded editor and browser (about 150 MB, once) …')
  const partial = `${folder}.${process.pid}`
  mkdirSync(partial, { recursive: true })
  try {
    for (const file of ['package.json', 'package-lock.json']) copyFileSync(join(here, file), join(partial, file))
    npm(['ci', '--ignore-scripts'], partial)
    const editor = editorFolder(partial)
    // Not `npm ci`: the editor's own shrinkwrap does not pass its check.
    npm(['install', '--omit=dev', '--ignore-scripts'], editor)
    symlinkSync('node_modules', join(editor, 'node_modules.asar'), 'junction')
    giveSearchProgram(partial, editor)
    // One that is there by now belongs to another run, which has begun to use it.
    removeOlder(dirname(folder), [partial, folder])
    if (existsSync(folder)) rmSync(partial, { recursive: true })
    else renameSync(partial, folder)
  } catch (error) {
    rmSync(partial, { recursive: true, force: true })
    throw error
  }
}

// The editor's version of this package downloads the program in an install script; the newer one carries it.
function giveSearchProgram(partial, editor) {
  const require = createRequire(join(partial, 'package.json'))
  const program = require('@vscode/ripgrep').rgPath
  const bin = join(editor, 'node_modules', '@vscode', 'ripgrep', 'bin')
  mkdirSync(bin, { recursive: true })
  cpSync(dirname(program), bin, { recursive: true })
  for (const file of readdirSync(bin)) chmodSync(join(bin, file), 0o755)
}

function removeOlder(folder, except) {
  for (const name of readdirSync(folder)) {
    const path = join(folder, name)
    if (!except.includes(path) && !/\.\d+$/.test(name)) rmSync(path, { recursive: true, force: true })
  }
}

/**
 * Runs npm in `folder`, quiet unless it fails.
 * @throws an Error with npm's last lines when it fails
 */
export function npm(args, folder) {
  const quiet = ['--no-audit', '--no-fund', '--no-update-notifier', '--loglevel=error']
  const result = spawnSync('npm', [...args, ...quiet], { cwd: folder, encoding: 'utf8', shell: process.platform === 'win32', stdio: ['ignore', 'pipe', 'pipe'] })
  if (result.status === 0) return
  const said = `${result.stdout ?? ''}${result.stderr ?? ''}${result.error ?? ''}`.trim().split('\n').slice(-12).join('\n')
  const offline = /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ETIMEDOUT|ENETUNREACH|network/.test(said)
  throw new Error(`npm ${args[0]} failed${offline ? ': the package registry cannot be reached. Connect once; later runs work offline' : ''}.\n${said}`)
}
