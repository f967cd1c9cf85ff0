import { chromium, type Browser, type Page } from 'playwright-core'
import type { Gesture } from '../../src/core/grid/gesture'
import type { GridPlace, GridView } from '../../src/core/grid/view'
import type { ToWebview } from '../../src/protocol'
import type { dress as dressPage, FakeHost } from '../webview/page/fakeHost'
import type { sampleView as makeView } from '../webview/page/sampleView'
import { findBrowser } from '../workbench/browser.mjs'
import { servePage } from './servePage.mjs'

/** What the page without an editor offers to tests. */
declare global {
  var host: FakeHost
  var sampleView: typeof makeView
  var dress: typeof dressPage
}

export const themes = ['dark', 'light', 'hc-dark', 'hc-light'] as const

export interface Wanted {
  theme?: (typeof themes)[number]
  entries?: number
  width?: number
  height?: number
}

let started: Promise<{ browser: Browser; address: string; close(): Promise<unknown> }> | undefined

async function start() {
  const { path, environment } = findBrowser()
  const browser = await chromium.launch({ executablePath: path, env: { ...process.env, ...environment } as Record<string, string>, args: ['--no-sandbox', '--disable-gpu'] })
  const page = await servePage()
  return { browser, address: page.address, close: () => Promise.all([browser.close(), page.close()]) }
}

after(async () => (await started)?.close())

/** A page with nothing in it yet, and where the pages are served. */
export async function newPage(width = 1280, height = 800): Promise<{ page: Page; address: string }> {
  started ??= start()
  const { browser, address } = await started
  return { page: await browser.newPage({ viewport: { width, height } }), address }
}

/** A grid in a page of its own, as the editor would show it. What the page complains of is in `complaints`. */
export class OpenGrid {
  constructor(readonly page: Page, readonly complaints: string[]) {}

  static async open({ theme = 'dark', entries = 9, width = 1280, height = 800 }: Wanted = {}): Promise<OpenGrid> {
    const { page, address } = await newPage(width, height)
    const complaints: string[] = []
    page.on('pageerror', (error) => complaints.push(error.message))
    page.on('console', (message) => {
      // The toolkit tries out a style element as it starts, which the policy forbids; it then goes on without.
      if (message.type() === 'error' && !message.text().startsWith('Applying inline style')) complaints.push(message.text())
    })
    await page.goto(`${address}?theme=${theme}&entries=${entries}`)
    await page.waitForSelector('#app:not(.is-loading)')
    return new OpenGrid(page, complaints)
  }

  close(): Promise<void> {
    return this.page.close()
  }

  /** Begins anew in the same page, which is cheaper than a new one, with nothing remembered; or with what the page before left for any other. */
  async reopen({ remember = false } = {}): Promise<void> {
    await this.page.evaluate((keep) => {
      host.forgetful = true
      if (!keep) addEventListener('pagehide', () => localStorage.clear())
    }, remember)
    await this.page.reload()
    await this.page.waitForSelector('#app:not(.is-loading)')
  }

  gestures(): Promise<Gesture[]> {
    return this.page.evaluate(() => host.gestures)
  }

  /** The gestures, as soon as there are so many of them. */
  async gesturesWhen(count: number): Promise<Gesture[]> {
    await this.page.waitForFunction((least) => host.gestures.length >= least, count)
    return this.gestures()
  }

  tell(message: ToWebview): Promise<void> {
    return this.page.evaluate((told) => host.tell(told), message)
  }

  async show(view: GridView): Promise<void> {
    await this.page.evaluate((shown) => host.show(shown), view)
    await this.settle()
  }

  /** Selects a cell the way the editor does. */
  async go(place: GridPlace): Promise<void> {
    await this.tell({ type: 'placeRevealed', place })
    await this.settle()
  }

  async press(...keys: string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key)
  }

  type(text: string): Promise<void> {
    return this.page.keyboard.type(text)
  }

  /** The spoken name of the current cell. */
  async current(): Promise<string | null> {
    await this.settle()
    return this.page.getAttribute('.is-active', 'aria-label')
  }

  currentMore(): Promise<string | null> {
    return this.page.getAttribute('.is-active', 'aria-description')
  }

  /** Lets messages arrive and two frames pass. */
  async settle(): Promise<void> {
    await this.page.evaluate(() => new Promise<void>((resolve) => {
      setTimeout(() => requestAnimationFrame(() => requestAnimationFrame(() => resolve())), 30)
    }))
  }
}

/** Opens a grid for each test of a suite and closes it after; `grid()` is the one that is open. */
export function eachWith(wanted: Wanted = {}): () => OpenGrid {
  let open: OpenGrid
  beforeEach(async () => { open = await OpenGrid.open(wanted) })
  afterEach(() => open.close())
  return () => open
}
