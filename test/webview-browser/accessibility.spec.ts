import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import { OpenGrid, themes } from './grid'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** The states a person can bring the page into, each by what they do. */
const states: Record<string, (grid: OpenGrid) => Promise<unknown>> = {
  'at rest': async () => undefined,
  'with findings open': async (grid) => {
    await grid.page.getByRole('button', { name: 'Findings' }).click()
    await grid.press('F8')
  },
  'with the list of findings focused': async (grid) => {
    await grid.page.getByRole('button', { name: 'Findings' }).click()
    await grid.page.focus('.findings-list')
  },
  'with a finding in the current cell': (grid) => grid.go({ row: 'fork_rebound.right', column: 'run-8' }),
  'with a range selected': async (grid) => {
    await grid.go({ row: 'fork_rebound.left', column: 'run-5' })
    await grid.press('Shift+ArrowRight', 'Shift+ArrowDown', 'Shift+ArrowDown')
  },
  'while typing': async (grid) => {
    await grid.go({ row: 'shock_rebound', column: 'run-8' })
    await grid.type('4')
  },
  'while choosing': async (grid) => {
    await grid.go({ row: 'verdict', column: 'run-8' })
    await grid.press('Enter', 'ArrowDown')
  },
  'while writing prose': async (grid) => {
    await grid.go({ row: 'felt', column: 'run-8' })
    await grid.press('F2')
  },
  'with a text refused': async (grid) => {
    await grid.go({ row: 'shock_rebound', column: 'run-8' })
    await grid.type('bad')
    await grid.press('Enter')
    await grid.settle()
    await grid.go({ row: 'shock_rebound', column: 'run-8' })
  },
  'with a text on its way and nobody answering': async (grid) => {
    await grid.page.evaluate(() => { host.silent = true })
    await grid.type('4')
    await grid.press('Enter')
    await grid.page.waitForSelector('.banner')
  },
  'with the header’s form': async (grid) => {
    await grid.press('ArrowUp', 'F2')
    await grid.settle()
  },
  'with the form of a new entry': async (grid) => {
    await grid.page.click('text=Add entry')
    await grid.settle()
  },
  'with the cautions unfolded': (grid) => grid.page.click('summary'),
  broken: (grid) => grid.page.evaluate(() => host.show({ ...sampleView(9), state: 'broken', trouble: { message: 'A key is missing its colon.', line: 31 } })),
  'with a group folded, a filter and a search': async (grid) => {
    await grid.tell({ type: 'commandGiven', command: 'toggleGroup' })
    await grid.tell({ type: 'commandGiven', command: 'filter' })
    await grid.type('run')
    await grid.tell({ type: 'commandGiven', command: 'changedOnly' })
    await grid.tell({ type: 'commandGiven', command: 'find' })
    await grid.type('out')
    await grid.page.waitForSelector('#find-text:focus')
  },
  'with an entry pinned and scrolled under': async (grid) => {
    await grid.tell({ type: 'commandGiven', command: 'pinEntry' })
    await grid.press('ArrowRight', 'ArrowDown')
  },
  'with rows and entries pinned and scrolled under': async (grid) => {
    await grid.tell({ type: 'commandGiven', command: 'pinEntry' })
    await grid.tell({ type: 'commandGiven', command: 'pinRow' })
    await grid.press('ControlOrMeta+End', 'ArrowUp')
  },
  'with charts open': async (grid) => {
    await grid.tell({ type: 'commandGiven', command: 'showCharts' })
    await grid.page.waitForSelector('.chart-walk:focus')
  },
  'with charts as tables': async (grid) => {
    await grid.tell({ type: 'commandGiven', command: 'showCharts' })
    await grid.page.click('.charts-toggle')
    await grid.page.waitForSelector('.chart-table')
  },
  'read only': (grid) => grid.page.evaluate(() => host.show({ ...sampleView(9), readOnly: 'a version to read' })),
  empty: (grid) => grid.page.evaluate(() => host.show({ title: '', state: 'empty', columns: [], rows: [], cells: [], findings: [], cautions: [], beginnings: [{ key: 'a', label: 'Both', about: 'Both legs alike.' }] })),
  'without entries': (grid) => grid.page.evaluate(() => host.show(sampleView(0))),
}

const worst = ['at rest', 'with a finding in the current cell', 'with a text refused', 'with a group folded, a filter and a search', 'with rows and entries pinned and scrolled under', 'with charts open', 'broken', 'empty']

async function violations(grid: OpenGrid, state: string, all: boolean): Promise<string[]> {
  await grid.reopen()
  await states[state]!(grid)
  await grid.settle()
  // Through the browser's own console: the page's policy lets no other script in.
  await grid.page.evaluate(axe)
  const only = all ? {} : { runOnly: ['color-contrast'] }
  const results = await grid.page.evaluate((options) => (globalThis as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run(options), only)
  return results.violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`))
}

for (const theme of themes) {
  describe(`accessibility, by axe, ${theme}`, () => {
    let grid: OpenGrid
    before(async () => { grid = await OpenGrid.open({ theme, width: theme === 'light' ? 800 : 1280 }) })
    after(() => grid.close())
    // Of all it checks only contrast depends on the theme.
    for (const state of Object.keys(states)) {
      it(`has nothing to say ${state}`, async () => assert.deepEqual(await violations(grid, state, theme === 'dark'), []))
    }
  })
}

describe('accessibility of a page zoomed to 200 %', () => {
  let grid: OpenGrid
  before(async () => { grid = await OpenGrid.open({ theme: 'light', width: 640, height: 400 }) })
  after(() => grid.close())
  for (const state of worst) {
    it(`has nothing to say, and nothing to the right of it, ${state}`, async () => {
      assert.deepEqual(await violations(grid, state, true), [])
      assert.equal(await grid.page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), true)
    })
  }

  it('keeps rows in sight to work in', async () => {
    await grid.reopen()
    const height = await grid.page.evaluate(() => document.querySelector('.scroller')!.clientHeight)
    assert.ok(height >= 140, `${height} px`)
  })
})

describe('a page with forced colours and without motion', () => {
  let grid: OpenGrid
  before(async () => {
    grid = await OpenGrid.open({ theme: 'hc-dark' })
    await grid.page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' })
  })
  after(() => grid.close())
  for (const state of worst) {
    it(`has nothing to say ${state}`, async () => assert.deepEqual(await violations(grid, state, true), []))
  }

  it('tells the current cell, the selected ones and the findings by more than colour', async () => {
    await grid.reopen()
    await grid.go({ row: 'fork_rebound.right', column: 'run-8' })
    await grid.press('Shift+ArrowDown')
    await grid.settle()
    const look = await grid.page.evaluate(() => {
      const [active, selected, marked] = ['.cell.is-active', '.cell.is-selected:not(.is-active)', '.cell.mark-warning'].map((selector) => document.querySelector(selector)!)
      return {
        active: getComputedStyle(active!).outlineStyle, selected: getComputedStyle(selected!).outlineStyle,
        mark: getComputedStyle(marked!, '::after').content, moving: document.getAnimations().length,
      }
    })
    assert.deepEqual({ ...look, mark: look.mark !== 'none' }, { active: 'solid', selected: 'dashed', mark: true, moving: 0 })
  })
})
