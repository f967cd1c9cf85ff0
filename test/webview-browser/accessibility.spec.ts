import assert from 'node:assert/strict'
import { barriers } from './barriers'
import { OpenGrid, themes } from './grid'

const card = {
  title: 'Rebound, left leg', subtitle: 'fork caps · 19 mm hex', chart: 'sag' as const,
  sections: [
    { heading: 'Which way', lines: ['Turn it clockwise, as you look down on it from above, to turn it in.'], drawn: true },
    { heading: 'Take care', lines: ['Never force it past its seat.'], caution: true },
    { heading: 'How to count it', lines: Array.from({ length: 24 }, (_, at) => `Sentence ${at} of what there is to say about counting it from fully closed.`) },
  ],
}
const drawing = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 40" fill="none" stroke="currentColor"><circle cx="20" cy="20" r="15"/></svg>'

/** The number of what the page asked last, to answer it by. */
const lastAsked = (grid: OpenGrid, type: 'gesture' | 'cardAsked') => grid.page.evaluate((sought) => host.received.flatMap((message) => (message.type === sought && 'id' in message ? [message.id] : [])).at(-1)!, type)

async function openCard(grid: OpenGrid): Promise<void> {
  await grid.tell({ type: 'commandGiven', command: 'showCard' })
  await grid.page.waitForFunction(() => host.received.some(({ type }) => type === 'cardAsked'))
  await grid.tell({ type: 'cardGiven', id: await lastAsked(grid, 'cardAsked'), card, drawing })
  await grid.page.waitForSelector('[role=dialog] [role=document]:focus')
}

async function openLogCharts(grid: OpenGrid): Promise<void> {
  await grid.tell({ type: 'commandGiven', command: 'showCharts' })
  await grid.page.waitForSelector('.chart-walk:focus')
  await grid.page.click('#charts-tab-force')
  await grid.page.waitForFunction(() => document.querySelectorAll('.chart canvas').length === 2)
}

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
  'with the form of a remark': async (grid) => {
    await grid.go({ row: 'shock_rebound', column: 'run-7' })
    await grid.press('Shift+F2')
    await grid.settle()
  },
  'with a finding about to be accepted, and no reason yet': async (grid) => {
    await grid.go({ row: 'fork_rebound.right', column: 'run-8' })
    await grid.page.getByRole('button', { name: 'Accept with reason…' }).first().click()
    await grid.settle()
    await grid.press('Enter')
    await grid.settle()
  },
  'asked before something is taken out': async (grid) => {
    await grid.go({ row: 'fork_rebound.left', column: 'run-7' })
    await grid.page.evaluate(() => { host.silent = true })
    await grid.tell({ type: 'commandGiven', command: 'removeAdjuster' })
    await grid.gesturesWhen(1)
    await grid.tell({ type: 'gestureAnswered', id: await lastAsked(grid, 'gesture'), refused: 'Rebound is set in ‘run-7’; its positions would be lost' })
    await grid.page.waitForSelector('[role=dialog] .form-buttons')
  },
  'with a card open': (grid) => openCard(grid),
  'with a card under the pointer': async (grid) => {
    await grid.page.locator('.is-active').hover()
    await grid.page.waitForFunction(() => host.received.some(({ type }) => type === 'cardAsked'))
    await grid.tell({ type: 'cardGiven', id: await lastAsked(grid, 'cardAsked'), card })
    await grid.page.waitForSelector('.card-hover')
  },
  'with cells left as they were, and why': async (grid) => {
    await grid.page.evaluate(() => { host.silent = true })
    await grid.go({ row: 'shock_rebound', column: 'as-found' })
    await grid.press('Shift+End')
    await grid.tell({ type: 'commandGiven', command: 'fillRight' })
    await grid.gesturesWhen(1)
    await grid.tell({ type: 'gestureAnswered', id: await lastAsked(grid, 'gesture'), left: [{ row: 'shock_rebound', column: 'run-8', why: 'an anchor or a tag stands before this value; change it in the text' }] })
    await grid.page.waitForSelector('.banner')
  },
  'with a sentence beside the cell': async (grid) => {
    await grid.go({ row: 'sag.front.static', column: 'run-8' })
    await grid.type('4')
    await grid.page.waitForSelector('.toast')
  },
  'with bars and loops as tables': async (grid) => {
    await openLogCharts(grid)
    await grid.page.click('.charts-toggle')
    await grid.page.waitForSelector('.chart-table')
  },
  'with bars and loops open': (grid) => openLogCharts(grid),
  newer: (grid) => grid.page.evaluate(() => host.show({ ...sampleView(9), state: 'newer', trouble: { message: 'This notebook is written in a newer format.', line: 1 } })),
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

const worst = ['at rest', 'with a finding in the current cell', 'with a text refused', 'with a group folded, a filter and a search', 'with rows and entries pinned and scrolled under', 'with charts open', 'with bars and loops as tables', 'with a card open', 'with the form of a remark', 'asked before something is taken out', 'with cells left as they were, and why', 'while writing prose', 'broken', 'empty']

async function violations(grid: OpenGrid, state: string): Promise<string[]> {
  await grid.reopen()
  await states[state]!(grid)
  await grid.settle()
  // What comes and goes with the pointer is no landmark.
  return barriers(grid.page, true, state === 'with a card under the pointer' ? 'region' : undefined)
}

describe('accessibility, by axe, in every theme', () => {
  let grid: OpenGrid
  before(async () => { grid = await OpenGrid.open() })
  after(() => grid.close())
  for (const state of Object.keys(states)) {
    it(`has nothing to say ${state}`, async () => {
      assert.deepEqual(await violations(grid, state), [])
      // Of all it checks only contrast depends on the theme.
      for (const theme of themes.slice(1)) {
        await grid.page.evaluate((worn) => dress(worn), theme)
        await grid.settle()
        assert.deepEqual(await barriers(grid.page, false), [], theme)
      }
    })
  }
})

describe('accessibility of a page zoomed to 200 %', () => {
  let grid: OpenGrid
  before(async () => { grid = await OpenGrid.open({ theme: 'light', width: 640, height: 400 }) })
  after(() => grid.close())
  for (const state of worst) {
    it(`has nothing to say, and nothing to the right of it, ${state}`, async () => {
      assert.deepEqual(await violations(grid, state), [])
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
    it(`has nothing to say ${state}`, async () => assert.deepEqual(await violations(grid, state), []))
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
