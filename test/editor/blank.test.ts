import assert from 'node:assert/strict'
import type { Route } from 'playwright-core'
import * as vscode from 'vscode'
import { framesWith } from './frames'
import { becomes } from './openInGrid'
import { until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { gridViewType, nameOf, openGrid, openText, textOf, write } from './workspace'

const tern = `format: 1
machine: {name: Tern 650, use: track}
adjusters:
  rebound: {on: shock, controls: rebound, counts: clicks, range: 20}
entries:
  - {id: as-found, date: 2026-04-18, as_found: true, settings: {rebound: 5 out}}
  - {id: run-1, date: 2026-04-18, settings: {rebound: 7 out}, reason: less rebound}
`
const pages = '**/webview/browser/pre/index.html*'

/** Keeps the next page that is opened from coming, and tells whether that has been. */
async function loseNextPage(): Promise<() => boolean> {
  let lost = false
  const lose = async (route: Route) => {
    if (lost) return route.continue()
    lost = true
    return route.abort()
  }
  await page().route(pages, lose)
  return () => lost
}

const shown = (name: string) => until(`${name} is shown`, async () => (await framesWith(page(), `[data-detent="${name}"]`))[0])
const tabs = () => vscode.window.tabGroups.all.map((group) => group.tabs.map(({ label }) => label))

describe('a page that never comes', () => {
  afterEach(() => page().unroute(pages))

  it('has another grid put in its place, which takes keys and keeps what was not saved', async () => {
    const uri = write('tern.setup.yaml', tern)
    const document = await openText(uri)
    const edit = new vscode.WorkspaceEdit()
    edit.insert(uri, document.positionAt(tern.indexOf('less')), 'a little ')
    await vscode.workspace.applyEdit(edit)
    await vscode.commands.executeCommand('workbench.action.files.newUntitledFile')
    const lost = await loseNextPage()
    await openGrid(uri)
    await until('its page is lost', lost)
    await takeKeyboard(await gridFrame())
    await until('the blank one is gone', () => tabs().flat().length === 3 && tabs().length === 1)
    const { activeTab } = vscode.window.tabGroups.activeTabGroup
    assert.ok(activeTab?.input instanceof vscode.TabInputCustom && activeTab.input.viewType === gridViewType)
    await type('9 out')
    await press('Enter')
    await becomes(uri, tern.replace('less', 'a little less').replace('7 out', '9 out'))
    assert.ok((await textOf(uri)) !== tern && document.isDirty)
  })

  it('has another comparison, and another turn list, put in its place', async () => {
    const uri = nameOf(write('tern.setup.yaml', tern))
    const sides = ['as-found', 'run-1'].map((entry) => ({ uri, entry }))
    for (const [command, name, title] of [['detent.compare', 'compare', 'as-found ↔ run-1'], ['detent.turnList', 'turns', 'Turns to run-1']] as const) {
      const lost = await loseNextPage()
      await vscode.commands.executeCommand(command, ...sides)
      await until('its page is lost', lost)
      await shown(name)
      await until('the blank one is gone', () => tabs().flat().join() === title)
      await page().unroute(pages)
      await vscode.commands.executeCommand('workbench.action.closeAllEditors')
    }
  })
})
