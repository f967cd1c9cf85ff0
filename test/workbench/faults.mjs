// `npm run faults -- --times 100`: kills the extension host of the embedded editor in the middle of typing, again and again,
// and sees to it that what was committed stands in the notebook and that what was typed is offered again: in Restricted Mode,
// which takes nothing away from it. Wants a build.
// The last line says how often it was killed and what was lost; with anything lost, it ends with exit code 1.
import { execFileSync } from 'node:child_process'
import { readFileSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { framesWith, gridMark } from '../editor/frames.ts'
import { launchBrowser } from './browser.mjs'
import { endOnSignal } from './children.mjs'
import { removeFolder, temporaryFolder } from './folders.mjs'
import { cache, root } from './install.mjs'
import { openQuickly } from './openQuickly.mjs'
import { startServer } from './server.mjs'

const { values: options } = parseArgs({ options: { times: { type: 'string', default: '3' } } })
const folder = temporaryFolder()
const workspace = join(folder, 'notebooks')
const file = join(workspace, 'tern.setup.yaml')
const text = committed => `format: 1
machine: {name: Tern 650, use: track}   # a comment
adjusters:
  fork_compression: {on: fork, controls: compression, counts: clicks, range: 200}
  fork_rebound: {on: fork, controls: rebound, counts: clicks, range: 200}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 200}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_compression: ${committed[0]} out, fork_rebound: ${committed[1]} out, shock_rebound: ${committed[2]} out}   # counted twice
`
// As a stranger's folder is opened: nobody has said yet that it is trusted.
const untrusted = { 'security.workspace.trust.enabled': true, 'security.workspace.trust.startupPrompt': 'never', 'security.workspace.trust.banner': 'never', 'workbench.editorAssociations': { '*.setup.yaml': 'detent.setup' } }
let server, browser, page
const lost = []
const lose = words => {
  console.log(words)
  lost.push(words)
}

const cleanUp = async () => {
  await browser?.close()
  await server?.stop()
  await removeFolder(folder)
}
endOnSignal(cleanUp)

let kills = 0
try {
  await start()
  for (let round = 0; round < Number(options.times); round++) await play(round)
} catch (error) {
  const picture = join(cache, 'faults.png')
  await page?.screenshot({ path: picture }).catch(() => undefined)
  lose(`round ${kills}: ${error instanceof Error ? error.message.split('\n')[0] : error} (${picture})`)
}
await cleanUp()

console.log(`killed ${kills} times while typing, ${lost.length} losses`)
process.exit(lost.length > 0 ? 1 : 0)

async function start() {
  mkdirSync(workspace)
  writeFileSync(file, text([7, 8, 9]))
  server = await startServer({ installed: root, settings: untrusted })
  browser = await launchBrowser({ profile: join(folder, 'profile'), viewport: { width: 1280, height: 800 } })
  page = await browser.newPage()
  await page.goto(server.address(workspace))
  await page.locator('.monaco-workbench[class*="vscode-theme-"]').waitFor({ timeout: 60_000 })
  await page.getByText('Restricted Mode').first().waitFor()
  await openQuickly(page, 'tern.setup.yaml')
  await grid()
}

/** Commits one number, types another, and ends the host in between; then the typed one is taken up again and saved. */
async function play(round) {
  const committed = [20 + round, 8, 9]
  await typeInto(0, `${committed[0]} out`, 'Enter')
  await until('the number is shown', async () => (await cellText(0)).includes(String(committed[0])))
  const typed = `${100 + round} out`
  const keys = round % 3
  await typeInto(1, typed.slice(0, 1 + keys))
  await (await grid()).evaluate("document.body.dataset.before = ''")
  kill()
  kills++
  await page.keyboard.type(typed.slice(1 + keys))
  await page.keyboard.press('Enter')
  await revive()
  const offered = await until('what was typed is offered again', async () => (await cellText(1)).includes(typed)).catch(() => false)
  if (!offered) lose(`round ${round}: ‘${typed}’ is not offered again`)
  // Taken up again by Enter, and written by another.
  await typeInto(1, '', 'Enter', 'Enter')
  const wanted = text([committed[0], 100 + round, 9])
  await until('all of it is in the file', async () => {
    await page.keyboard.press('ControlOrMeta+s')
    await page.waitForTimeout(300)
    return readFileSync(file, 'utf8') === wanted
  }).catch(() => lose(`round ${round}: the file holds something else\n${readFileSync(file, 'utf8')}`))
  if (round % 10 === 9) console.log(`${round + 1} rounds, ${lost.length} losses`)
}

/** After a few ends in a row the editor asks before it starts the next host. */
async function revive() {
  const restart = page.locator('.notification-toast a.monaco-button', { hasText: /Restart .*Extension Host/ })
  await until('a new host serves the grid', async () => {
    if (await restart.first().isVisible().catch(() => false)) await restart.first().click().catch(() => undefined)
    const frame = await grid(500).catch(() => undefined)
    return frame !== undefined && await frame.locator('body:not([data-before]) #app[data-anew]').count() > 0
  }, 60_000)
}

function hosts() {
  return execFileSync('ps', ['-eo', 'pid,args'], { encoding: 'utf8' }).split('\n').filter(line => line.includes('--type=extensionHost') && line.includes(cache.split('/').at(-1))).map(line => Number(line.trim().split(' ')[0])).filter(isOurs)
}

/** Another editor may be running on this machine: ours are the children of our server. */
function isOurs(pid) {
  for (let at = pid; at > 1;) {
    if (at === process.pid) return true
    at = Number(/^\d+ \(.*\) \S (\d+)/s.exec(readFileSync(`/proc/${at}/stat`, 'utf8'))?.[1] ?? 0)
  }
  return false
}

function kill() {
  const found = hosts()
  if (found.length === 0) throw new Error('there is no host to end')
  for (const pid of found) process.kill(pid, 'SIGKILL')
}

async function grid(patienceMs = 60_000) {
  return until('a grid is shown', async () => {
    const [frame] = await framesWith(page, gridMark)
    return frame && await frame.locator('[role=gridcell]').count() > 0 ? frame : undefined
  }, patienceMs)
}

async function label(row) {
  return (await grid()).locator('[role=rowheader]', { hasText: ['Fork compression', 'Fork rebound', 'Shock rebound'][row] }).first()
}

/** What stands in the row of a label, which stands apart from it and owns it by name. */
async function cellText(row) {
  const id = await (await label(row)).getAttribute('id')
  return (await (await grid()).locator(`[role=row][aria-owns~="${id}"]`).first().innerText()).trim()
}

async function typeInto(row, words, ...keys) {
  const { x, y, width, height } = await (await label(row)).boundingBox()
  await page.mouse.click(x + width + 60, y + height / 2)
  await page.keyboard.type(words)
  for (const key of keys) await page.keyboard.press(key)
}

async function until(what, check, patienceMs = 20_000) {
  for (const end = Date.now() + patienceMs; Date.now() < end;) {
    const found = await Promise.resolve(check()).catch(() => undefined)
    if (found) return found
    await page.waitForTimeout(100)
  }
  throw new Error(`Waited in vain until ${what}`)
}
