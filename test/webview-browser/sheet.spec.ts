import assert from 'node:assert/strict'
import { mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import type { AxeResults } from 'axe-core'
import { chromium, type Browser, type Page } from 'playwright-core'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { makeSheet } from '../../src/core/sheet/makeSheet'
import { sheetHtml } from '../../src/core/sheet/sheetHtml'
import { findBrowser } from '../workbench/browser.mjs'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const samples = readdirSync('samples').filter((name) => name.endsWith('.setup.yaml')).map((name) => ({ name, notebook: readNotebook(readFileSync(join('samples', name), 'utf8')) }))
/** `DETENT_SHEETS=folder` leaves a picture of each sheet there, to look at. */
const pictures = process.env['DETENT_SHEETS']

describe('a hand-over sheet on paper', () => {
  let browser: Browser
  let page: Page
  before(async () => {
    const { path, environment } = findBrowser()
    browser = await chromium.launch({ executablePath: path, env: { ...process.env, ...environment } as Record<string, string>, args: ['--no-sandbox', '--disable-gpu'] })
    page = await browser.newPage({ viewport: { width: 703, height: 1039 } })
    await page.emulateMedia({ media: 'print' })
  })
  after(() => browser.close())

  /** How many pages it takes, by the page objects in the file that the browser makes. */
  async function pagesOn(format: 'A4' | 'Letter'): Promise<number> {
    const file = (await page.pdf({ format })).toString('latin1')
    assert.ok(file.startsWith('%PDF-'))
    return file.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0
  }

  for (const { name, notebook } of samples) {
    it(`is one page of A4 and of Letter for every entry of ${name}`, async function () {
      this.timeout(120_000)
      for (const entry of notebook.entries) {
        await page.setContent(sheetHtml(makeSheet(notebook, entry)))
        for (const format of ['A4', 'Letter'] as const) assert.equal(await pagesOn(format), 1, `${entry.key} ${format}`)
        if (pictures !== undefined && entry === notebook.entries.at(-1)) {
          mkdirSync(pictures, { recursive: true })
          await page.screenshot({ path: join(pictures, `${name}.png`), fullPage: true })
        }
      }
    })
  }

  it('would be two pages if there were twice as much on it', async () => {
    const { notebook } = samples.find(({ name }) => name.startsWith('tern'))!
    const sheet = makeSheet(notebook, notebook.entries.at(-1)!)
    await page.setContent(sheetHtml({ ...sheet, positions: [...sheet.positions, ...sheet.positions] }))
    assert.equal(await pagesOn('A4'), 2)
  })

  it('is black on white in type of 8.5 points and more, with nothing cut off and nothing for assistive technology to stumble over', async () => {
    for (const { name, notebook } of samples) {
      await page.setContent(sheetHtml(makeSheet(notebook, notebook.entries.at(-1)!)))
      const look = await page.evaluate(() => {
        const all = [...document.body.querySelectorAll<HTMLElement>('*')]
        return {
          colours: [...new Set(all.map((element) => getComputedStyle(element).color))], ground: getComputedStyle(document.documentElement).backgroundColor,
          body: parseFloat(getComputedStyle(document.body).fontSize) * 0.75, position: parseFloat(getComputedStyle(document.querySelector('td b')!).fontSize) * 0.75,
          cut: all.filter((element) => element.scrollWidth > element.clientWidth + 1 && getComputedStyle(element).display !== 'inline' && element.clientWidth > 0).map((element) => element.outerHTML.slice(0, 80)),
        }
      })
      assert.deepEqual([look.colours, look.ground, look.cut], [['rgb(0, 0, 0)'], 'rgb(255, 255, 255)', []], name)
      assert.ok(look.body >= 8.5 && look.position >= 10.5, `${name}: ${look.body} and ${look.position} points`)
    }
    await page.evaluate(axe)
    const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run())
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`), [])
  })
})
