import assert from 'node:assert/strict'
import { appendFileSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { parquetWriteBuffer } from 'hyparquet-writer'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { barriersInThemes } from './accessibility'
import { framesWith } from './frames'
import { goToCell, openInGrid, says, told } from './openInGrid'
import { answer, asked } from './quickInput'
import { until } from './waiting'
import { page, press, type } from './window'
import { changeOnDisk, makeWatched, problemsOf, textOf, write } from './workspace'

const logger = `  logger:
    time: {column: t, unit: s}
    front: {column: fork}
    rear: {column: shock}
`
const notebook = (mapping = logger, log = 'logs/one.csv') => `format: 1
machine:
  name: Tern 650
  front: {travel: 120}
  rear: {travel: 130}
${mapping}adjusters:
  fork_rebound: {on: fork, controls: rebound, counts: clicks, range: 20}
entries:
  - id: one
    date: 2026-06-13
    settings: {fork_rebound: 8 out}
    ride: {front_travel_used: 88, log: ${log}}
  - id: two
    date: 2026-06-14
    settings: {fork_rebound: 6 out}
    ride: {front_travel_used: 120, log: logs/two.csv}
`

/** A made-up ride at 100 samples a second: the fork about 60 mm, the shock about 40. */
function aLog(seconds: number, deepest = 90): string {
  const swing = deepest - 60
  const rows = Array.from({ length: seconds * 100 }, (_, at) => `${(at / 100).toFixed(2)},${(60 - swing * Math.cos((2 * Math.PI * at) / 100)).toFixed(2)},${(40 + 20 * Math.sin(at / 17)).toFixed(2)}`)
  return `t,fork,shock\n${rows.join('\n')}\n`
}

/** Opens a notebook with a log at either entry, and waits until a computed row of the second one tells what it must. */
async function openTwoLogs(row: string, words: string): Promise<Frame> {
  write('logs/one.csv', aLog(20))
  write('logs/two.csv', aLog(30, 119))
  const { uri, grid } = await openInGrid(notebook())
  await goToCell(uri, grid, `computed/log.${row}`, 'two')
  await told(grid, words)
  return grid
}

describe('logs beside the setup', () => {
  it('become rows of the grid, without a word of the file changed', async () => {
    write('logs/one.csv', aLog(20))
    write('logs/two.csv', aLog(30, 119))
    const { uri, grid } = await openInGrid(notebook())
    await goToCell(uri, grid, 'computed/log.front_median_mm', 'one')
    await told(grid, 'Dynamic sag, median front', '60')
    await goToCell(uri, grid, 'computed/log.front_used', 'one')
    await told(grid, '90 / 88 mm')
    await press('ArrowRight')
    await told(grid, '119 / 120 mm')
    assert.equal(await textOf(uri), notebook())
  })

  it('are described from a look at one in Parquet, and read in Parquet as in CSV', async () => {
    const [headings, ...rows] = aLog(20).trim().split('\n').map((line) => line.split(','))
    write('logs/one.csv', aLog(20))
    write('logs/two.csv', new Uint8Array(parquetWriteBuffer({ columnData: headings!.map((name, at) => ({ name, data: rows.map((row) => Number(row[at])), type: 'DOUBLE' })) })))
    const { uri, grid } = await openInGrid(notebook(''))
    void vscode.commands.executeCommand('detent.describeLogger')
    await answer('from a look at which log?', 'two.csv')
    await asked('choose what is different, or write it')
    await press('Enter')
    await until('it is written', async () => (await textOf(uri)) === notebook(logger.replace(/\{column: (fork|shock)\}/g, '{column: $1, unit: mm}')))
    for (const entry of ['one', 'two']) {
      await goToCell(uri, grid, 'computed/log.front_median_mm', entry)
      await told(grid, 'Dynamic sag, median front', '60')
      await goToCell(uri, grid, 'computed/log.read', entry)
      await told(grid, '20 s', '2000 rows, 100 samples a second')
    }
  })

  it('are read again when the file or the mapping is another one', async () => {
    await makeWatched('logs')
    const file = write('logs/one.csv', aLog(20))
    const { uri, grid } = await openInGrid(notebook())
    await goToCell(uri, grid, 'computed/log.read', 'one')
    await told(grid, '20 s', '2000 rows, 100 samples a second')
    await changeOnDisk(file, aLog(25), 'the change is noticed', () => says(grid, '25 s', '2500 rows'))
    rmSync(file.fsPath)
    await told(grid, 'there is no file logs/one.csv beside this notebook')
    await changeOnDisk(file, aLog(5), 'it is back', () => says(grid, '5 s', '500 rows'))
    const document = await vscode.workspace.openTextDocument(uri)
    const at = document.getText().indexOf('{column: fork}')
    const edit = new vscode.WorkspaceEdit()
    edit.replace(uri, new vscode.Range(document.positionAt(at), document.positionAt(at + '{column: fork}'.length)), '{column: fork, scale: 0.5}')
    await vscode.workspace.applyEdit(edit)
    await goToCell(uri, grid, 'computed/log.front_deepest_mm', 'one')
    await told(grid, '45')
  })

  it('take what is typed while a large log is being read', async () => {
    const file = write('logs/one.csv', aLog(600))
    for (let more = 0; more < 12; more++) appendFileSync(file.fsPath, aLog(600).slice('t,fork,shock\n'.length).replace(/^(\d+)/gm, (_, whole: string) => String(Number(whole) + 600 * (more + 1))))
    const { uri, grid } = await openInGrid(notebook())
    await goToCell(uri, grid, 'settings/fork_rebound', 'one')
    await type('9')
    await press('Enter')
    await until('the text has it', async () => (await textOf(uri)).includes('fork_rebound: 9'), 2000)
    await goToCell(uri, grid, 'computed/log.read', 'one')
    await told(grid, '780000 rows')
  })

  it('show how far they are where that takes its time, and can be stopped', async () => {
    const file = write('logs/one.csv', 't,fork,shock\n')
    const part = aLog(600).slice('t,fork,shock\n'.length)
    for (let more = 0; more < 150; more++) appendFileSync(file.fsPath, part)
    const { uri, grid } = await openInGrid(notebook())
    const toast = page().locator('.notification-toast', { hasText: 'Reading the log logs/one.csv' })
    await toast.waitFor()
    await toast.getByRole('button', { name: 'Cancel' }).click()
    await goToCell(uri, grid, 'computed/log.read', 'one')
    await told(grid, 'reading it was stopped; “Detent: Read Logs Again” begins anew')
    writeFileSync(file.fsPath, aLog(20))
    await vscode.commands.executeCommand('detent.readLogs')
    await told(grid, '20 s', '2000 rows')
  })

  it('are not opened where a link leads out of the folder', async () => {
    const { uri, grid } = await openInGrid(notebook())
    const folder = join(dirname(uri.fsPath), 'logs')
    mkdirSync(folder, { recursive: true })
    symlinkSync('/etc/hosts', join(folder, 'one.csv'))
    await vscode.commands.executeCommand('detent.readLogs')
    await goToCell(uri, grid, 'computed/log.read', 'one')
    await told(grid, 'one.csv is a link to somewhere else, which is not followed')
  })

  it('say in the cell and in the problems why one cannot be read', async () => {
    write('logs/one.csv', 'Dear diary,\nnothing happened today.\n')
    const { uri, grid } = await openInGrid(notebook())
    await goToCell(uri, grid, 'computed/log.read', 'one')
    await told(grid, 'this is no table of numbers')
    await until('it is a problem at the log', () => problemsOf(uri).find((problem) => /^16:\d+ log-unread .*this is no table of numbers/.test(problem)))
    await until('so is the one that is missing', () => problemsOf(uri).find((problem) => /^20:\d+ log-unread .*there is no file logs\/two\.csv/.test(problem)))
  })

  it('are drawn over one another, walked and zoomed by keys, and said in tables', async () => {
    const grid = await openTwoLogs('front_bottomed', '30')
    await press('ControlOrMeta+k', 'ControlOrMeta+i')
    await grid.locator('[role=dialog] .card-read:focus').waitFor()
    await press('Tab')
    await press('Enter')
    await grid.locator('.charts-tab[aria-selected=true]', { hasText: 'Log' }).waitFor()
    await grid.locator('.chart-walk:focus').waitFor()
    const point = () => grid.locator('.chart-walk:focus [role=option]').textContent()
    await press('Home')
    await until('it stands on the first sample', async () => (await point()) === 'front: 1 mm, Time 0 s')
    await press('ArrowUp')
    await press('ArrowUp')
    await until('it stands on a stop', async () => /^front on its stop at [\d.]+ s for [\d.]+ s, 119 mm$/.test(await point() ?? ''))
    await press('+', '+', '+', '0', 'Escape')
    await grid.locator('.chart-title', { hasText: 'Velocities, rear' }).waitFor()
    assert.deepEqual(await grid.locator('.chart', { hasText: 'Positions, front' }).locator('.chart-table thead th').allTextContents(), ['Position from fully extended, mm', 'two, % of the time', 'one, % of the time'])
    await press('ArrowLeft')
    await until('the entry looked at is drawn alone', async () => (await grid.locator('.chart', { hasText: 'Positions, front' }).locator('.chart-table thead th').count()) === 2)
    await press('Shift+ArrowRight')
    await until('what is selected together is drawn together', async () => (await grid.locator('.chart', { hasText: 'Positions, front' }).locator('.chart-table thead th').count()) === 3)
  })

  it('are drawn sample by sample where one looks closely enough', async () => {
    write('logs/one.csv', aLog(600))
    const { uri, grid } = await openInGrid(notebook())
    await goToCell(uri, grid, 'computed/log.front_bottomed', 'one')
    await told(grid, '0')
    await vscode.commands.executeCommand('detent.showCharts')
    await grid.locator('.charts-tab', { hasText: 'Log' }).click()
    const chart = grid.locator('.chart', { hasText: 'Over time, one' })
    await chart.locator('.chart-walk').focus()
    const point = chart.locator('[role=option]')
    const step = async () => {
      await press('ArrowRight')
      return point.textContent()
    }
    await press('Home')
    await until('it stands on the first sample', async () => (await point.textContent()) === 'front: 30 mm, Time 0 s')
    const coarse = Number(await point.getAttribute('aria-setsize'))
    await step()
    assert.match(await step() ?? '', /Time 0\.1\d* s$/)
    await press('Home', ...'++++++')
    await until('it is read more closely', async () => Number(await point.getAttribute('aria-setsize')) > coarse + 1000)
    assert.match(await point.textContent() ?? '', /^front: 30 mm, Time 0 s$/)
    assert.match(await step() ?? '', /Time 0\.01 s$/)
    await press('0')
    assert.equal(await textOf(uri), notebook())
  })

  it('are described from a look at one: proposed, changed where it is wrong, written as one step to undo', async () => {
    write('logs/one.csv', 'Zeit;Gabel;Federbein;Bremse\ns;mm;V;bar\n' + Array.from({ length: 500 }, (_, at) => `${at / 100};${40 + (at % 30)};${(0.5 + (at % 20) / 10).toFixed(2)};0`).join('\n').replaceAll('.', ',') + '\n')
    const { uri, grid } = await openInGrid(notebook(''))
    await goToCell(uri, grid, 'computed/log.read', 'one')
    await told(grid, 'the notebook does not say which column is what')
    void vscode.commands.executeCommand('detent.describeLogger')
    await answer('from a look at which log?', 'one.csv')
    await asked('choose what is different, or write it')
    await page().locator('.quick-input-widget', { hasText: 'readings in V need a scale' }).waitFor()
    await press('ArrowDown', 'ArrowDown', 'ArrowDown', 'Enter')
    await answer('Which column is the position of the rear?', 'Federbein')
    await asked('What is it in?')
    await press('Enter')
    await answer('How many mm is one V?', '30')
    await asked('What does it read with the wheel off the ground?')
    await press('ControlOrMeta+a')
    await answer('What does it read with the wheel off the ground?', '0,5')
    await asked('What does a rising reading mean?')
    await press('Enter')
    await asked('Where is the rear measured?')
    await press('Enter')
    await asked('choose what is different, or write it')
    await press('Enter')
    const before = notebook('')
    const lines = '  logger:\n    time: {column: Zeit, unit: s}\n    front: {column: Gabel, unit: mm}\n    rear: {column: Federbein, unit: V, scale: 30, offset: 0.5}\n    brake: {column: Bremse}\n'
    await until('it is written', async () => (await textOf(uri)) === before.replace('adjusters:', `${lines}adjusters:`))
    await told(grid, '5 s', '500 rows')
    await goToCell(uri, grid, 'computed/log.rear_deepest_mm', 'one')
    await told(grid, '57')
    await press('ControlOrMeta+z')
    await until('one step undoes it', async () => (await textOf(uri)) === before)
  })

  it('stand side by side in a comparison, with the change', async () => {
    await openTwoLogs('read', '30 s')
    await vscode.commands.executeCommand('detent.compareSelected')
    const frame = await until('a comparison is shown', async () => (await framesWith(page(), '[data-detent="compare"]:not(.is-loading)'))[0])
    await until('the deepest of both stand there', async () => (await frame.locator('.row', { hasText: 'Deepest' }).first().innerText()).replace(/\s+/g, ' ').includes('90 mm +29 mm 119 mm'))
  })

  it('put up no barrier that axe can find, in any theme', async () => {
    const grid = await openTwoLogs('front_bottomed', '30')
    await press('ControlOrMeta+k', 'ControlOrMeta+g')
    await grid.locator('.charts-tab', { hasText: 'Log' }).click()
    await grid.locator('.chart-title', { hasText: 'Velocities, rear' }).waitFor()
    assert.deepEqual(await barriersInThemes(grid), [])
    await grid.locator('.charts-toggle').click()
    assert.deepEqual(await barriersInThemes(grid), [])
  })
})
