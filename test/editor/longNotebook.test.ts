import assert from 'node:assert/strict'
import { seasonNotebook } from '../bench/seasonNotebook'
import { until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { openGrid, problemsOf, write } from './workspace'

describe('a notebook of many entries', () => {
  it('is shown and typed into before all of it is worked out, which then comes in by itself', async function () {
    this.timeout(120_000)
    // So long that it is not worked out yet when the test has its page, which a busy machine hands out late.
    const uri = write('long.setup.yaml', seasonNotebook(3000))
    const document = await openGrid(uri)
    const grid = await gridFrame()
    const findings = grid.getByRole('button', { name: /^Findings/ })
    await until('it is shown', async () => (await grid.locator('.cell').count()) > 0)
    assert.match((await findings.textContent()) ?? '', /…$/, 'all of it was there at first, so that nothing is seen of what comes later')
    await page().getByRole('button', { name: 'The findings in this notebook are being worked out' }).waitFor()
    const before = document.getText()
    await takeKeyboard(grid)
    await press('Home', 'End')
    await type('7 in')
    await press('Enter')
    await until('it is written', () => document.getText() !== before)
    const [lines, changed] = [before.split('\n'), document.getText().split('\n')]
    assert.deepEqual(changed.flatMap((line, at) => (line === lines[at] ? [] : [line.includes('7 in')])), [true])
    await press('ControlOrMeta+z')
    await until('it is as it was', () => document.getText() === before)
    await until('findings are counted', async () => /\d$/.test((await findings.textContent()) ?? ''), 60_000)
    assert.equal(await grid.locator('.cell').filter({ hasText: /^…$/ }).count(), 0)
    await press('Home')
    await until('the first entry is in sight', async () => (await grid.getByText('run-1', { exact: true }).count()) > 0)
    assert.equal(await grid.locator('.cell').filter({ hasText: /^…$/ }).count(), 0)
    await page().getByRole('button', { name: /^Findings in this notebook: errors 0, warnings \d{4,}/ }).waitFor()
    await until('the problems are told', () => problemsOf(uri).length > 0)
  })
})
