import assert from 'node:assert/strict'
import * as vscode from 'vscode'
import { until } from './waiting'
import { gridFrame, page, press, screenshot, takeKeyboard, type } from './window'

describe('the first minutes', () => {
  it('show a sample at one command, as a file that is not saved, to be typed into', async () => {
    await vscode.commands.executeCommand('detent.openSample')
    const grid = await gridFrame()
    await grid.getByText('dry-again').first().waitFor()
    const document = vscode.workspace.textDocuments.find(({ uri }) => uri.scheme === 'untitled' && uri.path.endsWith('tern-650.setup.yaml'))
    assert.ok(document)
    assert.match(document.getText(), /^.*\n(.*\n)*format: 1\r?\n/)
    const before = document.getText()
    await takeKeyboard(grid)
    await type('7 in')
    await press('Enter')
    await until('it is written', () => document.getText() !== before)
    await press('ControlOrMeta+z')
    await until('it is as it was', () => document.getText() === before)
  })

  it('open the same sample again where it is open', async () => {
    await vscode.commands.executeCommand('detent.openSample')
    await gridFrame()
    await vscode.commands.executeCommand('detent.openSample')
    assert.equal(vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs).length, 1)
  })

  it('lead from a sample to one’s own machine, step by step', async () => {
    await vscode.commands.executeCommand('workbench.action.openWalkthrough', 'detent.detent#start', false)
    await page().getByText('Begin a setup notebook').first().waitFor()
    for (const [step, media] of [['See one that is kept', 'goes to the next'], ['Begin with your own machine', 'how your machine is built'], ['Say what can be adjusted', 'where counting begins'],
      ['Write down how it stands', 'Never force an adjuster'], ['Measure its sag', 'Each length is read twice'], ['Change one thing, and say why', 'One thing at a time']]) {
      const one = page().locator('.getting-started-step', { hasText: step }).first()
      await until(`${step} is told`, async () => {
        // The list is drawn anew where a step is taken for done, which can swallow a click.
        if (!(await one.getAttribute('class'))?.includes('expanded')) await one.click()
        const frames = await Promise.all(page().frames().map(frame => frame.locator('body').innerText().catch(() => '')))
        return frames.some(text => text.includes(media!))
      })
    }
    await screenshot('walkthrough')
  })

  it('do what a step offers in the grid that was last, or say how to get one', async () => {
    void vscode.commands.executeCommand('detent.compareSelected')
    await page().locator('.notification-toast').getByText('No setup notebook is open as a grid.').waitFor()
    await page().locator('.notification-toast').getByText('Open a Sample').click()
    await (await gridFrame()).getByText('dry-again').first().waitFor()
    await vscode.commands.executeCommand('workbench.action.openWalkthrough', 'detent.detent#start', false)
    await page().locator('.getting-started-step', { hasText: 'Write down how it stands' }).first().click()
    await page().locator('.getting-started-step .monaco-button', { hasText: 'Add Entry' }).first().click()
    const grid = await gridFrame()
    await until('a dialog for an entry is shown', async () => (await grid.locator('[role=dialog], dialog').count()) > 0)
  })
})
