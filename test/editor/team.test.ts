import assert from 'node:assert/strict'
import { rmSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { monitorEventLoopDelay } from 'node:perf_hooks'
import * as vscode from 'vscode'
import { say } from './report'
import { settings } from './settings'
import { until } from './waiting'
import { gridFrame, page, press, type } from './window'
import { changeOnDisk, sample, textOf, write } from './workspace'

const notebook = (name: string, entries: string) => `format: 1
machine: {name: ${name}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
entries:
${entries}`

const found = '  - {id: as-found, date: 2026-04-18, as_found: true, settings: {fork_rebound: {left: 3 out, right: 6 out}}}\n'

const row = (text: string | RegExp) => page().locator('.monaco-list-row[role=treeitem]', { hasText: text })

/** Shows the tree, with what the samples hold out of the way. */
async function showTree(): Promise<void> {
  await vscode.commands.executeCommand('detent.setups.focus')
  await vscode.commands.executeCommand('detent.setups.refresh')
}

describe('the setups of a workspace', () => {
  it('are listed with their last entry, its age and what is open, and follow what happens on disk', async () => {
    const uri = write('zz-lark.setup.yaml', notebook('Lark 300', found))
    await showTree()
    await row('Lark 300').waitFor()
    const label = (await row('Lark 300').getAttribute('aria-label')) ?? ''
    assert.match(label, /^Lark 300, 1 warning, as-found, (\d+ days ago|dated ahead|yesterday|today), 2026-04-18$/)
    const later = notebook('Lark 300', `${found}  - {id: run-1, date: 2026-04-19, settings: {fork_rebound: 3 out}, reason: right to left}\n`)
    await changeOnDisk(uri, later, 'it follows', async () => /^Lark 300, nothing open, run-1, .*, 2026-04-19$/.test((await row('Lark 300').getAttribute('aria-label')) ?? ''))
    write('zz-finch.setup.yaml', notebook('Finch 125', found))
    await row('Finch 125').waitFor()
    rmSync(uri.fsPath)
    await until('it goes', async () => (await row('Lark 300').count()) === 0)
  })

  it('go with their folder', async () => {
    const uri = write('aa/aa-lark.setup.yaml', notebook('Aa Lark', found))
    await showTree()
    await row('Aa Lark').waitFor({ timeout: 20_000 })
    rmSync(dirname(uri.fsPath), { recursive: true })
    await until('it goes', async () => (await row('Aa Lark').count()) === 0)
  })

  it('open to their entries by keys, and an entry opens in the grid', async () => {
    write('lark.setup.yaml', notebook('Lark 300', `${found}  - {id: run-1, date: 2026-04-19, settings: {fork_rebound: 3 out}, reason: right to left}\n`))
    const focused = page().locator('.monaco-list:focus .monaco-list-row.focused[role=treeitem]')
    await showTree()
    await row('Lark 300').click()
    await gridFrame()
    // The grid takes the focus when it is drawn, which may be after the tree was asked to the front.
    await until('the setup opens', async () => {
      if (await row('right to left').isVisible()) return true
      await vscode.commands.executeCommand('detent.setups.focus')
      if (await focused.filter({ hasText: 'Lark 300' }).count() > 0) await press('ArrowRight')
      return false
    })
    await until('the first run is reached', async () => {
      if (await focused.filter({ hasText: 'as-found' }).filter({ hasNotText: 'Lark 300' }).count() > 0) return true
      await vscode.commands.executeCommand('detent.setups.focus')
      await press('ArrowDown')
      return false
    })
    await press('Enter')
    const grid = await gridFrame()
    await until('the entry’s header is current', async () => (await grid.locator('.header-cell.is-active').textContent())?.startsWith('as-found'))
  })

  it('say of a broken text where it is broken', async () => {
    write('lark.setup.yaml', notebook('Lark 300', '  - {id: "run\n'))
    await showTree()
    await row(/cannot be read: line \d+/).waitFor()
  })

  it('tell two machines of one name apart by their files', async () => {
    write('one.setup.yaml', notebook('Plover 400', found))
    write('two.setup.yaml', notebook('Plover 400', found))
    await showTree()
    for (const file of ['one', 'two']) await row(new RegExp(`Plover 400.*${file}\\.setup\\.yaml`)).waitFor()
  })

  it('show what is typed and not saved', async () => {
    const uri = write('lark.setup.yaml', notebook('Lark 300', found))
    await showTree()
    await row('Lark 300').waitFor()
    const document = await vscode.workspace.openTextDocument(uri)
    const edit = new vscode.WorkspaceEdit()
    edit.insert(uri, new vscode.Position(document.lineCount, 0), '  - {id: zz-not-saved, date: 2026-04-20, settings: {fork_rebound: 3 out}, reason: alike}\n')
    await vscode.workspace.applyEdit(edit)
    await row('zz-not-saved').waitFor()
  })
})

describe('a folder of 300 notebooks', () => {
  const many = (count: number) => Array.from({ length: count }, (_, at) => `  - {id: run-${at}, date: 2026-04-${String(1 + (at % 28)).padStart(2, '0')}, settings: {fork_rebound: ${at % 20} out}, reason: one step on}\n`).join('')
  const ms = ({ user, system }: NodeJS.CpuUsage) => (user + system) / 1000

  let tries = 0

  it('is read in short stretches, past one that is broken; later only what changed is', async function () {
    if (settings().web) this.skip() // The extension is in another process there, whose time cannot be taken from here.
    this.timeout(90_000)
    // What an earlier try left in the tree is not taken for what this one reads.
    const name = `Aa ${++tries}`
    const entries = many(40)
    for (let at = 0; at < 300; at++) write(`many/${at}.setup.yaml`, notebook(`${name} ${String(at).padStart(3, '0')}`, at === 1 ? '  - {id: "run\n' : entries))
    await vscode.commands.executeCommand('workbench.view.explorer')
    await vscode.commands.executeCommand('detent.setups.refresh')
    const delay = monitorEventLoopDelay({ resolution: 5 })
    delay.enable()
    const before = process.cpuUsage()
    await showTree()
    await row(name).first().waitFor({ timeout: 60_000 })
    const first = ms(process.cpuUsage(before))
    delay.disable()
    // The list may stand where an earlier test has left it, and has only those rows that are in sight.
    await until('the first is in sight', async () => {
      if (await row(`${name} 000`).isVisible()) return true
      await vscode.commands.executeCommand('detent.setups.focus')
      await vscode.commands.executeCommand('list.focusFirst')
      return false
    })
    await row(/cannot be read: line \d+/).waitFor()
    writeFileSync(sample('many/2.setup.yaml').fsPath, notebook(`${name} 002`, `${entries}  - {id: zz-new, date: 2026-05-19, reason: a new one}\n`))
    const then = process.cpuUsage()
    await vscode.commands.executeCommand('detent.setups.refresh')
    await until('it follows', async () => /zz-new/.test((await row(`${name} 002`).getAttribute('aria-label')) ?? ''))
    const again = ms(process.cpuUsage(then))
    const figures = `all: ${Math.round(first)} ms of work, at most ${Math.round(delay.max / 1e6)} ms at a stretch, 99 of 100 within ${Math.round(delay.percentile(99) / 1e6)}; one anew: ${Math.round(again)} ms`
    say(`    ${figures}`)
    assert.ok(first > 300 && again < first / 2, figures)
    assert.ok(delay.percentile(99) / 1e6 < 100 && delay.max / 1e6 < first / 3, figures)
  })
})

describe('a folder that takes long to read', () => {
  it('is read as far as it got where a person cancels it, says what is left, and goes on when it is asked to', async function () {
    this.timeout(90_000)
    // An anchor has each of them read by the library, which takes its time: there is to be something left when Cancel is reached.
    const entries = `  - {id: first, date: 2026-04-18, settings: &one {fork_rebound: 3 out}}\n${Array.from({ length: 600 }, (_, at) => `  - {id: run-${at}, date: 2026-04-18, settings: {fork_rebound: ${at % 20} out}, reason: one step on}\n`).join('')}`
    const count = 80
    for (let at = 0; at < count; at++) write(`slow/${String(at).padStart(3, '0')}.setup.yaml`, notebook(`Slow ${at}`, entries))
    await showTree()
    const progress = page().locator('.notification-toast', { hasText: 'Reading the setups of this workspace' })
    await progress.waitFor({ timeout: 30_000 })
    await progress.getByRole('button', { name: 'Cancel' }).click()
    const left = page().locator('.pane', { hasText: 'Setups' }).getByText(/^\d+ more notebooks were not read; “Refresh Setups” goes on\.$/)
    await left.waitFor()
    const first = Number.parseInt((await left.textContent())!)
    assert.ok(first > 0 && first < count + 20, `${first} left`)
    await row('Slow').first().waitFor()
    await vscode.commands.executeCommand('detent.setups.refresh')
    await left.waitFor({ state: 'detached', timeout: 60_000 })
  })
})

describe('the search over setups', () => {
  it('finds the words of a reason over all notebooks, newest first, and opens the grid there', async () => {
    write('a-lark.setup.yaml', notebook('Lark 300', `${found}  - {id: b-old, date: 2026-04-19, settings: {fork_rebound: 12 out}, reason: quokka over the seams}\n`))
    const finch = write('finch.setup.yaml', notebook('Finch 125', `${found}  - {id: a-new, date: 2026-05-19, reason: the quokka is back}\n`))
    await vscode.commands.executeCommand('detent.setups.refresh')
    void vscode.commands.executeCommand('detent.searchSetups')
    await page().locator('.quick-input-widget input').first().waitFor()
    await type('quokka')
    const items = page().locator('.quick-input-list .monaco-list-row')
    await until('two are found', async () => (await items.count()) === 2)
    assert.match((await items.nth(0).getAttribute('aria-label')) ?? '', /^Finch 125 · a-new/)
    assert.match((await items.nth(1).getAttribute('aria-label')) ?? '', /^Lark 300 · b-old/)
    await press('Enter')
    const grid = await gridFrame()
    await until('the entry’s header is current', async () => (await grid.locator('.header-cell.is-active').textContent())?.startsWith('a-new'))
    assert.match(await textOf(finch), /the quokka is back/)
  })

  it('answers when an adjuster last stood somewhere, and says what it cannot answer', async () => {
    write('a-lark.setup.yaml', notebook('Lark 300', `${found}  - {id: soft, date: 2030-04-19, settings: {fork_rebound: 19 out}, reason: try}\n  - {id: back, date: 2030-04-20, from: as-found, reason: no}\n`))
    await vscode.commands.executeCommand('detent.setups.refresh')
    void vscode.commands.executeCommand('detent.searchSetups')
    await page().locator('.quick-input-widget input').first().waitFor()
    await type('lark and softest fork_rebound')
    const items = page().locator('.quick-input-list .monaco-list-row')
    await until('it is found', async () => /^Lark 300 · soft, 2030-04-19 · Fork rebound 19 clicks out/.test((await items.nth(0).getAttribute('aria-label')) ?? ''))
    assert.equal(await items.count(), 1)
    await page().locator('.quick-input-widget input').first().fill('fork_rebond > 3')
    await items.getByText('did you mean ‘fork_rebound’?').waitFor()
    await press('Escape')
    assert.ok(sample('tern-650.setup.yaml'))
  })
})
