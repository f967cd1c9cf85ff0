import { rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { framesWith } from './frames'
import { told } from './openInGrid'
import { settings } from './settings'
import { until } from './waiting'
import { gridFrame, page, press, screenshot, takeKeyboard, type } from './window'

const input = () => page().locator('.quick-input-widget input').first()
const notebook = () => vscode.workspace.textDocuments.find(({ uri }) => uri.path.endsWith('/heron.setup.yaml'))
const holds = (what: string) => until(`the text holds ${what}`, () => notebook()?.getText().includes(what))
const shown = (mark: string) => until(`${mark} is shown`, async () => (await framesWith(page(), mark))[0])

/** Runs a command by its name, as one does who does not know its keys. */
async function run(title: string): Promise<void> {
  await press('F1')
  await input().waitFor()
  await type(title)
  await page().locator('.quick-input-list .monaco-list-row', { hasText: title.replace(/^.*: /, '') }).first().waitFor()
  await press('Enter')
}

/** Waits until keys go into an element of a page. */
const hasKeys = (frame: Frame, selector: string) => until(`keys go to ${selector}`, () =>
  frame.evaluate<boolean>(`document.hasFocus() && document.activeElement.closest('${selector}') !== null`))

async function typeDown(...texts: string[]): Promise<void> {
  for (const text of texts) {
    await type(text)
    await press('Enter')
  }
}

describe('a day', () => {
  // The dialog proposes the folder of the workspace, not this test's own.
  after(() => rmSync(join(settings().workspace, 'heron.setup.yaml'), { force: true }))

  it('goes by keys alone: from nothing over as found and a change with its reason to the comparison, the way back and a sheet', async () => {
    await run('Detent: New Setup Notebook')
    await until('a name is proposed', async () => (await input().inputValue()).endsWith('machine.setup.yaml'))
    // The name is selected, without its ending, a moment after it is there.
    await until('it can be typed over', () => page().evaluate<boolean>('document.activeElement.selectionEnd > document.activeElement.selectionStart'))
    await type('heron')
    await press('Enter')
    const begin = await shown('.beginnings')
    await hasKeys(begin, 'body')
    await press('Tab', 'Tab', 'Tab', 'Tab', 'Enter')
    await holds('as_found: true')

    const grid = await gridFrame()
    await told(grid, 'Fork preload left', 'as-found')
    await typeDown('3', '4', '3 out', '3 out')
    await holds('fork_preload: {left: 3, right: 4}')
    await grid.locator('.cell.mark-warning').first().waitFor()
    await press('F8')
    await told(grid, 'Fork preload right', 'count both again')
    await typeDown('3')
    await holds('fork_preload: {left: 3, right: 3}')
    await screenshot('day as found')

    await run('Detent: Add Entry')
    await hasKeys(grid, '.popover')
    await press('Tab', 'Tab')
    await type('rear kicks on the way out')
    await press('Enter')
    await holds('reason: rear kicks on the way out')
    await takeKeyboard(grid)
    await told(grid, 'Fork preload left', 'run-1', 'as in as-found')
    await press('ArrowDown', 'ArrowDown')
    await type('7 out')
    await press('ControlOrMeta+Enter')
    await holds('fork_rebound: 7 out')
    await told(grid, '4 clicks out: less rebound damping; before: 3 out')
    await screenshot('day changed')

    await press('ControlOrMeta+k', 'ControlOrMeta+d')
    const compare = await shown('[data-detent="compare"]:not(.is-loading)')
    await compare.getByText('4 clicks out').first().waitFor()
    await screenshot('day compared')
    await press('ControlOrMeta+w')

    const again = await gridFrame()
    await hasKeys(again, '[role=grid]')
    await press('ArrowLeft')
    await told(again, 'Fork rebound left', 'as-found')
    await press('ControlOrMeta+k', 'ControlOrMeta+b')
    await page().locator('.quick-input-widget', { hasText: 'Return to as-found: why?' }).waitFor()
    await type('it got no better')
    await press('Enter')
    await holds('reason: it got no better')
    await told(again, 'run-2')
    await screenshot('day returned')

    await press('ControlOrMeta+s')
    await until('it is saved', () => notebook()?.isDirty === false)
    await run('Detent: Print Hand-over Sheet')
    const sheet = await shown('.detent-bar')
    await sheet.getByText('3 clicks out').first().waitFor()
    await screenshot('day sheet')
  })
})
