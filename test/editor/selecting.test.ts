import assert from 'node:assert/strict'
import type { Frame } from 'playwright-core'
import type * as vscode from 'vscode'
import { becomes, goToCell, openInGrid } from './openInGrid'
import { found, head } from './shortTern'
import { pause, until } from './waiting'
import { page, press, type } from './window'

const run = (n: number, shock: string) => `  - id: run-${n}
    date: 2026-04-2${n}
    reason: try ${n}
    settings: {shock_rebound: ${shock}}   # after lap ${n}
`
const tern = head + found + run(1, '8 out') + run(2, '9 out') + run(3, '10 out')
/** In two entries a value that others stand for, which is changed in the text alone. */
const shared = head + found + run(1, '&wet 8 out') + run(2, '*wet') + run(3, '&dry 9 out') + run(4, '*dry')

/** Without these positions; what was remarked beside them stays. */
const without = (text: string, ...positions: string[]) => positions.reduce((left, position) => {
  const line = left.split('\n').find((each) => each.includes(`{shock_rebound: ${position}}`)) ?? assert.fail(position)
  return left.replace(line, `    ${line.slice(line.indexOf('#'))}`)
}, text)

/** Where a row and an entry cross, in the window. */
async function cellAt(grid: Frame, row: string, entry: string): Promise<{ x: number; y: number }> {
  const label = (await grid.locator('.label', { hasText: row }).first().boundingBox())!
  const header = (await grid.locator('.header-cell', { hasText: entry }).boundingBox())!
  return { x: header.x + header.width / 2, y: label.y + label.height / 2 }
}

const labelAt = async (grid: Frame, row: string) => {
  const { x, y, height } = (await grid.locator('.label', { hasText: row }).first().boundingBox())!
  return { x: x + 30, y: y + height / 2 }
}

const headerAt = async (grid: Frame, entry: string) => {
  const { x, y } = (await grid.locator('.header-cell', { hasText: entry }).boundingBox())!
  return { x: x + 30, y: y + 24 }
}

