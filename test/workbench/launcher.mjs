#!/usr/bin/env node
// Stands in for a desktop editor's program: understands the same arguments, opens the embedded editor in a browser
// without a window, runs the test suite in its extension host and ends with the suite's code. So the one suite, started
// by the one runner, serves the embedded and the desktop editor.
import { createWriteStream, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { endOnSignal } from './children.mjs'
import { launchBrowser } from './browser.mjs'
import { removeFolder, temporaryFolder } from './folders.mjs'
import { startServer } from './server.mjs'

// Begins the suite's own lines (test/editor/report.ts); the editor writes to the same stream, and its words go to a file.
const mark = 'test| '
const options = readArguments(process.argv.slice(2))
const profile = temporaryFolder()
let server, browser

const cleanUp = async () => {
  await browser?.close()
  await server?.stop()
  await removeFolder(profile)
}
endOnSignal(cleanUp)

let code = 1
try {
  code = await runSuite()
} catch (error) {
  console.error(error instanceof Error ? error.message : error)
}
await cleanUp()
process.exit(code)

/** Opens the workbench and resolves with the code that the suite ends with. */
async function runSuite() {
  const logs = options.logsPath ?? profile
  server = await startServer({ installed: options.install, settings: readSettings(options['user-data-dir']), log: join(logs, 'server.log') })
  const debuggingPort = Number(options['remote-debugging-port'] ?? 0)
  browser = await launchBrowser({ profile, viewport: { width: 1280, height: 800 }, debuggingPort })
  const page = browser.pages()[0] ?? await browser.newPage()

  const ended = new Promise((finish, fail) => {
    page.once('crash', () => fail(new Error('The editor window crashed.')))
    page.once('close', () => fail(new Error('The editor window was closed before the suite ended.')))
    server.ended.then(last => fail(new Error(`The embedded editor ended before the suite did.\n${last}`)))
    page.exposeFunction('codeAutomationExit', finish).catch(fail)
  })
  const windowLog = createWriteStream(join(logs, 'window.log'))
  await page.exposeFunction('codeAutomationLog', (type, args) => {
    const line = args.join(' ')
    if (line.startsWith(mark)) process.stdout.write(`${line.slice(mark.length)}\n`)
    else windowLog.write(`${type} ${line}\n`)
  })
  await page.goto(server.address(resolve(options.folder), [
    ['extensionDevelopmentPath', options.extensionDevelopmentPath],
    ...(options.extensionTestsPath ? [['extensionTestsPath', options.extensionTestsPath]] : []),
    ['skipWelcome', 'true'],
  ]))
  return ended
}

// `--name=value` and `--name` are kept by name, the one bare word is the folder; what we do not know is a desktop matter.
function readArguments(words) {
  const named = words.filter(word => word.startsWith('--')).map(word => {
    const [, name, value] = /^--([^=]+)=?(.*)$/s.exec(word)
    return [name, value]
  })
  return { ...Object.fromEntries(named), folder: words.find(word => !word.startsWith('-')) ?? '.' }
}

// A desktop editor reads its settings from here too.
function readSettings(userData) {
  if (!userData) return {}
  try {
    return JSON.parse(readFileSync(join(userData, 'User', 'settings.json'), 'utf8'))
  } catch {
    return {}
  }
}
