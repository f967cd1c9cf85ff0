// `npm start [-- [--browser] [--no-open] [--port N] [folder]]`: builds, then opens the samples, or the folder given, in an
// editor with the extension running. The editor is the one on the PATH; failing that, or with `--browser`, it is the
// embedded one, seen in the default browser, until Ctrl+C.
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { delimiter, join, resolve } from 'node:path'
import util from 'node:util'
import { endOnSignal } from './children.mjs'
import { ensureDependencies, requireNode, root } from './install.mjs'
import { freePort, startServer } from './server.mjs'

const usualPort = 8650
const windows = process.platform === 'win32'

try {
  await start()
} catch (error) {
  console.error(error instanceof Error ? error.message : error)
  process.exit(1)
}

async function start() {
  requireNode()
  const { values: options, positionals } = readOptions()
  const folder = positionals[0] ? resolve(positionals[0]) : join(root, 'samples')
  if (!existsSync(folder) || !statSync(folder).isDirectory()) throw new Error(`There is no folder ${folder}.`)
  if (ensureDependencies()) console.log('Installed.')
  buildExtension()
  if (!options.browser && openInstalledEditor(folder)) return
  await serve(folder, options)
}

function readOptions() {
  try {
    return util.parseArgs({
      allowPositionals: true,
      options: { browser: { type: 'boolean' }, 'no-open': { type: 'boolean' }, port: { type: 'string' } },
    })
  } catch (error) {
    throw new Error(`${error.message}\nUsage: npm start [-- [--browser] [--no-open] [--port N] [folder]]`)
  }
}

function buildExtension() {
  const { status } = spawnSync(process.execPath, ['build.mjs'], { cwd: root, stdio: 'inherit' })
  if (status !== 0) throw new Error('The build failed; what it said stands above.')
}

// The `code` of a terminal inside a remote window cannot run an extension from a folder, so it is passed over.
function openInstalledEditor(folder) {
  const name = windows ? 'code.cmd' : 'code'
  const onPath = (process.env.PATH ?? '').split(delimiter).some(place => existsSync(join(place, name)))
  if (!onPath || process.env.VSCODE_IPC_HOOK_CLI) return false
  const args = ['--new-window', `--extensionDevelopmentPath=${root}`, folder]
  const { status } = spawnSync(name, windows ? args.map(arg => `"${arg}"`) : args, { stdio: 'inherit', shell: windows })
  if (status === 0) console.log(`Opened ${folder} in the editor on your PATH (npm start -- --browser uses the embedded one).`)
  else console.log('The editor on your PATH did not start; using the embedded one.')
  return status === 0
}

async function serve(folder, options) {
  const port = options.port ? await freePort(readPort(options.port)) : await freePort(usualPort).catch(() => freePort())
  const server = await startServer({ port })
  endOnSignal(server.stop)
  const address = server.address(folder, [['extensionDevelopmentPath', root], ['skipWelcome', 'true']])
  console.log(`\nThe editor is at\n\n  ${address}\n\nPress Ctrl+C to stop it.`)
  if (!options['no-open']) openBrowser(address)
  const last = await server.ended
  await server.stop()
  throw new Error(`The embedded editor ended by itself. Its last words:\n${last}`)
}

function readPort(text) {
  const port = Number(text)
  if (!Number.isInteger(port) || port < 1 || port > 65535) throw new Error(`"${text}" is no port; give a number from 1 to 65535.`)
  return port
}

// Quiet when there is nothing to open it with: the address has been printed.
function openBrowser(address) {
  const onScreen = process.env.DISPLAY || process.env.WAYLAND_DISPLAY || process.env.WSL_DISTRO_NAME
  if (process.platform === 'linux' && !onScreen) return
  const [command, ...args] = { darwin: ['open'], win32: ['rundll32', 'url.dll,FileProtocolHandler'] }[process.platform] ?? ['xdg-open']
  const opener = spawn(command, [...args, address], { stdio: 'ignore', detached: true })
  opener.on('error', () => undefined)
  opener.unref()
}
