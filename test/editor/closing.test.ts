import assert from 'node:assert/strict'
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { dirname } from 'node:path'
import * as vscode from 'vscode'
import { openInGrid } from './openInGrid'
import { pause, until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { openGrid, openText, textOf, write } from './workspace'

const entry = (id: string, position: string) => `  - id: ${id}\n    date: 2026-04-18\n    settings: {rebound: ${position}}\n`
const head = 'format: 1\nmachine: {name: Tern 650, use: track}\nadjusters:\n  rebound: {on: shock, controls: rebound, counts: clicks, range: 200}\nentries:\n'
const older = head + entry('first', '5 out')
const newer = `${older}${entry('second', '6 out')}`

function git(uri: vscode.Uri, ...args: string[]): void {
  execFileSync('git', ['-c', 'user.name=Ada', '-c', 'user.email=ada@example.invalid', ...args], { cwd: dirname(uri.fsPath), stdio: 'pipe' })
}

/** The newer of two committed versions, open as a grid. */
async function openCommitted() {
  const uri = write('tern.setup.yaml', older)
  git(uri, 'init', '-q')
  git(uri, 'add', 'tern.setup.yaml')
  git(uri, 'commit', '-qm', 'older')
  write('tern.setup.yaml', newer)
  git(uri, 'commit', '-qam', 'newer')
  await openGrid(uri)
  const grid = await gridFrame()
  await takeKeyboard(grid)
  return { uri, grid }
}

describe('what is typed', () => {
  it('outlives a checkout of another version while the notebook has changes: they stay, and the file is not written over unasked', async () => {
    const { uri } = await openCommitted()
    await type('33')
    await press('Enter')
    await until('it is in the text', async () => (await textOf(uri)).includes('rebound: 33'))
    git(uri, 'checkout', '-q', '-f', 'HEAD~1')
    await pause(1500)
    assert.ok((await textOf(uri)).includes('rebound: 33'))
    void vscode.commands.executeCommand('workbench.action.files.save')
    await pause(1500)
    assert.equal(readFileSync(uri.fsPath, 'utf8'), older)
    assert.ok((await vscode.workspace.openTextDocument(uri)).isDirty)
  })

  it('outlives a checkout that takes its entry away: it is told with its place, and is in its cell when the entry comes back', async () => {
    const { uri, grid } = await openCommitted()
    await type('33')
    git(uri, 'checkout', '-q', 'HEAD~1')
    await grid.locator('.banner', { hasText: 'second, rebound: 33' }).waitFor()
    git(uri, 'checkout', '-q', '-')
    await grid.locator('.is-refused', { hasText: '33' }).waitFor()
    assert.equal(await textOf(uri), newer)
  })

  it('is in the notebook, or offered again, when its tab is closed while the cell is open', async () => {
    const { uri } = await openInGrid(newer)
    await type('33')
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor')
    await pause(1000)
    await openGrid(uri)
    const grid = await gridFrame()
    await grid.locator('[role=grid]').waitFor()
    await until('it is there', async () => (await textOf(uri)).includes('rebound: 33') || (await grid.locator('.editor').inputValue({ timeout: 300 })) === '33')
  })

  it('into a form is there again when the tab was hidden and is shown', async () => {
    const { uri, grid } = await openInGrid(newer)
    await vscode.commands.executeCommand('detent.addEntry')
    const reason = grid.getByRole('textbox', { name: 'Reason' })
    await reason.focus()
    await type('left leg is harsh')
    await openText(write('other.txt', 'hello'))
    await openGrid(uri)
    const again = (await gridFrame()).getByRole('textbox', { name: 'Reason' })
    await again.waitFor()
    assert.equal(await again.inputValue(), 'left leg is harsh')
  })

  it('is neither saved nor lost by showing the notebook as text and back, and goes by the first undo', async () => {
    for (let round = 0; round < 4; round++) {
      const { uri, grid } = await openInGrid(newer, `round-${round}.setup.yaml`)
      const document = await vscode.workspace.openTextDocument(uri)
      await type('33')
      await press('Enter')
      await until('it is in the text', () => document.getText().includes('rebound: 33'))
      const { version } = document
      await grid.getByRole('button', { name: 'Edit as text' }).click()
      await page().locator('.monaco-editor.focused').first().waitFor()
      await pause(300)
      assert.deepEqual([document.version, document.isDirty], [version, true], 'nothing is touched')
      if (round % 2 === 0) {
        await vscode.commands.executeCommand('detent.openAsGrid')
        await takeKeyboard(await gridFrame())
        assert.deepEqual([document.version, document.isDirty], [version, true], 'nor on the way back')
      }
      await press('ControlOrMeta+z')
      await until('it is undone', () => document.getText() === newer, 1500)
      await vscode.commands.executeCommand('workbench.action.closeAllEditors')
    }
  })

  it('leaves one tab where all is saved, and the tab it has where not', async () => {
    const { uri } = await openInGrid(newer)
    const tabs = () => vscode.window.tabGroups.activeTabGroup.tabs.map(({ input }) => (input instanceof vscode.TabInputCustom ? 'grid' : 'text'))
    await vscode.commands.executeCommand('detent.openAsText')
    assert.deepEqual(tabs(), ['text'])
    await vscode.commands.executeCommand('detent.openAsGrid')
    assert.deepEqual(tabs(), ['grid'])
    await takeKeyboard(await gridFrame())
    await type('33')
    await press('Enter')
    await until('it is in the text', async () => (await textOf(uri)).includes('rebound: 33'))
    await vscode.commands.executeCommand('detent.openAsText')
    assert.deepEqual(tabs(), ['grid', 'text'])
    await vscode.commands.executeCommand('workbench.action.files.save')
    await vscode.commands.executeCommand('detent.openAsGrid')
    assert.deepEqual(tabs(), ['grid'])
  })
})
