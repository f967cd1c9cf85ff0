import assert from 'node:assert/strict'
import * as vscode from 'vscode'
import { activate, openGrid, openText, sample, textOf, write } from './workspace'
import { gridFrame, page, press, type } from './window'
import { settings } from './settings'
import { until } from './waiting'

describe('the workbench', () => {
  it('shows the workspace in its explorer', async () => {
    write('note.txt', '')
    await vscode.commands.executeCommand('workbench.view.explorer')
    await page().locator('.explorer-folders-view').waitFor()
  })

  it('activates the extension', async () => {
    await activate()
    assert.ok((await vscode.commands.getCommands(true)).includes('detent.newNotebook'))
  })

  it('has the extension in the host that was asked for', () => {
    // A host knows its own extensions only.
    assert.equal(vscode.extensions.getExtension('detent.detent') === undefined, settings().web)
  })

  it('shows a notebook in the grid', async () => {
    await openGrid(sample('tern-650.setup.yaml'))
    const grid = await gridFrame()
    await grid.getByText('Tern 650').first().waitFor()
  })

  it('takes real key presses into an ordinary file and takes them back', async () => {
    const file = write('note.txt', 'one\n')
    const document = await openText(file)
    await press('ControlOrMeta+End')
    await type('two')
    await until('the text has arrived', () => document.getText() === 'one\ntwo')
    assert.equal(document.isDirty, true)
    await press('ControlOrMeta+z')
    await until('the text is gone', () => document.getText() === 'one\n')
    assert.equal(await textOf(file), 'one\n')
    await until('the file is clean again', () => !document.isDirty)
  })
})
