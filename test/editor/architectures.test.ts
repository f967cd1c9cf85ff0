import assert from 'node:assert/strict'
import { architectures } from '../../src/core/adjusters/architectures'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import * as vscode from 'vscode'
import { answer } from './quickInput'
import { pause, until } from './waiting'
import { gridFrame, press, takeKeyboard, type } from './window'
import { openGrid, problemsOf, textOf, write } from './workspace'

describe('beginning a notebook', () => {
  for (const [index, { key, label }] of architectures.entries()) {
    it(`from ‘${label}’: begins, takes a position in its first cell and is found in order`, async () => {
      const uri = write(`${key}.setup.yaml`, '')
      await openGrid(uri)
      const grid = await gridFrame()
      await grid.locator('.beginnings li').nth(index).locator('button, vscode-button').first().click()
      await until('it is begun', async () => (await textOf(uri)).includes('as_found: true'))
      const { adjusters } = readNotebook(await textOf(uri))
      if (adjusters.size === 0) return
      await takeKeyboard(grid)
      await press('ControlOrMeta+Home')
      await type('2')
      await press('Enter')
      await until('it has a setting', async () => readNotebook(await textOf(uri)).entries[0]!.settings.size > 0)
      // Problems are listed once the text rests.
      await pause(500)
      assert.deepEqual(problemsOf(uri), [])
    })
  }

  it('adds an adjuster by questions answered with the keyboard', async () => {
    const uri = write('plain.setup.yaml', 'format: 1\nentries:\n  - id: as-found\n    date: 2026-04-18\n')
    await openGrid(uri)
    await (await gridFrame()).locator('[role=grid]').waitFor()
    void vscode.commands.executeCommand('detent.addAdjuster')
    for (const [title, text] of [['what does it change', 'Rebound'], ['where is it', 'Shock'], ['counted in', 'clicks'], ['short name', ''], ['its range', '22']]) await answer(title!, text!)
    await until('it is written', async () => (await textOf(uri)).includes('shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}'))
  })
})
