import assert from 'node:assert/strict'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { becomes, goToCell, openInGrid } from './openInGrid'
import { found, head } from './shortTern'
import { until } from './waiting'
import { gridFrame, page, press, type } from './window'
import { openGrid, textOf, write } from './workspace'

const run = (n: number, more = '') => `  # before run ${n}
  - id: run-${n}
    date: 2026-04-2${n}
${more}    settings: {shock_rebound: ${n + 7} out}
`
const four = head + found + [1, 2, 3].map((n) => run(n)).join('')

const headerOf = async (grid: Frame, id: string) => (await grid.locator('.header-cell', { hasText: id }).boundingBox())!
/** The entries from left to right, as they are seen. */
const order = async (grid: Frame) => (await grid.evaluate(`[...document.querySelectorAll('.header-cell:not(.is-spare) .header-id')].map((each) => [each.getBoundingClientRect().left, each.textContent])`) as [number, string][])
  .sort(([a], [b]) => a - b).map(([, id]) => id).filter(Boolean).join(' ')

/** Takes an entry up by its header, which is selected first, and carries it to the left half of another’s. */
async function carry(grid: Frame, id: string, before: string): Promise<void> {
  const [from, to] = [await headerOf(grid, id), await headerOf(grid, before)]
  await page().mouse.click(from.x + 70, from.y + 30)
  await page().mouse.move(from.x + 70, from.y + 30)
  await page().mouse.down()
  await page().mouse.move(to.x + 20, to.y + 30, { steps: 5 })
  await grid.locator('.landing').waitFor()
}

describe('columns of the grid', () => {
  it('are reordered by carrying a header, as one edit and one undo step; Escape leaves all as it was', async () => {
    const { uri, grid } = await openInGrid(four)
    await carry(grid, 'run-3', 'run-1')
    await press('Escape')
    await page().mouse.up()
    assert.equal(await grid.locator('.landing').count(), 0)
    assert.equal(await textOf(uri), four)
    await carry(grid, 'run-3', 'run-1')
    await page().mouse.up()
    await becomes(uri, head + found + run(3, '    from: run-2\n') + run(1, '    from: as-found\n') + run(2))
    await until('it is shown there', async () => (await order(grid)) === 'as-found run-3 run-1 run-2')
    await press('ControlOrMeta+z')
    await becomes(uri, four)
  })

  it('say why one stays where it is', async () => {
    const { uri, grid } = await openInGrid(four)
    await carry(grid, 'as-found', 'run-3')
    await page().mouse.up()
    await grid.getByText(/‘as-found’ begins the history and comes from no entry/).first().waitFor()
    assert.equal(await textOf(uri), four)
  })

  it('stay in sight where they are pinned, several and with rows, by key, while the tab is hidden, and never in the file', async () => {
    const many = head + found + [1, 2, 3].map((n) => run(n)).join('') + Array.from({ length: 20 }, (_, at) => `  - id: late-${at}\n    settings: {shock_rebound: ${at} out}\n`).join('')
    const { uri, grid } = await openInGrid(many)
    for (const id of ['as-found', 'run-2']) {
      await goToCell(uri, grid, 'settings/shock_rebound', id)
      await press('Shift+Alt+p')
      await until(`${id} is pinned`, async () => (await grid.locator('.header-cell.is-pinned', { hasText: id }).count()) === 1)
    }
    await press('Shift+Alt+l')
    const seen = async (frame: Frame) => [await frame.locator('.header-cell.is-pinned .header-id').allInnerTexts(), await frame.locator('.frozen .label-name').allInnerTexts(), await frame.locator('.frozen .cell.is-pinned').allInnerTexts()]
    const wanted = [['as-found', 'run-2'], ['Shock rebound'], ['7 out', '9 out']]
    await until('the row is pinned', async () => JSON.stringify(await seen(grid)) === JSON.stringify(wanted))
    await press('ControlOrMeta+End')
    assert.deepEqual(await seen(grid), wanted)
    await openGrid(write('other.setup.yaml', head))
    await until('it is hidden', async () => (await (await gridFrame()).getByText('run-2').count()) === 0)
    await openGrid(uri)
    await until('they are pinned again', async () => JSON.stringify(await seen(await gridFrame())) === JSON.stringify(wanted))
    assert.equal(await textOf(uri), many)
    await goToCell(uri, await gridFrame(), 'settings/shock_rebound', 'run-2')
    await type('3 out')
    await press('Enter')
    await becomes(uri, many.replace('9 out', '3 out'))
    await vscode.commands.executeCommand('undo')
    await becomes(uri, many)
  })
})
