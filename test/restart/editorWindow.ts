// The embedded editor as a person has it, held from outside of it, so that a test can end the window, the server or both and
// begin them anew. What the tests in `test/editor` cannot do: they end with the editor.
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { BrowserContext, Frame, Page } from 'playwright-core'
import { framesWith, gridMark } from '../editor/frames'
import { launchBrowser, speakIn } from '../workbench/browser.mjs'
import { removeFolder, temporaryFolder } from '../workbench/folders.mjs'
import { cache, ensureWorkbench } from '../workbench/install.mjs'
import { openQuickly } from '../workbench/openQuickly.mjs'
import { packExtension } from '../workbench/packExtension.mjs'
import { freePort, installPackage, startServer, type Server } from '../workbench/server.mjs'

/** The grid opens by default, and nothing is saved that nobody saved. */
const settings = { 'workbench.editorAssociations': { '*.setup.yaml': 'detent.setup' }, 'files.hotExit': 'onExit' }
const rows = ['Fork compression', 'Fork rebound', 'Shock rebound']

/** A server with the packed extension installed, as people have it, a folder with one notebook, and windows on it. */
export class Workbench {
  readonly #folder = temporaryFolder()
  readonly #workspace = join(this.#folder, 'notebooks')
  readonly file = join(this.#workspace, 'tern.setup.yaml')
  #server: Server | undefined
  #browser: BrowserContext | undefined
  #port = 0

  async open(text: string): Promise<void> {
    mkdirSync(this.#workspace)
    cpSync(installed(), join(this.#folder, 'data'), { recursive: true })
    writeFileSync(this.file, text)
    this.#port = await freePort()
    await this.startServer()
    // A browser that lives on, as a person's does: what the editor keeps of a window it keeps there.
    this.#browser = await launchBrowser({ profile: join(this.#folder, 'profile'), viewport: { width: 1280, height: 800 } })
  }

  async startServer(): Promise<void> {
    this.#server = await startServer({ port: this.#port, data: join(this.#folder, 'data'), settings })
  }

  async stopServer(): Promise<void> {
    await this.#server?.stop()
  }

  /** Opens a window on the folder, in English or in the language asked for. */
  async window(language?: string): Promise<EditorWindow> {
    const page = await this.#browser!.newPage()
    if (language) await speakIn(page, language)
    page.on('dialog', (dialog) => void dialog.accept())
    await page.goto(this.#server!.address(this.#workspace))
    await page.locator('.monaco-workbench[class*="vscode-theme-"]').waitFor({ timeout: 60_000 })
    return new EditorWindow(page)
  }

  saved(): string {
    return readFileSync(this.file, 'utf8')
  }

  async close(): Promise<void> {
    await this.#browser?.close()
    await this.#server?.stop()
    await removeFolder(this.#folder)
  }
}

let kept: string | undefined
after(() => kept === undefined ? undefined : removeFolder(kept))

/** What an editor keeps in which the packed extension was installed, once for all tests of a run. */
function installed(): string {
  if (kept !== undefined) return kept
  const folder = temporaryFolder()
  const path = packExtension(join(folder, 'detent.vsix'))
  installPackage(ensureWorkbench().editor, folder, path)
  rmSync(path)
  return kept = folder
}

/** One window, by its keys, its pointer and what it shows. */
export class EditorWindow {
  constructor(readonly page: Page) {}

  /** Opens a file of the folder by its name. */
  async quickly(name: string): Promise<void> {
    await this.page.bringToFront()
    await openQuickly(this.page, name)
    await this.grid()
  }

  /** Has the restored file shown as a grid: the editor writes down now and then only which editor showed it, and else shows its text. */
  async asGrid(): Promise<void> {
    const button = this.page.getByRole('button', { name: 'Edit as Grid' }).first()
    await until('the file is there again', async () => (await this.page.locator('.tab.dirty').count()) > 0)
    await until('the grid, or the way to it', async () => (await framesWith(this.page, gridMark)).length > 0 || (await button.isVisible()))
    if (await button.isVisible()) await button.click()
  }

  grid(): Promise<Frame> {
    return until('a grid is shown', async () => {
      const [frame] = await framesWith(this.page, gridMark)
      return frame && (await frame.locator('[role=gridcell]').count()) > 0 ? frame : undefined
    }, 60_000)
  }

  /** What stands in the last entry's cell of a row: its text, or what is being typed there. */
  async cell(row: number): Promise<string> {
    const grid = await this.grid()
    const id = await this.#label(grid, row).getAttribute('id')
    return (await grid.locator(`[role=row][aria-owns~="${id}"]`).first().innerText()).trim()
  }

  /** What is typed into the cell that is open. */
  async typed(): Promise<string | undefined> {
    return (await this.grid()).locator('.editor').inputValue({ timeout: 300 }).catch(() => undefined)
  }

  /** Clicks a row's cell and types over it. */
  async typeInto(row: number, words: string, ...keys: string[]): Promise<void> {
    await this.page.bringToFront()
    const { x, y, width, height } = (await this.#label(await this.grid(), row).boundingBox())!
    await this.page.mouse.click(x + width + 60, y + height / 2)
    await this.page.keyboard.type(words)
    for (const key of keys) await this.page.keyboard.press(key)
  }

  async press(...keys: string[]): Promise<void> {
    await this.page.bringToFront()
    for (const key of keys) await this.page.keyboard.press(key)
  }

  async save(): Promise<void> {
    await until('it is dirty', () => this.isDirty())
    await this.press('ControlOrMeta+s')
    await until('it is saved', async () => !(await this.isDirty()))
  }

  /** Closes the window as a person does, who may be asked whether to leave. */
  async end(): Promise<void> {
    const closed = this.page.waitForEvent('close')
    await this.page.close({ runBeforeUnload: true })
    await closed
  }

  /** Whether the tab of the file shows that it is not saved. */
  async isDirty(): Promise<boolean> {
    return (await this.page.locator('.tab.dirty').count()) > 0
  }

  async shows(row: number, words: string): Promise<void> {
    await until(`row ${row} shows ‘${words}’`, async () => (await this.cell(row)).includes(words))
  }

  #label(grid: Frame, row: number) {
    return grid.locator('[role=rowheader]', { hasText: rows[row]! }).first()
  }
}

/** A picture of what a window shows, for a test that failed. */
export async function picture(window: EditorWindow | undefined, name: string): Promise<string> {
  const path = join(cache, `${name.replace(/[^\p{L}\p{N}]+/gu, '-').slice(0, 100)}.png`)
  await window?.page.screenshot({ path }).catch(() => undefined)
  return path
}

export async function until<T>(what: string, check: () => T | Promise<T>, patienceMs = 20_000): Promise<NonNullable<T>> {
  for (const end = Date.now() + patienceMs; Date.now() < end;) {
    const found = await Promise.resolve(check()).catch(() => undefined)
    if (found) return found
    await pause(100)
  }
  throw new Error(`Waited in vain until ${what}`)
}

export const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))
