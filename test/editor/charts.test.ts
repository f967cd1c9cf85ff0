import assert from 'node:assert/strict'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { barriersInThemes } from './accessibility'
import { openInGrid } from './openInGrid'
import { until } from './waiting'
import { gridFrame, page, press, resize, takeKeyboard, type } from './window'
import { openGrid, textOf } from './workspace'

const plover = `format: 1
machine:
  name: Plover 450
  use: track
  front: {travel: 120, spring_rate: 9.5, spring_preload: 10}
  rear: {travel: 130, spring_rate: 95, spring_preload: 8, motion_ratio: 0.45}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
adjusters:
  fork_height: {on: fork, legs: [left, right], controls: fork_height, counts: mm}
entries:
  - id: as-found
    date: 2026-04-18
    settings: {fork_height: 5}
    sag: {front: {extended: 152, bike: [128, 122], rider: [118, 110]}}
  - id: run-1
    date: 2026-04-18
    settings: {fork_height: 9}
    sag: {front: {extended: 152, bike: [132, 128], rider: [124, 118]}}
  - id: run-2
    date: 2026-04-18
    sag: {front: {extended: 152, bike: [133, 129], rider: [125, 119]}}
`

/** Opens the charts by their key and waits until the keyboard is in them. */
async function openCharts(grid: Frame): Promise<void> {
  await press('ControlOrMeta+k', 'ControlOrMeta+g')
  await grid.locator('.chart-walk:focus').waitFor()
}

const point = (grid: Frame) => grid.locator('.chart-walk:focus [role=option]').textContent()
const pointIs = (grid: Frame, words: string) => until(`the point is ‘${words}’`, async () => (await point(grid)) === words)
const cellsOf = (grid: Frame, entry: string) => grid.locator('.chart').first().locator('tr', { has: grid.getByRole('rowheader', { name: entry, exact: true, includeHidden: true }) }).locator('td').allTextContents()
const inGrid = (grid: Frame) => grid.locator('[role=grid]:focus').waitFor()

/** Runs in the page: how many pixels of the first chart have the full colour of its first line, and of its second. */
const countInks = `(() => {
  const canvas = document.querySelector('.chart canvas')
  const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height)
  const probe = document.createElement('canvas').getContext('2d')
  return [0, 1].map((series) => {
    probe.fillStyle = getComputedStyle(document.querySelector('.chart-ink-series-' + series)).color
    probe.fillRect(0, 0, 1, 1)
    const [r, g, b] = probe.getImageData(0, 0, 1, 1).data
    let count = 0
    for (let at = 0; at < data.length; at += 4) if (data[at] === r && data[at + 1] === g && data[at + 2] === b && data[at + 3] === 255) count++
    return count
  })
})()`

