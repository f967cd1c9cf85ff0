import assert from 'node:assert/strict'
import type { ElementHandle, Page } from 'playwright-core'
import { eachWith } from './grid'

/** How many pixels of a canvas have the colour of a chart's series, by series. */
async function inked(page: Page, chart = 0): Promise<number[]> {
  return page.evaluate((which) => {
    const canvas = document.querySelectorAll<HTMLCanvasElement>('.chart canvas')[which]!
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height)
    const probe = document.createElement('canvas').getContext('2d')!
    return [0, 1, 2, 3].map((series) => {
      probe.fillStyle = getComputedStyle(document.querySelector(`.chart-ink-series-${series}`)!).color
      probe.fillRect(0, 0, 1, 1)
      const [r, g, b] = probe.getImageData(0, 0, 1, 1).data
      let count = 0
      for (let at = 0; at < data.length; at += 4) if (data[at] === r && data[at + 1] === g && data[at + 2] === b && data[at + 3] === 255) count++
      return count
    })
  }, chart)
}

describe('the charts in the page', () => {
  const grid = eachWith()
  afterEach(() => assert.deepEqual(grid().complaints, []))

  async function open(group?: string): Promise<Page> {
    const { page } = grid()
    await grid().tell({ type: 'commandGiven', command: 'showCharts' })
    await page.waitForSelector('.chart-walk:focus')
    if (group) {
      await page.click(`#charts-tab-${group}`)
      await page.waitForFunction((key) => document.querySelector('.charts-tab[aria-selected=true]')?.id === `charts-tab-${key}` && document.querySelector('.chart canvas'), group)
    }
    await grid().settle()
    return page
  }

  /** Where the ring stands, in px of the page. */
  async function ring(page: Page): Promise<{ x: number; y: number }> {
    const { x, y, width, height } = (await page.locator('.chart-ring').first().boundingBox())!
    return { x: x + width / 2, y: y + height / 2 }
  }

  it('load nothing for it until they are opened', async () => {
    const { page } = grid()
    const loaded = () => page.evaluate(() => performance.getEntriesByType('resource').filter(({ name }) => name.includes('charts')).length)
    assert.equal(await loaded(), 0)
    await open()
    assert.equal(await loaded(), 2)
  })

  it('tell the point under the pointer and select its cell on a click', async () => {
    const page = await open()
    await grid().press('ArrowLeft', 'ArrowLeft', 'ArrowUp')
    const { x, y } = await ring(page)
    await page.mouse.move(x + 150, y + 60)
    await page.mouse.move(x + 3, y - 2)
    assert.equal(await page.textContent('.chart-readout'), 'run-6, rider aboard: 35 ± 1.5 mm')
    await page.mouse.click(x + 3, y - 2)
    assert.match((await grid().current())!, /Rebound left, run-6$/)
    assert.equal(await page.evaluate(() => document.activeElement?.getAttribute('role')), 'grid')
  })

  it('are zoomed by drawing over a stretch, and shown whole again by a double click, without a click in between', async () => {
    const page = await open()
    const labels = (await page.locator('.chart .u-over').boundingBox())!
    const before = await grid().current()
    await page.mouse.move(labels.x + 100, labels.y + 40)
    await page.mouse.down()
    await page.mouse.move(labels.x + 250, labels.y + 50, { steps: 5 })
    await page.mouse.up()
    await grid().press('End')
    const [near] = [await ring(page)]
    await grid().press('ArrowLeft')
    const step = near.x - (await ring(page)).x
    await page.mouse.dblclick(labels.x + 4, labels.y + 4)
    await grid().settle()
    const [wide] = [await ring(page)]
    await grid().press('ArrowLeft')
    assert.ok(step > 2 * (wide.x - (await ring(page)).x))
    assert.equal(await grid().current(), before)
  })

  it('have each line in its own ink, and follow the theme', async () => {
    const page = await open()
    const dark = await inked(page)
    assert.ok(dark[0]! > 100 && dark[1]! > 100 && dark[2] === 0, String(dark))
    const was = await page.evaluate(() => getComputedStyle(document.querySelector('.chart-ink-series-0')!).color)
    await page.evaluate(() => dress('light'))
    await grid().settle()
    assert.notEqual(await page.evaluate(() => getComputedStyle(document.querySelector('.chart-ink-series-0')!).color), was)
    const light = await inked(page)
    assert.ok(light[0]! > 100 && light[1]! > 100, String(light))
  })

  it('draw distributions one over the other, and a line that goes to and fro', async () => {
    const page = await open('force')
    const bars = await inked(page, 0)
    assert.ok(bars.slice(0, 3).every((count) => count > 20), String(bars))
    const loop = await inked(page, 1)
    assert.ok(loop[0]! > 300, String(loop))
    await page.locator('.chart-walk').first().focus()
    await grid().press('Home')
    assert.match((await page.textContent('.chart-readout'))!, /^run-6: 0 %, Velocity -2000 mm\/s$/)
  })

  it('draw and walk a trace of a hundred thousand points without keeping a key waiting', async () => {
    const page = await open('geometry')
    await page.locator('.chart-walk').focus()
    const ink = await inked(page)
    assert.ok(ink[0]! > 1000 && ink[1]! > 1000, String(ink))
    const ms = await page.evaluate(async () => {
      const walk = document.querySelector('.chart-walk')!
      const rounds: number[] = []
      for (let round = 0; round < 3; round++) {
        const started = performance.now()
        for (const key of ['+', '+', '+', 'ArrowLeft', 'PageUp', 'ArrowUp', 'Home', '0']) {
          walk.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }))
          await new Promise(requestAnimationFrame)
        }
        rounds.push((performance.now() - started) / 8)
      }
      return rounds
    })
    // What else keeps the machine busy is in most of the rounds, or all of them; a drawing that takes a second is in each.
    assert.ok(Math.min(...ms) < 250, `${ms.join(', ')} ms a key`)
    assert.match((await page.textContent('.chart-readout'))!, /^(front|rear): [\d.]+ mm, Time 0 s$/)
  })

  it('are higher or lower as their upper edge is drawn', async () => {
    const page = await open()
    const panel = page.locator('.charts')
    const { y, height } = (await panel.boundingBox())!
    await page.mouse.move(400, y)
    await page.mouse.down()
    await page.mouse.move(400, y - 90, { steps: 4 })
    await page.mouse.up()
    assert.ok(Math.abs((await panel.boundingBox())!.height - height - 90) < 10)
  })

  it('go back to the grid from anywhere in the panel on Escape, and Tab reaches all of it', async () => {
    const page = await open()
    const seen = new Set<string>()
    await page.locator('.splitter').focus()
    for (let tab = 0; tab < 6; tab++) {
      seen.add(await page.evaluate(() => document.activeElement!.className.split(' ')[0]!))
      await grid().press('Tab')
    }
    for (const part of ['splitter', 'charts-tab', 'charts-toggle', 'button-quiet', 'chart-walk']) assert.ok(seen.has(part), `${part} in ${[...seen].join()}`)
    await page.locator('.charts-toggle').focus()
    await grid().press('Escape')
    assert.equal(await page.evaluate(() => document.activeElement?.getAttribute('role')), 'grid')
  })

  it('keep point and table when the notebook changes under them', async () => {
    const page = await open()
    await grid().press('ArrowLeft', 'ArrowLeft')
    const element = await page.$('.chart-walk') as ElementHandle<HTMLElement>
    await page.evaluate(() => {
      const names = ['new', ...Array.from({ length: 9 }, (_, at) => `run-${at}`)]
      host.tell({ type: 'chartsGiven', charts: {
        group: 'sag', groups: [{ key: 'sag', label: 'Entries' }],
        charts: [{ key: 'sag', title: 'sag', about: '', x: { label: 'Entry', unit: '', digits: 0, names }, y: { label: 'Sag', unit: 'mm', digits: 1 }, bands: [], notes: [], table: { columns: ['Entry', 'mm'], rows: names.map((name) => [name, '40']) },
          series: [{ key: 'bike alone', label: 'bike alone', form: 'line', x: names.map((_, at) => at), y: names.map(() => 40), entries: names }] }],
      } })
    })
    await grid().settle()
    assert.equal(await element.evaluate((walk) => walk === document.activeElement), true)
    assert.equal(await page.textContent('.chart-readout'), 'bike alone: 40 mm, Entry run-6')
    assert.equal(await page.locator('.chart-table tbody tr').count(), 10)
  })
})

describe('charts that cannot be loaded', () => {
  const grid = eachWith()
  it('say so, and are loaded the next time', async () => {
    const { page } = grid()
    await page.route('**/charts.js', (route) => route.abort())
    await grid().tell({ type: 'commandGiven', command: 'showCharts' })
    await page.getByText('The charts could not be loaded').waitFor()
    await page.unroute('**/charts.js')
    await page.click('.charts .button-quiet')
    await grid().tell({ type: 'commandGiven', command: 'showCharts' })
    await page.waitForSelector('.chart-walk')
    assert.equal(await page.getByText('The charts could not be loaded').isVisible(), false)
  })
})
