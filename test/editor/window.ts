// The editor's window as a person has it before them: real key presses, real pixels, the DOM inside the webviews. The
// suite sits in the extension host and holds the window through the Chrome DevTools protocol, which the browser of the
// embedded editor and a desktop editor speak alike.
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import type { Browser, Frame, Page } from 'playwright-core'
import * as vscode from 'vscode'
import { framesWith, gridMark } from './frames'
import { settings } from './settings'
import { themes } from './themes'
import { until } from './waiting'

let browser: Browser | undefined
let workbench: Page | undefined

/** Takes hold of the window. The suite does so before the first test. */
export async function connect(): Promise<void> {
  const { debuggingPort } = settings()
  const connected = browser = await chromium.connectOverCDP(`http://127.0.0.1:${debuggingPort}`)
  workbench = await until('the workbench wears its theme', async () => {
    for (const candidate of connected.contexts().flatMap(context => context.pages())) {
      // The class of a theme shows that the editor has read what extensions there are; before, little works.
      if (await candidate.locator('.monaco-workbench[class*="vscode-theme-"]').count() > 0) return candidate
    }
    return undefined
  }, 60_000)
  await restore()
}

/** Lets go of the window without closing it. */
export async function disconnect(): Promise<void> {
  await browser?.close()
}

/** The window, for what the functions here do not do: `page().mouse`, `page().locator(…)`. */
export function page(): Page {
  if (!workbench) throw new Error('The window is not connected.')
  return workbench
}

/**
 * Presses keys one after the other wherever the focus is. `ControlOrMeta` is the platform's own.
 * @example await press('ControlOrMeta+z', 'Enter')
 */
export async function press(...keys: string[]): Promise<void> {
  for (const key of keys) await page().keyboard.press(key)
}

/** Types a text key by key wherever the focus is. */
export async function type(text: string): Promise<void> {
  await page().keyboard.type(text)
}

/**
 * Waits for the webview that shows a grid, and returns its frame: the innermost one, with our own document in it.
 * @param which the number of the grid in reading order when several are open side by side
 */
export async function gridFrame(which = 0): Promise<Frame> {
  return until('a grid is shown', async () => (await framesWith(page(), gridMark))[which])
}

/**
 * Puts the keyboard into a grid, as a click into it does, and waits until keys go there. An element of the page may have
 * the focus a moment before the page has it, and the workbench may take it back while it is still opening an editor.
 */
export async function takeKeyboard(grid: Frame): Promise<void> {
  const cells = grid.locator('[role=grid]')
  await cells.waitFor()
  await until('the grid has the keyboard', async () => {
    await cells.focus()
    return grid.evaluate<boolean>('document.hasFocus()')
  })
}

/** Saves what the window shows as a PNG and returns its path. */
export async function screenshot(name: string): Promise<string> {
  const { pictures } = settings()
  mkdirSync(pictures, { recursive: true })
  const path = join(pictures, `${name.replace(/[^\p{L}\p{N}]+/gu, '-').slice(0, 120)}.png`)
  await page().screenshot({ path })
  return path
}

const usual = { width: 1280, height: 800, theme: 'light' } as const
let now: { width: number; height: number; theme: keyof typeof themes } | undefined

/** Gives the window's inside this size in CSS pixels, until the test ends. */
export async function resize(width: number, height: number): Promise<void> {
  if (now?.width === width && now.height === height) return
  await page().setViewportSize({ width, height })
  now = { theme: usual.theme, ...now, width, height }
}

/** Changes the colour theme and waits until the workbench wears it, until the test ends. */
export async function wear(theme: keyof typeof themes): Promise<void> {
  if (now?.theme === theme) return
  const { name, cssClass } = themes[theme]
  await vscode.workspace.getConfiguration('workbench').update('colorTheme', name, vscode.ConfigurationTarget.Global)
  await page().locator(`.monaco-workbench.${cssClass}`).waitFor()
  now = { ...usual, ...now, theme }
}

/** Gives the window its usual size and theme. The suite does so after each test. */
export async function restore(): Promise<void> {
  await resize(usual.width, usual.height)
  await wear(usual.theme)
}