describe('the charts', () => {
  it('open by their key, are walked by arrows, choose a cell by Enter and give the keyboard back on Escape', async () => {
    const { grid } = await openInGrid(plover, 'plover.setup.yaml')
    assert.equal(await grid.locator('script[src*="charts"], link[href*="charts"]').count(), 0)
    await openCharts(grid)
    await pointIs(grid, 'run-2, bike alone: 21 ± 0.7 mm, in its window')
    await press('ArrowUp')
    await pointIs(grid, 'run-2, rider aboard: 30 ± 0.7 mm, in its window')
    await press('ArrowLeft', 'ArrowLeft')
    await pointIs(grid, 'as-found, rider aboard: 38 ± 0.7 mm, 3 mm above its window')
    await press('Enter')
    await inGrid(grid)
    await grid.locator('.detail-place', { hasText: 'Rider sag rider aboard, as-found' }).waitFor()
    await openCharts(grid)
    await pointIs(grid, 'as-found, bike alone: 27 ± 0.7 mm, 2 mm above its window')
    await press('Escape')
    await inGrid(grid)
    await grid.locator('.charts').waitFor()
  })

  it('follow a length typed in the grid, and its undo', async () => {
    const { uri, grid } = await openInGrid(plover, 'plover.setup.yaml')
    await openCharts(grid)
    await grid.locator('.charts').waitFor()
    assert.deepEqual(await cellsOf(grid, 'run-2'), ['21 ± 0.7', 'within', '30 ± 0.7', 'within'])
    await press('Escape')
    await inGrid(grid)
    await goTo(grid, 'Extended wheel off the ground, run-2')
    await type('160')
    await press('Enter')
    await until('the text has it', async () => (await textOf(uri)).includes('extended: 160'))
    await until('the table follows', async () => String(await cellsOf(grid, 'run-2')) === '29 ± 0.7,4 mm above,38 ± 0.7,3 mm above')
    await press('ControlOrMeta+z')
    await until('the table follows the undo', async () => String(await cellsOf(grid, 'run-2')) === '21 ± 0.7,within,30 ± 0.7,within')
    assert.equal(await textOf(uri), plover)
  })

  it('draw what they tell: the canvas holds the colours of both lines', async () => {
    const { grid } = await openInGrid(plover, 'plover.setup.yaml')
    await openCharts(grid)
    const counts = await until('it is drawn', async () => {
      const now = await grid.evaluate(countInks) as number[]
      return now.every((count) => count > 40) ? now : undefined
    })
    assert.equal(counts.length, 2)
  })

  it('change kind by arrow keys on the tabs, and draw the force of the entry looked at', async () => {
    const { grid } = await openInGrid(plover, 'plover.setup.yaml')
    await openCharts(grid)
    await grid.locator('.charts-tab[aria-selected=true]').focus()
    await press('ArrowRight')
    await grid.locator('.charts-tab[aria-selected=true]:focus', { hasText: 'Force over travel' }).waitFor()
    await grid.locator('.chart .chart-label', { hasText: 'run-2, springs' }).waitFor()
    await takeKeyboard(grid)
    await press('ArrowLeft')
    await grid.locator('.chart .chart-label', { hasText: 'run-1, springs' }).waitFor()
  })

  it('lead from the card of a computed row to its chart', async () => {
    const { grid } = await openInGrid(plover, 'plover.setup.yaml')
    await goTo(grid, 'Trail, run-1')
    await press('ControlOrMeta+k', 'ControlOrMeta+i')
    await grid.locator('[role=dialog] .card-read:focus').waitFor()
    await press('Tab')
    await press('Enter')
    await grid.locator('.chart-walk:focus').waitFor()
    await grid.locator('.charts-tab[aria-selected=true]', { hasText: 'Rake and trail' }).waitFor()
    assert.match(await point(grid) ?? '', /^run-1, as it stands: 23\.\d+°$/)
  })

  it('say what to measure where there is nothing to draw', async () => {
    const { grid } = await openInGrid('format: 1\nadjusters:\n  ring: {on: shock, controls: preload, counts: steps}\nentries:\n  - id: as-found\n    date: 2026-04-18\n', 'plover.setup.yaml')
    await press('ControlOrMeta+k', 'ControlOrMeta+g')
    await grid.getByText('No entry has measured the front sag.').waitFor()
    await grid.locator('.charts-tab:focus').waitFor()
    await press('Escape')
    await inGrid(grid)
  })

  it('are as high as the arrow keys on their edge make them, and open again where they were', async () => {
    const { uri, grid } = await openInGrid(plover, 'plover.setup.yaml')
    await openCharts(grid)
    const height = () => grid.locator('.charts').evaluate((element) => element.getBoundingClientRect().height)
    const before = await height()
    await grid.locator('.splitter').focus()
    await press('ArrowUp', 'ArrowUp')
    await until('it is higher', async () => (await height()) > before + 20)
    await grid.locator('.charts-toggle').click()
    const higher = await height()
    await vscode.commands.executeCommand('workbench.action.files.newUntitledFile')
    await openGrid(uri)
    const again = await gridFrame()
    await again.locator('.charts .chart-table').first().waitFor()
    assert.ok(Math.abs(await again.locator('.charts').evaluate((element) => element.getBoundingClientRect().height) - higher) < 2)
  })

  it('zoom by key, keep the point in sight and show all again', async () => {
    const entries = Array.from({ length: 60 }, (_, at) => `  - id: e${at}\n    sag: {front: {extended: 152, rider: [${124 - (at % 7)}, ${118 - (at % 7)}]}}\n`).join('')
    const { grid } = await openInGrid(`format: 1\nmachine: {use: track, front: {travel: 120}}\nadjusters:\n  fork_height: {on: fork, controls: fork_height, counts: mm}\nentries:\n${entries}`, 'plover.setup.yaml')
    await openCharts(grid)
    const ring = () => grid.locator('.chart-ring').first().evaluate((element) => parseFloat(element.style.left))
    await press('ArrowLeft')
    const [there] = [await ring()]
    await press('ArrowRight')
    const wide = (await ring()) - there
    await press('+', '+', '+')
    await press('ArrowLeft')
    const [near] = [await ring()]
    await press('ArrowRight')
    assert.ok((await ring()) - near > 4 * wide)
    await press('Home')
    await pointIs(grid, 'e0, rider aboard: 31 ± 0.7 mm, in its window')
    assert.ok(await ring() >= 0)
    await press('0')
    await until('all is shown', async () => (await ring()) < 2 * wide)
  })

  it('puts up no barrier that axe can find, in any theme', async () => {
    const { grid } = await openInGrid(plover, 'plover.setup.yaml')
    await openCharts(grid)
    assert.deepEqual(await barriersInThemes(grid), [])
    await grid.locator('.charts-toggle').click()
    assert.deepEqual(await barriersInThemes(grid), [])
    await resize(800, 800)
    await grid.locator('.charts-tab').nth(1).click()
    await grid.locator('.chart-title', { hasText: 'Force over travel, front' }).waitFor()
    assert.deepEqual(await barriersInThemes(grid), [])
  })
})

/** Selects the cell that is spoken by these words, going down from the first. */
async function goTo(grid: Frame, name: string): Promise<void> {
  await press('ControlOrMeta+Home', 'ControlOrMeta+ArrowRight')
  const column = await until('the entries are there', () => grid.locator('[role=columnheader]').count())
  const [row, entry] = name.split(', ')
  const now = () => grid.locator('.detail-place').textContent()
  for (let left = column; left >= 0 && !(await now())?.includes(`, ${entry}`); left--) await press('ArrowLeft')
  for (let down = 0; down < 80 && !(await now())?.startsWith(`${row}, ${entry}`); down++) await press('ArrowDown')
  await page().waitForTimeout(50)
  assert.match(await now() ?? '', new RegExp(`^${row}, ${entry}`))
}
