// Starts the embedded editor's own server on a free port, with a data folder of its own, and stops it cleanly.
import { spawnSync } from 'node:child_process'
import { createWriteStream, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { endChild, startChild } from './children.mjs'
import { removeFolder, temporaryFolder } from './folders.mjs'
import { ensureWorkbench } from './install.mjs'

const startPatienceMs = 60_000

/** User settings that keep the editor quiet and let nothing happen that a person did not ask for. */
export const quietSettings = {
  'files.autoSave': 'off',
  'telemetry.telemetryLevel': 'off',
  'workbench.startupEditor': 'none',
  'workbench.colorTheme': 'Default Light Modern',
  'workbench.tips.enabled': false,
  'workbench.enableExperiments': false,
  'git.openRepositoryInParentFolders': 'never',
  'git.autofetch': false,
  'security.workspace.trust.enabled': false,
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'update.mode': 'none',
  'chat.commandCenter.enabled': false,
}

/**
 * @typedef {object} Server
 * @property {number} port
 * @property {(folder: string, payload?: [string, string][]) => string} address of the workbench with that folder open
 * @property {Promise<string>} ended its last words, when it ends without having been asked to
 * @property {(changes: object) => void} changeSettings of the user, for windows opened from then on
 * @property {() => Promise<void>} stop ends the server and every process it started, and removes its data folder
 */

/**
 * Starts the server and resolves when it listens.
 * @param {{port?: number, settings?: object, installed?: string, log?: string, data?: string}} [options] `port` 0 or absent takes
 *   a free one; `settings` are added to the quiet ones; `installed` is a .vsix to install, or the folder of an
 *   extension that is to be there as if installed, not in development; `log` is a file that receives what the server says;
 *   `data` is a folder for what the editor keeps, which outlives the server
 * @returns {Promise<Server>}
 * @throws an Error with the server's last words when it ends or does not listen in time
 */
export async function startServer({ port = 0, settings = {}, installed, log, data: kept } = {}) {
  const { editor } = ensureWorkbench()
  const chosen = await freePort(port)
  const data = kept ?? temporaryFolder()
  const changeSettings = keepSettings(data, settings)
  if (installed?.endsWith('.vsix')) installPackage(editor, data, installed)
  else if (installed) installFolder(data, installed)

  const child = startChild(process.execPath, [
    join(editor, 'out', 'server-main.js'), '--host', '127.0.0.1', '--port', String(chosen),
    '--without-connection-token', '--accept-server-license-terms', '--server-data-dir', data, '--telemetry-level', 'off',
  ], { env: cleanEnvironment() })
  let asked = false
  const stop = async () => {
    asked = true
    await endChild(child)
    if (!kept) await removeFolder(data)
  }
  const words = keepWords(child, log)
  try {
    await listening(child, words)
  } catch (error) {
    await stop()
    throw error
  }
  const ended = new Promise(resolve => child.once('exit', () => asked || resolve(words.last())))
  return { port: chosen, address: (folder, payload = []) => addressOf(chosen, folder, payload), ended, changeSettings, stop }
}

function keepSettings(data, first) {
  const folder = join(data, 'data', 'User')
  mkdirSync(folder, { recursive: true })
  let settings = { ...quietSettings, ...first }
  const write = () => writeFileSync(join(folder, 'settings.json'), JSON.stringify(settings, null, 2))
  write()
  return changes => {
    settings = { ...settings, ...changes }
    write()
  }
}

/** Installs a packed extension, as a person does it from the command line, into `data`, what an editor keeps. */
export function installPackage(editor, data, path) {
  const args = [join(editor, 'out', 'server-main.js'), '--install-extension', path, '--server-data-dir', data, '--accept-server-license-terms']
  const { stdout, stderr } = spawnSync(process.execPath, args, { env: cleanEnvironment(), encoding: 'utf8' })
  if (!stdout.includes('was successfully installed')) throw new Error(`The editor did not install ${path}.\n${stdout}${stderr}`)
}

// What installing an extension would leave behind, except that its files stay where they are.
function installFolder(data, folder) {
  const { publisher, name, version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const entry = { identifier: { id: `${publisher}.${name}` }, version, location: { $mid: 1, path: slashed(folder), scheme: 'file' } }
  mkdirSync(join(data, 'extensions'), { recursive: true })
  writeFileSync(join(data, 'extensions', 'extensions.json'), JSON.stringify([entry]))
}

// Run from a terminal inside an editor, VSCODE_* would make the server believe that it is that editor's child. An empty
// gallery keeps it from asking a shop of extensions on the network before it starts the extensions it has.
function cleanEnvironment() {
  const kept = Object.entries(process.env).filter(([name]) => !/^(VSCODE_|ELECTRON_)/.test(name))
  return { ...Object.fromEntries(kept), EXTENSIONS_GALLERY: '{}' }
}

// What the server says goes to the log file; the end of it is kept for error messages.
function keepWords(child, log) {
  const file = log && createWriteStream(log)
  let said = ''
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', chunk => {
      file?.write(chunk)
      said = (said + chunk).slice(-8000)
    })
  }
  return { last: () => said.trimEnd().split('\n').slice(-8).join('\n') }
}

function listening(child, words) {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error(`The embedded editor did not start in ${startPatienceMs / 1000} s.\n${words.last()}`)), startPatienceMs)
    child.stdout.on('data', chunk => {
      if (!String(chunk).includes('Extension host agent listening on')) return
      clearTimeout(late)
      resolve()
    })
    child.once('exit', code => {
      clearTimeout(late)
      reject(new Error(`The embedded editor ended at once (code ${code}).\n${words.last()}`))
    })
  })
}

/** A port nobody listens on: `wanted` itself, or any when it is 0. Throws a sentence for people when `wanted` is taken. */
export function freePort(wanted = 0) {
  return new Promise((resolve, reject) => {
    const probe = createServer()
    probe.once('error', error => reject(error.code === 'EADDRINUSE' ? new Error(`Port ${wanted} is in use; choose another with --port.`) : error))
    probe.listen(wanted, '127.0.0.1', () => {
      const { port } = probe.address()
      probe.close(() => resolve(port))
    })
  })
}

function addressOf(port, folder, payload) {
  const remote = path => `vscode-remote://127.0.0.1:${port}${slashed(path)}`
  const pairs = payload.map(([name, value]) => [name, name.endsWith('Path') ? remote(value) : value])
  const query = `folder=${encodeURIComponent(slashed(folder)).replaceAll('%2F', '/')}`
  return `http://127.0.0.1:${port}/?${query}${pairs.length ? `&payload=${encodeURIComponent(JSON.stringify(pairs))}` : ''}`
}

const slashed = path => {
  const forward = path.replaceAll('\\', '/')
  return forward.startsWith('/') ? forward : `/${forward}`
}
