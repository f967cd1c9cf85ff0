import assert from 'node:assert/strict'
import { existsSync, readFileSync } from 'node:fs'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { barriersInThemes } from './accessibility'
import { framesWith } from './frames'
import { openInGrid } from './openInGrid'
import { pause, until } from './waiting'
import { gridFrame, page, press, resize, takeKeyboard, type } from './window'
import { nameOf, openText, sample, textOf, write } from './workspace'

const tern = `format: 1
machine: {name: Tern 650, use: track, front: {travel: 120}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10, place: fork caps, tool: flat screwdriver, faces: up, worked_from: above}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22, place: shock foot, faces: down, worked_from: above}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_rebound: 3 out, shock_rebound: 7 out}
  - id: run-1
    date: 2026-04-18
    settings: {fork_rebound: 5 out}
    reason: less rebound at the front
  - id: run-2
    date: 2026-04-19
    settings: {shock_rebound: 4 out}
    reason: more rebound at the rear
`

const written = (text = tern) => write('tern.setup.yaml', text)
const list = (uri: vscode.Uri, from: string, to: string) => vscode.commands.executeCommand('detent.turnList', { uri: nameOf(uri), entry: from }, { uri: nameOf(uri), entry: to })

async function turnsFrame(): Promise<Frame> {
  const frame = await until('a turn list is shown', async () => (await framesWith(page(), '[data-detent="turns"]'))[0])
  await frame.locator('.list > *').first().waitFor()
  return frame
}

const ticked = (frame: Frame) => frame.evaluate<boolean[]>('[...document.querySelectorAll("input.tick")].map(({ checked }) => checked)')
const progress = (frame: Frame, words: string) => frame.locator('.progress', { hasText: words }).waitFor()
const quickInput = () => page().locator('.quick-input-widget input').first()

