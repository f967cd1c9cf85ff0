import assert from 'node:assert/strict'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { openInGrid } from './openInGrid'
import { pause, until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { changeOnDisk, openGrid, openText, problemsOf, textOf, write } from './workspace'

const tern = `# kept: a comment
format: 1
machine: {name: Tern 650, use: track, front: {travel: 120}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings:
      fork_rebound: {left: 3 out, right: 6 out}      # the legs differ
      shock_rebound: 7 out
`

async function wait(uri: vscode.Uri, part: string): Promise<void> {
  await until(`the text has ‘${part}’`, async () => (await textOf(uri)).includes(part))
}

const shows = (grid: Frame, text: string) => grid.getByText(text, { exact: true }).first().waitFor()

describe('the grid', () => {
  it('opens notebooks by default, and shows their cells and findings', async () => {
    const uri = write('tern.setup.yml', tern)
    await vscode.commands.executeCommand('vscode.open', uri)
    const grid = await gridFrame()
    await shows(grid, 'as-found')
    await shows(grid, '6 out')
    await until('the problems list has the legs', () => problemsOf(uri).some((problem) => problem.startsWith('12:42 legs-differ')))
  })

  it('replaces a cell by typing, goes down on Enter, and changes nothing else; undo and redo are the editor’s own', async () => {
    const { uri } = await openInGrid(tern)
    await press('ArrowDown')
    await type('3 out')
    await press('Enter')
    await wait(uri, 'right: 3 out}      # the legs differ')
    assert.equal(await textOf(uri), tern.replace('right: 6 out', 'right: 3 out'))
    await until('the problem is gone', () => !problemsOf(uri).some((problem) => problem.includes('legs-differ')))
    await press('ControlOrMeta+z')
    await until('undone', async () => (await textOf(uri)) === tern)
    const document = await vscode.workspace.openTextDocument(uri)
    assert.equal(document.isDirty, false)
    await press('ControlOrMeta+y')
    await wait(uri, 'right: 3 out}')
  })

  it('edits with F2, leaves with Escape without a change, and moves on with Tab', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('F2')
    await type('9')
    await press('Escape')
    assert.equal(await textOf(uri), tern)
    await press('Enter')
    await grid.locator('.editor').waitFor()
    await press('ControlOrMeta+a')
    await type('5')
    await press('Tab')
    await wait(uri, '{left: 5, right: 6 out}')
  })

  it('clears a cell with Delete, which takes out what was set there and nothing else', async () => {
    const { uri } = await openInGrid(`${tern}  - id: run-1\n    settings: {shock_rebound: 9 out}\n    reason: try it\n`)
    await press('ArrowDown', 'ArrowDown', 'Delete')
    await until('the setting is gone', async () => !(await textOf(uri)).includes('9 out'))
    assert.match(await textOf(uri), / {2}- id: run-1\n {4}reason: try it\n$/)
  })

  it('adds an entry with a reason from the keyboard alone and goes there', async () => {
    const { uri, grid } = await openInGrid(tern)
    await vscode.commands.executeCommand('detent.addEntry')
    await grid.locator('[role=dialog] :focus').first().waitFor()
    await press('Tab', 'Tab')
    await type('left leg is harsh')
    await press('Enter')
    await wait(uri, 'reason: left leg is harsh')
    assert.match(await textOf(uri), / {2}- id: run-1\n {4}date: \d{4}-\d\d-\d\d\n {4}reason: left leg is harsh\n$/)
    await grid.getByText(/^Fork rebound left, run-1/).waitFor()
    await type('4 out')
    await press('Enter')
    await wait(uri, 'fork_rebound: {left: 4 out}')
  })

  it('speaks up about what was just typed, in the cell and in the problems list', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown')
    await type('30')
    await press('Enter')
    await until('the problem is listed', () => problemsOf(uri).some((problem) => problem.includes('beyond-range')))
    await grid.locator('[role=gridcell][aria-invalid=true]', { hasText: '30' }).waitFor()
  })

  it('follows a text editor beside it, and the other way round', async () => {
    const { uri, grid } = await openInGrid(tern)
    await openText(uri, vscode.ViewColumn.Beside)
    await press('ControlOrMeta+Home')
    const editor = vscode.window.activeTextEditor!
    const at = editor.document.positionAt(editor.document.getText().indexOf('7 out'))
    editor.selection = new vscode.Selection(at, at.translate(0, 1))
    // A selection set from here reaches the window a moment later.
    await page().getByText('Ln 13, Col').waitFor()
    await type('8')
    await shows(grid, '8 out')
    await takeKeyboard(grid)
    await press('ArrowDown')
    await type('2')
    await press('Enter')
    await until('the text editor has it', () => vscode.window.visibleTextEditors.some(({ document }) => document.getText().includes('right: 2}')))
  })

  it('greys a broken text with its error and line, never writes to it, and recovers', async () => {
    const { uri, grid } = await openInGrid(tern)
    const document = await vscode.workspace.openTextDocument(uri)
    const edit = new vscode.WorkspaceEdit()
    edit.insert(uri, document.positionAt(tern.indexOf('as-found')), '"')
    await vscode.workspace.applyEdit(edit)
    await grid.locator('.is-broken').waitFor()
    await shows(grid, '6 out')
    const broken = await textOf(uri)
    await takeKeyboard(grid)
    await type('1')
    await press('Enter')
    assert.equal(await textOf(uri), broken)
    await press('Escape', 'ControlOrMeta+z')
    await until('mended', async () => (await textOf(uri)) === tern)
    await until('no longer greyed', async () => (await grid.locator('.is-broken').count()) === 0)
  })

  it('hands over what is being typed before a save', async () => {
    const { uri } = await openInGrid(tern)
    await type('4 out')
    await vscode.commands.executeCommand('workbench.action.files.save')
    await wait(uri, 'left: 4 out')
    await until('saved', async () => !(await vscode.workspace.openTextDocument(uri)).isDirty)
  })

  it('keeps its place when it is hidden and shown again', async () => {
    const { uri } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown')
    await openText(write('other.txt', 'hello'))
    await openGrid(uri)
    const grid = await gridFrame()
    await grid.locator('[role=grid]').waitFor()
    await shows(grid, '7 out')
    await takeKeyboard(grid)
    await type('9')
    await press('Enter')
    await wait(uri, 'shock_rebound: 9')
  })

  it('switches to the text and back in the same place, and undo goes on across', async () => {
    const { uri, grid } = await openInGrid(tern)
    await type('5 out')
    await press('Enter')
    await wait(uri, 'left: 5 out')
    await takeKeyboard(grid)
    await vscode.commands.executeCommand('detent.openAsText')
    await until('the text is shown', () => vscode.window.activeTextEditor?.document.uri.toString() === uri.toString())
    await page().locator('.monaco-editor.focused').first().waitFor()
    await press('ControlOrMeta+z')
    await until('undone in the text', async () => (await textOf(uri)) === tern)
    await vscode.commands.executeCommand('detent.openAsGrid')
    await gridFrame()
    assert.equal(vscode.window.tabGroups.activeTabGroup.tabs.length, 1)
  })

  it('offers ways to begin in an empty file, and writes a notebook that is found in order', async () => {
    const uri = write('new-machine.setup.yaml', '')
    await openGrid(uri)
    const grid = await gridFrame()
    await grid.locator('.beginnings button, .beginnings vscode-button').first().waitFor()
    await grid.locator('.beginnings li').nth(8).locator('button, vscode-button').first().click()
    await wait(uri, 'name: New machine')
    await shows(grid, 'as-found')
    // Problems are listed once the text rests.
    await pause(500)
    assert.deepEqual(problemsOf(uri), [])
  })

  it('opens the card of a cell on a key, with the way to turn it', async () => {
    const { grid } = await openInGrid(tern.replace('range: 22}', 'range: 22, faces: down, worked_from: above}'))
    await press('ArrowDown', 'ArrowDown')
    await vscode.commands.executeCommand('detent.showCard')
    const card = grid.locator('[role=dialog] .card')
    await card.waitFor()
    assert.match((await card.textContent()) ?? '', /Turn it anticlockwise, as you look down on it from above, to turn it in \(more rebound damping\)/)
    assert.equal(await card.locator('svg').count(), 1)
    await press('Escape')
    await until('the card is gone', async () => (await grid.locator('[role=dialog]').count()) === 0)
  })

  it('marks the cell of what has the wrong shape, and defines what is set and not defined', async () => {
    const { uri, grid } = await openInGrid(tern.replace('shock_rebound: 7 out', 'shock_rebound: [7]\n      shock_compression: 9 clicks out'))
    await press('ArrowDown', 'ArrowDown')
    await grid.locator('.is-active[aria-invalid=true]').waitFor()
    assert.match((await grid.locator('.is-active').getAttribute('aria-label')) ?? '', /Shock rebound, as-found/)
    // What is in no row is the entry's, so its header tells it.
    await press('ArrowUp', 'ArrowUp', 'ArrowUp')
    await grid.getByText(/no adjuster ‘shock_compression’/).first().waitFor()
    await grid.getByText('Define ‘shock_compression’: compression damping, in clicks').first().click()
    await wait(uri, '  shock_compression: {on: shock, controls: compression, counts: clicks}')
    await shows(grid, '9 clicks out')
  })

  it('lets nothing run or load from elsewhere, and shows content as text', async () => {
    const { grid } = await openInGrid(tern.replace('Tern 650', '"<img src=x onerror=alert(1)><script>window.hit=1</script>"'))
    await grid.getByText('<img src=x onerror=alert(1)>').first().waitFor()
    assert.equal(await grid.evaluate('window.hit'), undefined)
    const policy = (await grid.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')) ?? ''
    assert.match(policy, /default-src 'none'/)
    assert.doesNotMatch(policy, /unsafe/)
  })

  it('shows a change made on disk', async () => {
    const { uri, grid } = await openInGrid(tern)
    await changeOnDisk(uri, tern.replace('7 out', '11 out'), 'the change is shown', () => grid.getByText('11 out', { exact: true }).first().isVisible())
  })
})
