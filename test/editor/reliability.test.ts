import assert from 'node:assert/strict'
import { execFileSync } from 'node:child_process'
import { Socket as UdpSocket } from 'node:dgram'
import { chmodSync, closeSync, existsSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createConnection, Socket } from 'node:net'
import type { Request } from 'playwright-core'
import * as vscode from 'vscode'
import { openInGrid } from './openInGrid'
import { pause, until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { openGrid, openText, textOf } from './workspace'

const rows = Array.from({ length: 30 }, (_, at) => `slot_${String(at).padStart(2, '0')}`)
const tern = `format: 1
machine: {name: Tern 650, use: track}   # a comment
adjusters:
${rows.map((name) => `  ${name}: {on: shock, controls: rebound, counts: clicks, range: 200}\n`).join('')}entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings:
${rows.map((name) => `      ${name}: 5 out\n`).join('')}    notes: x
`

async function has(uri: vscode.Uri, ...parts: string[]): Promise<void> {
  await until(`the text has ${parts.join(', ')}`, async () => {
    const text = await textOf(uri)
    return parts.every((part) => text.includes(part))
  })
}

/** Writes down whom any code of this host connects to; all of Node's requests end in a socket, and so do the host's own of `fetch`. */
function watchSockets(): { asked: string[]; end(): void } {
  const asked: string[] = []
  const { connect } = Socket.prototype
  const { send } = UdpSocket.prototype
  Socket.prototype.connect = function (this: Socket, ...args: unknown[]) {
    const [first] = (Array.isArray(args[0]) ? args[0] : args) as unknown[]
    const { host, port, path } = typeof first === 'object' && first ? first as { host?: string; port?: number; path?: string } : { host: String(args[1] ?? ''), port: Number(first), path: undefined }
    asked.push(path ?? `${host}:${port}`)
    return connect.apply(this, args as never)
  } as typeof connect
  UdpSocket.prototype.send = function (this: UdpSocket, ...args: unknown[]) {
    asked.push('a datagram')
    return send.apply(this, args as never)
  } as typeof send
  return { asked, end: () => { Object.assign(Socket.prototype, { connect }); Object.assign(UdpSocket.prototype, { send }) } }
}

/** Keeps a file from being written, until what it gives is called; `undefined` where this user may write everything. Permissions do not bind the machine's administrator. */
function forbidWriting(path: string): (() => void) | undefined {
  const ways: [forbid: () => void, allow: () => void][] = [
    [() => chmodSync(path, 0o444), () => chmodSync(path, 0o644)],
    [() => execFileSync('chattr', ['+i', path], { stdio: 'ignore' }), () => execFileSync('chattr', ['-i', path])],
  ]
  for (const [forbid, allow] of ways) {
    try {
      forbid()
    } catch {
      continue
    }
    try {
      closeSync(openSync(path, 'r+'))
      allow()
    } catch {
      return allow
    }
  }
  return undefined
}

/** Puts something into the text as another extension, or another window on it, would. */
async function insert(uri: vscode.Uri, before: string, words: string): Promise<boolean> {
  const document = await vscode.workspace.openTextDocument(uri)
  const edit = new vscode.WorkspaceEdit()
  edit.insert(uri, document.positionAt(document.getText().indexOf(before)), words)
  return vscode.workspace.applyEdit(edit)
}

describe('nothing is lost', () => {
  it('of many numbers typed faster than they are written, nor of what is written into the text meanwhile', async () => {
    const { uri } = await openInGrid(tern)
    const others = Promise.all(Array.from({ length: 10 }, async (_, at) => {
      await pause(60 * at)
      return insert(uri, 'machine:', `# note ${at}\n`)
    }))
    for (let at = 0; at < rows.length; at++) {
      await type(String(100 + at))
      await press('Enter')
    }
    const inserted = (await others).flatMap((done, at) => (done ? [`# note ${at}\n`] : []))
    assert.ok(inserted.length > 0)
    await has(uri, ...rows.map((name, at) => `${name}: ${100 + at}\n`), ...inserted)
    const text = (await textOf(uri)).replace(/# note \d\n/g, '')
    assert.equal(text, rows.reduce((now, name, at) => now.replace(`${name}: 5 out`, `${name}: ${100 + at}`), tern), 'and nothing else is different')
  })

  it('in either of two grids on one file, and each shows what the other wrote', async () => {
    const { uri } = await openInGrid(tern)
    await openGrid(uri, vscode.ViewColumn.Beside)
    const [first, second] = [await gridFrame(0), await until('a second grid', () => gridFrame(1))]
    await takeKeyboard(first)
    await type('41')
    await press('Enter')
    await second.getByText('41', { exact: true }).first().waitFor()
    await takeKeyboard(second)
    await type('42')
    await press('Enter')
    await has(uri, ': 42\n')
    await first.getByText('42', { exact: true }).first().waitFor()
  })

  it('where the file changes on disk while it has changes of its own', async () => {
    const { uri, grid } = await openInGrid(tern)
    await type('33')
    await press('Enter')
    await has(uri, 'slot_00: 33\n')
    writeFileSync(uri.fsPath, tern.replace('slot_01: 5 out', 'slot_01: 77 out'))
    await pause(1500)
    await has(uri, 'slot_00: 33\n', 'slot_01: 5 out')
    await takeKeyboard(grid)
    await type('34')
    await press('Enter')
    await has(uri, 'slot_00: 33\n', 'slot_01: 34\n')
    assert.equal(readFileSync(uri.fsPath, 'utf8'), tern.replace('slot_01: 5 out', 'slot_01: 77 out'), 'nothing is written that nobody saved')
  })

  it('where the file is deleted while it is open: it is still there to be edited and saved', async () => {
    const { uri, grid } = await openInGrid(tern)
    await type('33')
    await press('Enter')
    await has(uri, 'slot_00: 33\n')
    rmSync(uri.fsPath)
    await pause(1000)
    await takeKeyboard(grid)
    await type('34')
    await press('Enter')
    await has(uri, 'slot_01: 34\n')
    await vscode.commands.executeCommand('workbench.action.files.save')
    await until('it is back', () => existsSync(uri.fsPath) && readFileSync(uri.fsPath, 'utf8').includes('slot_01: 34\n'))
  })

  it('of a cell that is being typed when the file is saved', async () => {
    const { uri } = await openInGrid(tern)
    await type('123')
    await press('ControlOrMeta+s')
    await until('it is in the file', () => readFileSync(uri.fsPath, 'utf8') === tern.replace('slot_00: 5 out', 'slot_00: 123'))
  })

  it('where the editor holds the file for read only: the file stays as it is, and what was typed stays in the editor', async () => {
    const files = vscode.workspace.getConfiguration('files')
    await files.update('readonlyInclude', { '**/held.setup.yaml': true }, vscode.ConfigurationTarget.Global)
    try {
      const { uri } = await openInGrid(tern, 'held.setup.yaml')
      await type('33')
      await press('Enter')
      await pause(1000)
      await has(uri, 'slot_00: 33\n')
      assert.equal(readFileSync(uri.fsPath, 'utf8'), tern)
    } finally {
      await files.update('readonlyInclude', undefined, vscode.ConfigurationTarget.Global)
    }
  })

  it('where the file may not be written: the editor says so at saving, and what was typed is saved once it may', async function () {
    const { uri } = await openInGrid(tern)
    const letGo = forbidWriting(uri.fsPath)
    try {
      // Neither permissions nor a mark of the file system keep this user from writing here.
      if (!letGo) return this.skip()
      await type('44')
      await press('Enter')
      await has(uri, 'slot_00: 44\n')
      void vscode.commands.executeCommand('workbench.action.files.save')
      await page().locator('.notification-toast', { hasText: /Failed to save 'tern\.setup\.yaml'/ }).waitFor()
      assert.equal(readFileSync(uri.fsPath, 'utf8'), tern)
      await has(uri, 'slot_00: 44\n')
    } finally {
      letGo?.()
    }
    await vscode.commands.executeCommand('workbench.action.files.save')
    await until('it is saved', () => readFileSync(uri.fsPath, 'utf8') === tern.replace('5 out', '44'))
  })

  it('by undo: many steps go back one by one, across grid and text', async () => {
    const { uri } = await openInGrid(tern)
    for (const number of ['11', '12', '13']) {
      await type(number)
      await press('Enter')
    }
    await has(uri, 'slot_02: 13\n')
    await openText(uri)
    for (let left = 3; left > 0; left--) await press('ControlOrMeta+z')
    await until('all is as it was', async () => (await textOf(uri)) === tern)
  })
})

describe('no one is let in', () => {
  it('asks nothing of any other machine, from opening to saving', async () => {
    const asked: string[] = []
    const note = (request: Request) => asked.push(request.url())
    page().on('request', note)
    try {
      const { uri } = await openInGrid(tern)
      await type('7')
      await press('Enter')
      await has(uri, 'slot_00: 7\n')
      await vscode.commands.executeCommand('detent.openCharts').then(undefined, () => undefined)
      await vscode.commands.executeCommand('workbench.action.files.save')
      await pause(1000)
    } finally {
      page().off('request', note)
    }
    const own = /^(?:data:|blob:|vscode-webview:|vscode-file:|devtools:|https?:\/\/(?:127\.0\.0\.1|localhost)(?::\d+)?\/)/
    // Webviews are served under a name of the editor's own, which its service worker answers: nothing leaves the machine.
    const answeredHere = /^https:\/\/[^/]*\.vscode-(?:resource|webview)\.net\/|^https:\/\/[\w-]+(?:\+[\w.-]+)*\.vscode-resource\.vscode-cdn\.net\//
    assert.deepEqual(asked.filter((url) => !own.test(url) && !answeredHere.test(url)), [])
    assert.ok(asked.length > 0)
  })

  it('asks nothing of any machine from the host that it runs in', async () => {
    // A browser's host is none of ours to look into; what it asks is seen by the window, above.
    const watch = watchSockets()
    try {
      await new Promise<void>((resolve) => createConnection(9, '127.0.0.1').on('error', () => resolve()))
      assert.deepEqual(watch.asked.splice(0), ['127.0.0.1:9'], 'the watch sees what is asked')
      const { uri } = await openInGrid(tern)
      await type('7')
      await press('Enter')
      await has(uri, 'slot_00: 7\n')
      await vscode.commands.executeCommand('detent.showCharts')
      await vscode.commands.executeCommand('detent.setups.refresh')
      await vscode.commands.executeCommand('vscode.executeHoverProvider', uri, new vscode.Position(3, 4))
      await vscode.commands.executeCommand('workbench.action.files.save')
      await until('it is saved', () => readFileSync(uri.fsPath, 'utf8').includes('slot_00: 7\n'))
      await pause(1000)
      assert.deepEqual(watch.asked, [])
    } finally {
      watch.end()
    }
  })

  it('lets no page load or run anything from elsewhere', async () => {
    const { grid } = await openInGrid(tern)
    const policy = (await grid.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')) ?? ''
    assert.match(policy, /default-src 'none'/)
    assert.doesNotMatch(policy, /unsafe|https?:(?!\/\/\S*vscode)|\*(?!\.vscode)|connect-src|frame-src|object-src/)
    const tried = await grid.evaluate(`(async () => {
      const blocked = []
      document.addEventListener('securitypolicyviolation', (event) => blocked.push(event.effectiveDirective))
      const script = document.createElement('script')
      script.textContent = 'window.ran = 1'
      document.body.append(script)
      const picture = new Image()
      picture.src = 'https://evil.invalid/x.png'
      document.body.append(picture)
      const style = document.createElement('style')
      style.textContent = 'body { outline: 99px solid red }'
      document.head.append(style)
      const fetched = await fetch('https://evil.invalid/').then(() => 'fetched', () => 'kept')
      await new Promise((resolve) => setTimeout(resolve, 300))
      // Only what a debugger itself evaluates may make code of words; this is no longer that.
      let made = 'kept'
      try { made = new Function('return "ran"')() } catch {}
      script.remove(); picture.remove(); style.remove()
      return { ran: window.ran, fetched, made, blocked: [...new Set(blocked)].sort() }
    })()`) as { ran?: number; fetched: string; made: string; blocked: string[] }
    assert.deepEqual({ ran: tried.ran, fetched: tried.fetched, made: tried.made }, { ran: undefined, fetched: 'kept', made: 'kept' })
    const kinds = new Set(tried.blocked.map((each) => each.replace(/-(?:elem|attr)$/, '')))
    for (const kind of ['connect-src', 'img-src', 'script-src', 'style-src']) assert.ok(kinds.has(kind), `${kind} in ${tried.blocked.join(', ')}`)
  })
})