describe('the turn list', () => {
  it('shows what to turn in its order, with place, tool, way and check, and lets nothing run from elsewhere', async () => {
    await list(written(), 'run-2', 'as-found')
    const frame = await turnsFrame()
    assert.deepEqual(await frame.locator('.group > h2').allTextContents(), ['First', 'Fork', 'Shock'])
    assert.match((await frame.locator('.step h3').first().textContent()) ?? '', /Fork rebound fork caps · flat screwdriver/)
    const shock = frame.locator('.group.is-shock')
    assert.match((await shock.textContent()) ?? '', /3 clicks out .*from 4 clicks out to 7 clicks out.*Turn it clockwise, as you look down on it from above, to turn it out.*Check: 7 clicks out from closed, and 15 more/)
    assert.match((await shock.locator('svg').textContent()) ?? '', /turn out:clockwise/)
    const [care, first] = await Promise.all([frame.locator('.warning').first(), frame.locator('.group').first()].map((each) => each.boundingBox()))
    assert.ok(care!.y < first!.y, 'cautions come first')
    const policy = (await frame.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')) ?? ''
    assert.match(policy, /default-src 'none'/)
    assert.doesNotMatch(policy, /unsafe/)
  })

  it('is ticked off by keys alone, tells what is left, and keeps its ticks while it is hidden', async () => {
    const uri = written()
    await list(uri, 'run-2', 'as-found')
    const frame = await turnsFrame()
    await progress(frame, '4 of 4 left')
    await until('the first box has the focus', () => frame.evaluate('document.activeElement.matches("input.tick")'))
    await press('Space')
    await progress(frame, '3 of 4 left')
    await press('ArrowDown', 'Enter')
    await progress(frame, '2 of 4 left')
    await press('Enter', 'Enter')
    await progress(frame, 'All 4 done')
    await press('Space')
    await progress(frame, '1 of 4 left')
    assert.deepEqual(await ticked(frame), [true, true, true, false])
    await openText(write('other.txt', 'hello'))
    await press('ControlOrMeta+PageUp')
    const again = await turnsFrame()
    await progress(again, '1 of 4 left')
    assert.deepEqual(await ticked(again), [true, true, true, false])
  })

  it('is made anew when its notebook changes, and unticks what is another turn by then', async () => {
    const uri = written()
    await list(uri, 'run-2', 'as-found')
    const frame = await turnsFrame()
    for (let box = 0; box < 4; box++) await press('Enter')
    await progress(frame, 'All 4 done')
    const edit = new vscode.WorkspaceEdit()
    const document = await vscode.workspace.openTextDocument(uri)
    const at = tern.indexOf('7 out')
    edit.replace(uri, new vscode.Range(document.positionAt(at), document.positionAt(at + 1)), '9')
    await vscode.workspace.applyEdit(edit)
    await progress(frame, '1 of 4 left')
    await frame.getByText('The notebook has changed since.').waitFor()
    await frame.getByText('from 4 clicks out to 9 clicks out').waitFor()
  })

  it('says first what cannot be reached, and says of two machines why there is no list', async () => {
    await list(written(tern.replace('shock_rebound: 7 out', 'shock_rebound: 30 out')), 'run-2', 'as-found')
    const frame = await turnsFrame()
    assert.match((await frame.locator('.list > *').first().textContent()) ?? '', /^Cannot be reached by turning.*beyond its range of 22 clicks/)
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor')
    const heron = write('heron.setup.yaml', tern.replace('Tern 650', 'Heron 980'))
    await vscode.commands.executeCommand('detent.turnList', { uri: nameOf(written()) }, { uri: nameOf(heron) })
    await (await turnsFrame()).getByRole('alert').getByText(/These are two machines/).waitFor()
  })

  it('is copied as text, and asks from and to where it is not told', async () => {
    const { uri } = await openInGrid(tern)
    await press('ArrowLeft', 'ArrowLeft')
    await vscode.commands.executeCommand('workbench.action.focusActiveEditorGroup')
    void vscode.commands.executeCommand('detent.turnList')
    await page().getByText('where does the machine stand now?').waitFor()
    await press('Enter')
    await page().getByText('where should it stand?').waitFor()
    await press('Enter')
    const frame = await turnsFrame()
    await frame.getByText('From run-2').waitFor()
    await frame.getByText('To as-found').waitFor()
    await vscode.env.clipboard.writeText('')
    await vscode.commands.executeCommand('detent.copyTurnList')
    const text = await until('it is copied', async () => vscode.env.clipboard.readText())
    assert.match(text, /^Turn list: Tern 650\nFrom run-2 .*\nTo {3}as-found/)
    assert.equal(await textOf(uri), tern)
  })

  it('can be read at arm’s length, in a narrow window and without a barrier in any theme', async () => {
    await list(written(), 'run-2', 'as-found')
    const frame = await turnsFrame()
    const size = () => frame.evaluate<number>('parseFloat(getComputedStyle(document.querySelector(".turn-amount")).fontSize)')
    const before = await size()
    await frame.getByRole('button', { name: 'Larger type' }).click()
    assert.ok(before >= 20 && (await size()) > before * 1.3, `${before} px`)
    assert.deepEqual(await barriersInThemes(frame), [])
    await resize(800, 800)
    assert.equal(await frame.evaluate('document.documentElement.scrollWidth <= document.documentElement.clientWidth'), true)
  })
})

describe('going back', () => {
  it('asks a reason, adds an entry that comes from the selected one as one undo step, goes there and offers the turns', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowLeft', 'ArrowLeft')
    await press('ControlOrMeta+k', 'ControlOrMeta+b')
    await quickInput().waitFor()
    await page().getByText('Return to as-found: why?').waitFor()
    await press('Enter')
    await page().getByText('Write a reason, or press Escape').waitFor()
    await type('to see whether it was the front')
    await press('Enter')
    await until('the entry stands there', async () => (await textOf(uri)).includes('from: as-found'))
    assert.match(await textOf(uri), / {2}- id: run-3\n {4}date: \d{4}-\d\d-\d\d\n {4}from: as-found\n {4}reason: to see whether it was the front\n$/)
    await grid.getByText(/^Fork rebound left, run-3/).waitFor()
    await page().locator('.notification-toast').getByRole('button', { name: 'Turn List' }).click()
    const frame = await turnsFrame()
    await frame.getByText('To run-3').waitFor()
    assert.equal((await ticked(frame)).length, 4)
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor')
    await takeKeyboard(await gridFrame())
    await press('ControlOrMeta+z')
    await until('one step takes it back', async () => (await textOf(uri)) === tern)
  })

  it('says why it cannot be before a reason is asked for, and writes nothing', async () => {
    const { uri } = await openInGrid(tern)
    await press('ControlOrMeta+k', 'ControlOrMeta+b')
    await page().locator('.notification-toast').getByText(/‘run-2’ is the last entry/).waitFor()
    assert.equal(await textOf(uri), tern)
  })

  it('keeps a reason that is written while the text breaks, says why it cannot be taken, and takes it once it can', async () => {
    const { uri } = await openInGrid(tern)
    await press('ArrowLeft', 'ArrowLeft')
    await press('ControlOrMeta+k', 'ControlOrMeta+b')
    await quickInput().waitFor()
    await type('to see whether it was the front')
    const edit = async (change: (edit: vscode.WorkspaceEdit) => void) => {
      const all = new vscode.WorkspaceEdit()
      change(all)
      await vscode.workspace.applyEdit(all)
    }
    await edit((all) => all.insert(uri, new vscode.Position(0, 0), '"\n'))
    await type('!')
    await page().locator('.quick-input-message', { hasText: /text|line|broken/i }).waitFor()
    await press('Enter')
    await pause(300)
    assert.equal(await textOf(uri), `"\n${tern}`)
    await edit((all) => all.delete(uri, new vscode.Range(0, 0, 1, 0)))
    await type('!')
    await press('Enter')
    await until('the entry stands there', async () => (await textOf(uri)).endsWith('from: as-found\n    reason: to see whether it was the front!!\n'))
  })

  it('is in the menu of an entry’s header', async () => {
    const { grid } = await openInGrid(tern)
    await grid.locator('.header-cell', { hasText: 'run-1' }).click({ button: 'right' })
    await page().getByRole('menuitem', { name: 'Return to This Entry' }).waitFor()
    await press('ArrowDown', 'Enter')
    await page().getByText('Return to run-1: why?').waitFor()
    await press('Escape')
  })

  it('shows in the header where the history branches, and says it', async () => {
    const { grid } = await openInGrid(`${tern}  - id: run-3\n    from: run-1\n    reason: back\n`)
    await press('ControlOrMeta+ArrowUp', 'ArrowUp')
    const header = grid.locator('.header-cell.is-active')
    await header.waitFor()
    assert.equal(await header.locator('.header-from').textContent(), 'from run-1')
    assert.match((await header.getAttribute('aria-description')) ?? '', /from run-1/)
    assert.equal(await header.locator('svg.lanes path').count(), 1)
    await press('ArrowLeft')
    assert.deepEqual(await barriersInThemes(grid), [])
    await until('what was left is said', async () => /tried and left/.test((await grid.locator('.header-cell.is-active').getAttribute('aria-description')) ?? ''))
  })
})

