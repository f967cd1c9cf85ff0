import assert from 'node:assert/strict'
import { seasonNotebook } from '../bench/seasonNotebook'
import { until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { closeEverything, openGrid, problemsOf, write } from './workspace'

/** Opens one that is not worked out yet when the test has its page: a longer one where a busy machine hands that out late. */
async function openUnfinished(entries: number) {
  const uri = write(`long-${entries}.setup.yaml`, seasonNotebook(entries))
  const document = await openGrid(uri)
  const grid = await gridFrame()
  const findings = grid.getByRole('button', { name: /^Findings/ })
  await until('it is shown', async () => (await grid.locator('.cell').count()) > 0)
  if (/…$/.test((await findings.textContent()) ?? '')) return { uri, document, grid, findings }
  assert.ok(entries < 3400, 'all of it was there at first, so that nothing is seen of what comes later')
  await closeEverything()
  return openUnfinished(entries + 200)
}

describe('a notebook of many entries', () => {
  it('is shown and typed into before all of it is worked out, which then comes in by itself', async function () {
    this.timeout(120_000)
    const { uri, document, grid, findings } = await openUnfinished(3000)
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
