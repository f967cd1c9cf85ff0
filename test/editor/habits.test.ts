import assert from 'node:assert/strict'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { becomes, openInGrid } from './openInGrid'
import { found, head } from './shortTern'
import { pause, until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { openGrid, textOf, write } from './workspace'

const tern = `${head}${found}  - id: run-1
    date: 2026-04-19
    reason: wanted to see
    settings: {shock_rebound: 8 out}
  - id: run-2
    date: 2026-04-20
    reason: wet
    settings: {shock_rebound: 9 out}
`

/** Does what was asked and takes it back with one undo. */
async function undoneByOne(uri: vscode.Uri, before = tern): Promise<void> {
  await press('ControlOrMeta+z')
  await becomes(uri, before)
}

/** What the browser does when a person pastes, with what another program put on the clipboard. */
async function paste(grid: Frame, data: Record<string, string>): Promise<void> {
  await grid.evaluate(`(() => {
    const clipboardData = new DataTransfer()
    for (const [type, text] of Object.entries(${JSON.stringify(data)})) clipboardData.setData(type, text)
    document.dispatchEvent(new ClipboardEvent('paste', { clipboardData, cancelable: true }))
  })()`)
}

const insteadOf = (part: string, by: string, text = tern) => {
  assert.ok(text.includes(part), part)
  return text.replace(part, by)
}

describe('habits of a spreadsheet', () => {
  it('moves a position by a count towards more or less, both legs where they are written as one', async () => {
    const { uri } = await openInGrid(tern)
    await press('Alt+ArrowUp')
    await becomes(uri, insteadOf('settings: {shock_rebound: 9 out}', 'settings: {shock_rebound: 9 out, fork_rebound: 4 out}'))
    await undoneByOne(uri)
    await press('ArrowDown', 'ArrowDown', 'Alt+ArrowDown')
    await becomes(uri, insteadOf('9 out', '10 out'))
    await press('Alt+ArrowDown', 'Alt+ArrowDown')
    await becomes(uri, insteadOf('9 out', '12 out'))
  })

  it('refuses to move a position past its end, with a sentence', async () => {
    const { uri, grid } = await openInGrid(tern.replace('9 out', '22 out'))
    await press('ArrowDown', 'ArrowDown', 'Alt+ArrowDown')
    await grid.getByText(/Shock rebound stands at the end of its range of 22 clicks/).first().waitFor()
    assert.equal(await textOf(uri), tern.replace('9 out', '22 out'))
  })

  it('sets both legs at once, by a commit and by a command', async () => {
    const { uri } = await openInGrid(tern)
    await type('3 out')
    await press('ControlOrMeta+Enter')
    await becomes(uri, insteadOf('settings: {shock_rebound: 9 out}', 'settings: {shock_rebound: 9 out, fork_rebound: 3 out}'))
    await undoneByOne(uri)
    const split = tern.replace('fork_rebound: 5 out', 'fork_rebound: {left: 5 out, right: 6 out}')
    const other = write('split.setup.yaml', split)
    await openGrid(other)
    const grid = await gridFrame()
    await takeKeyboard(grid)
    await press('Home', 'ControlOrMeta+Enter')
    await becomes(other, insteadOf('right: 6 out', 'right: 5 out', split))
  })

  it('fills right and down over the selection, as one step', async () => {
    const { uri } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown', 'Home', 'Shift+End')
    // Without a range the key is the editor's own, and it hears of one a moment later.
    await pause(500)
    await press('ControlOrMeta+r')
    await becomes(uri, insteadOf('9 out', '7 out', insteadOf('8 out', '7 out')))
    await undoneByOne(uri)
    await press('ArrowUp', 'ArrowUp', 'Home', 'Shift+ArrowDown', 'Shift+ArrowDown', 'ControlOrMeta+d')
    await becomes(uri, insteadOf('fork_rebound: 5 out, shock_rebound: 7 out', 'fork_rebound: 5 out, shock_rebound: 5 out'))
    await undoneByOne(uri)
  })

  it('writes what is typed into all selected cells', async () => {
    const { uri } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown', 'Shift+Home')
    await type('6')
    await press('ControlOrMeta+Enter')
    await becomes(uri, tern.replace('7 out', '6').replace('8 out', '6').replace('9 out', '6'))
    await undoneByOne(uri)
  })

  it('inserts an entry behind the current one; what follows comes from what it came from', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowLeft', 'Alt+Insert')
    await until('the entry is there', async () => (await textOf(uri)).includes('id: run-3'))
    const text = await textOf(uri)
    assert.match(text, /8 out\}\n {2}- id: run-3\n {4}date: \d{4}-\d\d-\d\d\n {2}- id: run-2\n {4}date: 2026-04-20\n {4}from: run-1\n/)
    await grid.getByText(/Fork rebound left, run-3/).first().waitFor()
    await undoneByOne(uri)
  })

  it('duplicates an entry, and takes one out', async () => {
    const { uri } = await openInGrid(tern)
    await vscode.commands.executeCommand('detent.duplicateEntry')
    await until('the copy is there', async () => (await textOf(uri)).includes('id: run-3'))
    assert.match(await textOf(uri), /- id: run-3\n {4}date: \d{4}-\d\d-\d\d\n {4}reason: wet\n {4}settings: \{shock_rebound: 9 out\}\n$/)
    await undoneByOne(uri)
    await vscode.commands.executeCommand('detent.removeEntry')
    await becomes(uri, tern.slice(0, tern.indexOf('  - id: run-2')))
    await undoneByOne(uri)
  })

  it('says why an entry from which others come stays', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowLeft')
    await vscode.commands.executeCommand('detent.removeEntry')
    await grid.getByText(/‘run-2’ comes from this entry/).first().waitFor()
    assert.equal(await textOf(uri), tern)
  })

  it('moves an entry to the left and keeps where all of them stand', async () => {
    const { uri } = await openInGrid(tern)
    await press('Shift+Alt+ArrowLeft')
    const [start, second, third] = [tern.slice(0, tern.indexOf('  - id: run-1')), tern.slice(tern.indexOf('  - id: run-1'), tern.indexOf('  - id: run-2')), tern.slice(tern.indexOf('  - id: run-2'))]
    await becomes(uri, start + third.replace('    reason', '    from: run-1\n    reason') + second.replace('    reason', '    from: as-found\n    reason'))
    await undoneByOne(uri)
  })

  it('asks before it takes out an adjuster that is in use', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown')
    await vscode.commands.executeCommand('detent.removeAdjuster')
    await grid.getByText(/Shock rebound is set in ‘as-found’, ‘run-1’, ‘run-2’/).first().waitFor()
    await grid.locator(':focus', { hasText: 'Cancel' }).waitFor()
    assert.equal(await textOf(uri), tern)
    await press('Shift+Tab', 'Enter')
    await until('it is gone', async () => !(await textOf(uri)).includes('shock_rebound'))
    assert.ok((await textOf(uri)).includes('settings: {fork_rebound: 5 out}   # counted twice\n'))
    await takeKeyboard(grid)
    await undoneByOne(uri)
  })

  it('moves an adjuster past its neighbour and duplicates it, each as one step', async () => {
    const shock = '  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}\n'
    const damped = tern.replace(shock, `${shock}  shock_compression: {on: shock, controls: compression, counts: clicks}   # new\n`)
    const { uri, grid } = await openInGrid(damped)
    await press('ArrowDown', 'ArrowDown', 'Shift+Alt+ArrowDown')
    await becomes(uri, tern.replace(shock, `  shock_compression: {on: shock, controls: compression, counts: clicks}   # new\n${shock}`))
    await until('one stands on it still', async () => /Shock rebound/.test((await grid.locator('.is-active').getAttribute('aria-label')) ?? ''))
    await undoneByOne(uri, damped)
    await press('ControlOrMeta+Alt+Insert')
    await becomes(uri, damped.replace(shock, `${shock}${shock.replace('shock_rebound', 'shock_rebound_2')}`))
    await undoneByOne(uri, damped)
  })

  it('selects the whole row and clears it', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown', 'Shift+Space')
    await until('the row is selected', async () => (await grid.locator('.cell.is-selected').count()) === 3)
    await press('Delete')
    await becomes(uri, head + `  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_rebound: 5 out}   # counted twice
  - id: run-1
    date: 2026-04-19
    reason: wanted to see
  - id: run-2
    date: 2026-04-20
    reason: wet
`)
    await undoneByOne(uri)
  })

  it('finds in rows far away, walks with Enter, replaces, and goes back on Escape', async () => {
    const { uri, grid } = await openInGrid(tern.replace('reason: wet', 'reason: wet\n    ride: {felt: it chatters}'))
    const before = await textOf(uri)
    await press('ControlOrMeta+f')
    await until('the field has the keyboard', () => grid.evaluate('document.activeElement.id === "find-text"'))
    await type('chatters')
    await grid.getByText('1 of 1', { exact: true }).waitFor()
    await press('Tab', 'Tab', 'Tab')
    await grid.locator('#find-replacement').focus()
    await type('hops')
    await press('Enter')
    await becomes(uri, before.replace('chatters', 'hops'))
    await press('Escape')
    await until('the grid has the keyboard', () => grid.evaluate('document.activeElement.getAttribute("role") === "grid"'))
    assert.match((await grid.locator('.is-active').getAttribute('aria-label')) ?? '', /run-2/)
    await undoneByOne(uri, before)
  })

  it('folds a group and opens it, and filters rows and entries, with the sum in words', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ControlOrMeta+Shift+BracketLeft')
    await until('it is folded', async () => (await grid.getByText('Fork rebound').count()) === 0)
    await press('Enter')
    await grid.getByText('Fork rebound').first().waitFor()
    await vscode.commands.executeCommand('detent.changedOnly')
    await grid.getByText(/^1 of \d+ rows, 3 of 3 entries$/).first().waitFor()
    await press('ControlOrMeta+Shift+l')
    await until('the field has the keyboard', () => grid.evaluate('document.activeElement.id === "filter-entries"'))
    await type('wet')
    await grid.getByText(/^1 of \d+ rows, 1 of 3 entries$/).first().waitFor()
    await press('Enter', 'ControlOrMeta+Home')
    await type('4 out')
    await press('Enter')
    await becomes(uri, insteadOf('9 out', '4 out'))
    await vscode.commands.executeCommand('detent.showAll')
    await grid.getByText('Fork rebound').first().waitFor()
    await undoneByOne(uri)
  })

  it('pastes a table from another program, and several lines into one cell', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowDown', 'Home')
    await paste(grid, { 'text/plain': 'not this', 'text/html': '<meta charset="utf-8"><table><tr><td>4 out<td><b>3 out</b></table>' })
    await becomes(uri, insteadOf('fork_rebound: 5 out', 'fork_rebound: {left: 5 out, right: 4 out}', insteadOf('settings: {shock_rebound: 8 out}', 'settings: {shock_rebound: 8 out, fork_rebound: {right: 3 out}}')))
    await undoneByOne(uri)
    await vscode.commands.executeCommand('detent.showInGrid', uri, { column: 'run-2', row: 'ride.felt' })
    await until('it stands there', async () => /Feel/.test((await grid.locator('.is-active').getAttribute('aria-label').catch(() => '')) ?? ''))
    await paste(grid, { 'text/plain': '"it chatters\nand hops"' })
    await becomes(uri, `${tern}    ride:\n      felt: |-\n        it chatters\n        and hops\n`)
    await undoneByOne(uri)
  })

  it('copies as a table too', async () => {
    const { grid } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown', 'Shift+Home')
    const copied = await grid.evaluate(`(() => {
      const clipboardData = new DataTransfer()
      document.dispatchEvent(new ClipboardEvent('copy', { clipboardData, cancelable: true }))
      return [clipboardData.getData('text/plain'), clipboardData.getData('text/html')]
    })()`)
    assert.deepEqual(copied, ['7 out\t8 out\t9 out', '<table><tbody><tr><td>7 out</td><td>8 out</td><td>9 out</td></tr></tbody></table>'])
  })

  it('draws an entry wider by keys and by the pointer, and keeps that while the tab is hidden', async () => {
    const { uri, grid } = await openInGrid(tern)
    const width = async () => (await (await gridFrame()).locator('.header-cell', { hasText: 'run-2' }).boundingBox())?.width
    await press('Shift+Alt+Period')
    await until('it is wider', async () => (await width()) === 152)
    const box = (await grid.locator('.header-cell', { hasText: 'run-1' }).boundingBox())!
    await page().mouse.move(box.x + box.width - 1, box.y + 20)
    await page().mouse.down()
    await page().mouse.move(box.x + box.width + 59, box.y + 20, { steps: 3 })
    await page().mouse.up()
    const wider = async () => (await (await gridFrame()).locator('.header-cell', { hasText: 'run-1' }).boundingBox())?.width
    await until('the other is wider', async () => (await wider()) === 196)
    await openGrid(write('other.setup.yaml', head))
    await until('it is hidden', async () => (await (await gridFrame()).getByText('run-2').count()) === 0)
    await openGrid(uri)
    await until('it is as wide again', async () => (await width()) === 152 && (await wider()) === 196)
    assert.equal(await textOf(uri), tern)
  })

  it('takes no key from a text field', async () => {
    const { uri, grid } = await openInGrid(tern)
    await vscode.commands.executeCommand('detent.addEntry')
    await grid.locator('[role=dialog] :focus').first().waitFor()
    await press('Alt+ArrowUp', 'ControlOrMeta+d', 'Shift+Alt+ArrowLeft', 'Escape')
    assert.equal(await textOf(uri), tern)
  })
})