describe('the hand-over sheet', () => {
  it('is shown as it will be on paper, runs nothing and writes nothing unasked', async () => {
    const { uri } = await openInGrid(tern)
    await vscode.commands.executeCommand('detent.printSheet')
    const frame = await until('the sheet is shown', async () => (await framesWith(page(), '.detent-bar'))[0])
    assert.match((await frame.locator('body').textContent()) ?? '', /Tern 650/)
    const ink = await frame.evaluate('[getComputedStyle(document.body).color, getComputedStyle(document.documentElement).backgroundColor]')
    assert.deepEqual(ink, ['rgb(0, 0, 0)', 'rgb(255, 255, 255)'])
    assert.equal(await textOf(uri), tern)
  })

  it('is saved where the person says', async () => {
    const { uri } = await openInGrid(tern)
    await vscode.commands.executeCommand('detent.printSheet', { uri: nameOf(uri), entry: 'run-1' })
    const frame = await until('the sheet is shown', async () => (await framesWith(page(), '.detent-bar'))[0])
    const target = sample('sheet.html').fsPath
    await frame.getByRole('link', { name: /Save to print/ }).click()
    await quickInput().waitFor()
    // The dialog fills in the name it offers once it has looked at the folder; what is typed before is lost.
    await until('a name is offered', async () => (await quickInput().inputValue()).endsWith('tern-run-1.html'))
    await quickInput().fill(target)
    await page().locator('.quick-input-widget').getByRole('button', { name: 'OK' }).click()
    await until('it is written', () => existsSync(target))
    const html = readFileSync(target, 'utf8')
    assert.match(html, /run-1/)
    assert.doesNotMatch(html, /detent-bar|<script/)
  })
})
