/* global document, host, MessageEvent, performance, requestAnimationFrame, structuredClone, window */
// Measures the grid's page: first paint, frames while scrolling, elements, gaps. Prints a table.
//   node test/webview-browser/measure.mjs [ENTRIES…]
import { chromium } from 'playwright-core'
import { findBrowser } from '../workbench/browser.mjs'
import { servePage } from './servePage.mjs'

// Processor time of the page's main thread, so that other work on the machine does not count.
const frames = 240
const counters = ['TaskDuration', 'ScriptDuration', 'LayoutDuration', 'RecalcStyleDuration']

/** From the host's message to the first frame that has cells, ms; the median of five. */
function firstPaint(page) {
  return page.evaluate(async () => {
    const times = []
    for (let run = 0; run < 5; run++) {
      const view = structuredClone(host.view)
      await new Promise(requestAnimationFrame)
      const started = performance.now()
      window.dispatchEvent(new MessageEvent('message', { data: { type: 'gridShown', version: 1, view } }))
      await new Promise(resolve => requestAnimationFrame(() => setTimeout(resolve)))
      times.push(performance.now() - started)
    }
    return times.sort((a, b) => a - b)[2]
  })
}

/** Scrolls on by `across` and `down` px a frame and watches the frames, and whether any shows a gap. */
function scroll(page, across, down) {
  return page.evaluate(async ({ frames, across, down }) => {
    const scroller = document.querySelector('.scroller')
    scroller.scrollTo(0, 0)
    const { left, top, width, height } = scroller.getBoundingClientRect()
    const points = [[left + width - 30, top + height / 2], [left + width / 2, top + height - 20], [left + 300, top + 100]]
    const isCovered = (x, y) => [0, 2].some(by => document.elementFromPoint(x, y + by)?.closest('.cell, .row-group, .editor'))
    const times = []
    let gaps = 0
    let last = await new Promise(requestAnimationFrame)
    for (let frame = 0; frame < frames; frame++) {
      scroller.scrollBy(across, down)
      const now = await new Promise(requestAnimationFrame)
      times.push(now - last)
      last = now
      if (frame % 8 === 0 && points.some(([x, y]) => !isCovered(x, y))) gaps++
    }
    times.sort((a, b) => a - b)
    return { p50: times[frames >> 1], p95: times[Math.floor(frames * 0.95)], gaps }
  }, { frames, across, down })
}

async function measure(page, cdp, work) {
  const read = async () => Object.fromEntries((await cdp.send('Performance.getMetrics')).metrics.map(({ name, value }) => [name, value]))
  const before = await read()
  const result = await work()
  const after = await read()
  return { ...result, ...Object.fromEntries(counters.map(name => [name, (after[name] - before[name]) * 1000 / frames])) }
}

async function main() {
  const { path, environment } = findBrowser()
  const browser = await chromium.launch({ executablePath: path, env: { ...process.env, ...environment }, args: ['--no-sandbox', '--disable-gpu'] })
  const served = await servePage()
  const rows = []
  const sizes = process.argv.slice(2).map(Number)
  for (const entries of sizes.length > 0 ? sizes : [30, 300, 3000]) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
    await page.goto(`${served.address}?entries=${entries}`)
    await page.waitForSelector('#app:not(.is-loading)')
    const cdp = await page.context().newCDPSession(page)
    await cdp.send('Performance.enable', { timeDomain: 'threadTicks' })
    const paint = await firstPaint(page)
    const across = await measure(page, cdp, () => scroll(page, 40, 0))
    const down = await measure(page, cdp, () => scroll(page, 3, 3))
    const elements = await page.evaluate(() => document.querySelectorAll('*').length)
    for (const [way, found] of [['across', across], ['both', down]]) {
      rows.push({
        entries, 'first paint ms': paint.toFixed(0), scroll: way, 'frame p50 ms': found.p50.toFixed(1), 'frame p95 ms': found.p95.toFixed(1), gaps: found.gaps,
        'main thread ms/frame': found.TaskDuration.toFixed(2), script: found.ScriptDuration.toFixed(2), layout: found.LayoutDuration.toFixed(2), style: found.RecalcStyleDuration.toFixed(2), elements,
      })
    }
    await page.close()
  }
  console.table(rows)
  await browser.close()
  await served.close()
}

void main()
