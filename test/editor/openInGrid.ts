import assert from 'node:assert/strict'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { until } from './waiting'
import { gridFrame, takeKeyboard } from './window'
import { openGrid, textOf, write } from './workspace'

/** Writes a notebook, opens it in the grid and waits until the keyboard is there, on the first setting of the last entry. */
export async function openInGrid(text: string, name = 'tern.setup.yaml'): Promise<{ uri: vscode.Uri; grid: Frame }> {
  const uri = write(name, text)
  await openGrid(uri)
  const grid = await gridFrame()
  await takeKeyboard(grid)
  return { uri, grid }
}

/** Goes to a cell, with the keyboard in the grid. */
export async function goToCell(uri: vscode.Uri, grid: Frame, row: string, column: string): Promise<void> {
  await vscode.commands.executeCommand('detent.showInGrid', uri, { column, row })
  await until(`the grid has the keyboard for ${row}`, () => grid.locator('[role=grid]:focus, [role=grid] :focus').count().then((found) => found > 0))
}

/** Waits until the strip above the grid, which tells of the current cell, says all of this. */
export async function told(grid: Frame, ...parts: string[]): Promise<void> {
  await until(parts.join(', '), () => says(grid, ...parts))
}

/** Whether the grid’s bar says all of that now. */
export async function says(grid: Frame, ...parts: string[]): Promise<boolean> {
  const text = await grid.locator('.detail').innerText()
  return parts.every((part) => text.includes(part))
}

/** Waits until the text is what it must be, and shows the difference where it never is. */
export async function becomes(uri: vscode.Uri, wanted: string): Promise<void> {
  const same = await until('the text is as wanted', async () => (await textOf(uri)) === wanted).catch(() => false)
  if (!same) assert.equal(await textOf(uri), wanted)
}