async function draw(from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> {
  const { mouse } = page()
  await mouse.move(from.x, from.y)
  await mouse.down()
  await mouse.move(to.x, to.y, { steps: 5 })
  await mouse.up()
}

/** A click with a key held, as a person does it. */
async function click({ x, y }: { x: number; y: number }, ...held: ('Control' | 'Shift')[]): Promise<void> {
  for (const key of held) await page().keyboard.down(key)
  await page().mouse.click(x, y)
  for (const key of held) await page().keyboard.up(key)
}

/** Goes to a cell and waits until one stands there. */
async function standOn(uri: vscode.Uri, grid: Frame, row: string, entry: string, name: string): Promise<void> {
  await goToCell(uri, grid, row, entry)
  await until(`one stands on ${name}`, async () => (await grid.locator('.is-active').getAttribute('aria-label'))?.includes(`${name}, ${entry}`))
}

/** How many cells are selected. The keys' own conditions in the editor follow the selection a moment later. */
async function selected(grid: Frame, count: number): Promise<void> {
  await until(`${count} cells are selected`, async () => (await grid.locator('.cell.is-selected').count()) === count)
  await pause(500)
}

const explained = async (grid: Frame, ...lines: RegExp[]) => {
  for (const line of lines) await grid.locator('.banner', { hasText: line }).first().waitFor()
}

describe('a range drawn with the mouse', () => {
  it('is filled with what is typed, cleared, and given up by a click, in either direction', async () => {
    const { uri, grid } = await openInGrid(tern)
    await draw(await cellAt(grid, 'Shock rebound', 'run-1'), await cellAt(grid, 'Shock rebound', 'run-3'))
    await selected(grid, 3)
    await type('6')
    await press('ControlOrMeta+Enter')
    await becomes(uri, tern.replace('8 out', '6').replace('9 out', '6').replace('10 out', '6'))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
    await draw(await cellAt(grid, 'Shock rebound', 'run-3'), await cellAt(grid, 'Fork rebound', 'run-2'))
    await selected(grid, 6)
    await press('Delete')
    await becomes(uri, without(tern, '9 out', '10 out'))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
    await click(await cellAt(grid, 'Shock rebound', 'run-2'))
    await selected(grid, 0)
    await press('Delete')
    await becomes(uri, without(tern, '9 out'))
  })

  it('is drawn on by Shift and a click, and filled from its first column', async () => {
    const { uri, grid } = await openInGrid(tern)
    await click(await cellAt(grid, 'Shock rebound', 'as-found'))
    await click(await cellAt(grid, 'Shock rebound', 'run-2'), 'Shift')
    await selected(grid, 3)
    await press('ControlOrMeta+r')
    await becomes(uri, tern.replace('8 out', '7 out').replace('9 out', '7 out'))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
  })
})

describe('whole rows and whole columns', () => {
  const cleared = without(tern, '9 out').replace('    reason: try 2\n', '')

  it('are selected by key, and cleared as one step', async () => {
    const { uri, grid } = await openInGrid(tern)
    await standOn(uri, grid, 'settings/shock_rebound', 'run-2', 'Shock rebound')
    await press('ControlOrMeta+Space')
    await until('the column is selected', async () => (await grid.locator('.cell.is-selected').count()) > 5)
    await press('Delete')
    await becomes(uri, cleared)
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
    await standOn(uri, grid, 'settings/shock_rebound', 'run-2', 'Shock rebound')
    await press('Shift+Space')
    await selected(grid, 4)
    await press('Delete')
    await becomes(uri, without(tern, '8 out', '9 out', '10 out').replace(', shock_rebound: 7 out', ''))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
  })

  it('are selected by a click with Ctrl on a label or a header, and by drawing over them', async () => {
    const { uri, grid } = await openInGrid(tern)
    await click(await headerAt(grid, 'run-2'), 'Control')
    await until('the column is selected', async () => (await grid.locator('.cell.is-selected').count()) > 5)
    await press('Delete')
    await becomes(uri, cleared)
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
    await click(await labelAt(grid, 'Shock rebound'), 'Control')
    await selected(grid, 4)
    await type('6')
    await press('ControlOrMeta+Enter')
    await becomes(uri, tern.replace('7 out', '6').replace('8 out', '6').replace('9 out', '6').replace('10 out', '6'))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
    await draw(await labelAt(grid, 'Fork rebound'), await labelAt(grid, 'Shock rebound'))
    await until('rows are selected', async () => (await grid.locator('.cell.is-selected').count()) >= 12)
    await press('Delete')
    await becomes(uri, without(tern, '8 out', '9 out', '10 out').replace('    settings: {fork_rebound: 5 out, shock_rebound: 7 out}   # counted twice\n', '    # counted twice\n'))
    await press('ControlOrMeta+z')
    await becomes(uri, tern)
  })
})

describe('a block of which some cells cannot be written', () => {
  const wet = /Shock rebound, run-1: .*change it in the text/
  const dry = /Shock rebound, run-3: .*change it in the text/

  it('is filled to the right but for those, each explained, as one step', async () => {
    const { uri, grid } = await openInGrid(shared)
    await standOn(uri, grid, 'settings/shock_rebound', 'as-found', 'Shock rebound')
    await press('Shift+End')
    await selected(grid, 5)
    await press('ControlOrMeta+r')
    await becomes(uri, shared.replace('*wet', '7 out').replace('*dry', '7 out'))
    await explained(grid, wet, dry)
    await press('ControlOrMeta+z')
    await becomes(uri, shared)
  })

  it('is filled down but for those, each explained, as one step', async () => {
    const { uri, grid } = await openInGrid(shared)
    await standOn(uri, grid, 'settings/fork_rebound/left', 'run-1', 'Fork rebound left')
    await press('Shift+ArrowDown', 'Shift+ArrowDown')
    await selected(grid, 3)
    await press('ControlOrMeta+d')
    await becomes(uri, shared.replace('{shock_rebound: &wet 8 out}', '{shock_rebound: &wet 8 out, fork_rebound: {right: 5 out}}'))
    await explained(grid, wet)
    await press('ControlOrMeta+z')
    await becomes(uri, shared)
  })

  it('is cleared but for those, each explained, as one step', async () => {
    const { uri, grid } = await openInGrid(shared)
    await standOn(uri, grid, 'settings/shock_rebound', 'run-1', 'Shock rebound')
    await press('Shift+End')
    await selected(grid, 4)
    await press('Delete')
    await becomes(uri, without(shared, '*wet', '*dry'))
    await explained(grid, wet, dry)
    await press('ControlOrMeta+z')
    await becomes(uri, shared)
  })
})
