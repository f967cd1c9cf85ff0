import assert from 'node:assert/strict'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { becomes, openInGrid } from './openInGrid'
import { until } from './waiting'
import { page, press, type } from './window'
import { textOf } from './workspace'

const tern = `format: 1
machine: {name: Tern 650, use: track}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_rebound: 5 out, shock_rebound: 7 out}   # counted twice
  - id: run-1
    date: 2026-04-19
    session: Friday afternoon
    reason: wanted to see
    settings: {shock_rebound: 8 out}
    ride: {felt: good}   # short
  - id: run-2
    date: 2026-04-20
    reason: wet
    settings: {shock_rebound: 9 out}
    verdict: keep
`

const current = (grid: Frame, name: RegExp) => until(`one stands on ${name}`, async () => name.test((await grid.locator('.is-active').getAttribute('aria-label').catch(() => '')) ?? ''))

describe('what is seen of a grid', () => {
  it('keeps a pinned entry beside the labels, to be written to, and lets go of it', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowLeft', 'Shift+Alt+p')
    await grid.locator('.header-cell.is-pinned', { hasText: 'run-1' }).waitFor()
    await press('ArrowDown', 'ArrowDown', 'Home')
    await current(grid, /Shock rebound, run-1/)
    await type('12 out')
    await press('Tab')
    await becomes(uri, tern.replace('8 out', '12 out'))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
    await press('Home', 'Shift+Alt+p')
    await until('none is pinned', async () => (await grid.locator('.is-pinned').count()) === 0)
    assert.equal(await textOf(uri), tern)
  })

  it('cuts the selected cells as one step', async () => {
    const { uri, grid } = await openInGrid(tern)
    await press('ArrowDown', 'ArrowDown', 'Shift+ArrowLeft')
    const cut = await grid.evaluate(`(() => {
      const clipboardData = new DataTransfer()
      document.dispatchEvent(new ClipboardEvent('cut', { clipboardData, cancelable: true }))
      return clipboardData.getData('text/plain')
    })()`)
    assert.equal(cut, '8 out\t9 out')
    await becomes(uri, tern.replace('    settings: {shock_rebound: 8 out}\n', '').replace('    settings: {shock_rebound: 9 out}\n', ''))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
  })

  it('explains each pasted cell that is refused, and writes the others as one step', async () => {
    const shared = tern.replace('8 out', '&same 8 out').replace('9 out', '*same')
    const { uri, grid } = await openInGrid(shared)
    await press('ArrowDown', 'ArrowDown', 'Home')
    await grid.evaluate(`(() => {
      const clipboardData = new DataTransfer()
      clipboardData.setData('text/plain', '4 out\\t5 out\\t6 out')
      document.dispatchEvent(new ClipboardEvent('paste', { clipboardData, cancelable: true }))
    })()`)
    await becomes(uri, shared.replace('7 out', '4 out').replace('*same', '6 out'))
    await grid.getByText(/Left as they were: Shock rebound, run-1: /).first().waitFor()
    await press('ControlOrMeta+z')
    await becomes(uri, shared)
  })

  it('edits a note over several lines', async () => {
    const { uri, grid } = await openInGrid(tern)
    await vscode.commands.executeCommand('detent.showInGrid', uri, { column: 'run-1', row: 'ride.felt' })
    await current(grid, /Feel/)
    await press('F2', 'Alt+Enter')
    await type('chatters')
    await press('Alt+Enter')
    await type('then hops')
    assert.ok((await grid.locator('textarea.editor').boundingBox())!.width >= 400)
    await press('Enter')
    await until('it is written', async () => (await textOf(uri)).includes('then hops'))
    assert.ok((await textOf(uri)).includes('good\\nchatters\\nthen hops') || /good\n +chatters\n +then hops/.test(await textOf(uri)), await textOf(uri))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
  })

  it('filters entries by session, verdict and day', async () => {
    const { grid } = await openInGrid(tern)
    for (const [words, left] of [['session:"friday after"', 1], ['verdict:keep', 1], ['>=2026-04-19', 2]] as const) {
      await press('ControlOrMeta+Shift+l')
      await until('the field has the keyboard', () => grid.evaluate('document.activeElement.id === "filter-entries"'))
      await press('ControlOrMeta+a')
      await type(words)
      await grid.getByText(new RegExp(`, ${left} of 3 entries$`)).first().waitFor()
      await press('Enter')
    }
    await vscode.commands.executeCommand('detent.showAll')
  })

  it('tells the current cell and what was found in the status bar, while the grid has the focus', async () => {
    const { grid } = await openInGrid(tern)
    const bar = page().locator('.statusbar-item')
    await current(grid, /run-2/)
    await press('ArrowDown', 'ArrowDown')
    await bar.filter({ hasText: 'Shock rebound, run-2' }).waitFor()
    await press('Shift+ArrowLeft')
    await bar.filter({ hasText: '2 cells from Shock rebound, run-1' }).waitFor()
    const findings = page().locator('[id="detent.detent.findings"], [id*="detent.findings"]').first()
    assert.match((await findings.getAttribute('aria-label')) ?? '', /errors \d+, warnings \d+, notes \d+/)
    await vscode.commands.executeCommand('workbench.action.closeAllEditors')
    await until('it is gone', async () => (await bar.filter({ hasText: 'Shock rebound' }).count()) === 0)
  })
})

/** Gestures by key, each one step of undo; what they do depends on where one stands. */
const gestures: Record<string, () => Promise<void>> = {
  nudge: () => press('Alt+ArrowUp'),
  back: () => press('Alt+ArrowDown'),
  typed: async () => { await type('6 out'); await press('Enter') },
  cleared: () => press('Delete'),
  inserted: () => press('Alt+Insert'),
  moved: () => press('Shift+Alt+ArrowLeft'),
  filled: () => press('ControlOrMeta+d'),
  both: () => press('ControlOrMeta+Enter'),
}

describe('any gestures by key, and as many undos', () => {
  const walks = ['ArrowDown', 'ArrowUp', 'ArrowLeft', 'ArrowRight', 'End', 'Home']
  for (const seed of [3, 11]) {
    it(`give the identical bytes (${seed})`, async () => {
      const crlf = seed === 11 ? tern.replaceAll('\n', '\r\n') : tern
      const { uri } = await openInGrid(crlf)
      let state = seed
      const below = (count: number) => (state = (Math.imul(state, 1103515245) + 12345) >>> 0, (state >>> 8) % count)
      const names = Object.keys(gestures)
      const versions = [await textOf(uri)]
      for (let step = 0; step < 14; step++) {
        for (let walk = below(3); walk >= 0; walk--) await press(walks[below(walks.length)]!)
        await gestures[names[below(names.length)]!]!()
        // One gesture after the other: what is typed next must not race with the edit before.
        await new Promise((resolve) => setTimeout(resolve, 350))
        const now = await textOf(uri)
        if (now !== versions.at(-1)) versions.push(now)
      }
      assert.ok(versions.length > 4, `${versions.length - 1} changed the text`)
      for (const before of versions.slice(0, -1).reverse()) {
        await press('ControlOrMeta+z')
        await becomes(uri, before)
      }
      assert.equal(await textOf(uri), crlf)
    })
  }
})
