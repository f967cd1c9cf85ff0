import assert from 'node:assert/strict'
import type { Page } from 'playwright-core'
import { turnList } from '../../src/core/compare/turnList'
import type { ToCompare, ToTurns } from '../../src/protocol'
import { headSvg } from '../../src/core/card/headSvg'
import { pairOf, stateIn, tern, viewOf } from '../webview/compare/views'
import looks from '../webview/page/themes.json'
import { barriers } from './barriers'
import { newPage, themes } from './grid'

type Theme = (typeof themes)[number]

/** A page with a host that says one thing, as soon as it is asked. */
async function open(name: 'turns' | 'compare', theme: Theme, message: ToCompare | ToTurns, size: [number, number] = [1280, 800]): Promise<Page> {
  const { page, address } = await newPage(...size)
  // As text: what names functions in a test is not there in the page.
  await page.addInitScript(`window.acquireVsCodeApi = () => ({
    postMessage: ({ type }) => { if (type === 'ready') window.postMessage(${JSON.stringify(message)}, '*') },
    getState() {}, setState() {},
  })`)
  await page.goto(`${address}${name}.html`)
  await page.evaluate(({ variables, classes, kind }) => {
    for (const [variable, value] of Object.entries(variables)) document.documentElement.style.setProperty(variable, value)
    document.body.className = classes
    document.body.dataset['vscodeThemeKind'] = kind
  }, looks[theme])
  await page.waitForSelector(name === 'turns' ? 'h1:not(:empty)' : '#app:not(.is-loading)')
  return page
}

function turns(from: string, to: string, text = tern): ToTurns {
  const [left, right] = [stateIn(text, from), stateIn(text, to)]
  const list = turnList(left, right)
  const all = list.groups.flatMap(({ steps }) => steps.flatMap((step) => step.turns))
  const drawings = Object.fromEntries(all.flatMap(({ row, drawing }) => (drawing ? [[row, headSvg(drawing)]] : [])))
  return { type: 'turnsShown', view: { list, drawings, sources: { from: { uri: 'file:///tern.setup.yaml', entry: from }, to: { uri: 'file:///tern.setup.yaml', entry: to } } } }
}
const compared = (view = pairOf('as-found', 'run-3')): ToCompare => ({ type: 'comparisonShown', view })
const unread = () => compared(viewOf(stateIn(tern.replace('name: Tern 650', 'name: "Tern 650'), undefined, 'broken.setup.yaml'), stateIn(tern, 'run-3')))

/** The states a person can bring the pages into. */
const states: Record<string, (theme: Theme, size?: [number, number]) => Promise<Page>> = {
  'a turn list with some of it ticked': async (theme, size) => {
    const page = await open('turns', theme, turns('run-3', 'as-found'), size)
    await page.locator('input.tick').first().check()
    await page.getByRole('button', { name: 'Larger type' }).click()
    return page
  },
  'a turn list with all of it ticked': async (theme, size) => {
    const page = await open('turns', theme, turns('run-3', 'as-found'), size)
    for (const box of await page.locator('input.tick').all()) await box.check()
    return page
  },
  'a turn list of what cannot be reached': (theme, size) => open('turns', theme, turns('run-3', 'as-found', tern.replace('shock_rebound: 7 out', 'shock_rebound: about 7')), size),
  'a turn list with nothing to do': (theme, size) => open('turns', theme, turns('run-3', 'run-3'), size),
  'a comparison': (theme, size) => open('compare', theme, compared(), size),
  'a comparison of the differences alone, on one of them': async (theme, size) => {
    const page = await open('compare', theme, compared({ ...pairOf('as-found', 'run-3'), onlyDifferences: true }), size)
    await page.keyboard.press('Tab')
    await page.keyboard.press('ArrowDown')
    return page
  },
  'a comparison with a text that cannot be read': (theme, size) => open('compare', theme, unread(), size),
}

for (const theme of themes) {
  describe(`turn list and comparison, by axe, ${theme}`, () => {
    for (const [state, bring] of Object.entries(states)) {
      it(`has nothing to say of ${state}`, async () => {
        const page = await bring(theme)
        assert.deepEqual(await barriers(page, theme === 'dark'), [])
        await page.close()
      })
    }
  })
}

describe('turn list and comparison zoomed to 200 %, and with forced colours', () => {
  for (const [state, bring] of Object.entries(states)) {
    it(`show ${state} without a barrier, and nothing to the right of the page`, async () => {
      const page = await bring('light', [640, 400])
      assert.deepEqual(await barriers(page), [])
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), true)
      await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' })
      assert.deepEqual(await barriers(page), [])
      await page.close()
    })
  }
})
