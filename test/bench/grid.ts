import type { CDPSession, Page } from 'playwright-core'
import { chromium } from 'playwright-core'
import { median, type Measured } from './measure'
import type { Benchmark } from './table'

export interface GridOptions {
  runs: number
}

const sizes = [30, 300, 3000] as const
const frames = 180

// What runs in the pages is text: it belongs to the browser and is compiled by nobody here.
const paintOurs = `async () => {
  const view = structuredClone(host.packed())
  await new Promise(requestAnimationFrame)
  const started = performance.now()
  window.dispatchEvent(new MessageEvent('message', { data: { type: 'gridShown', version: 1, view } }))
  await new Promise(resolve => requestAnimationFrame(() => setTimeout(resolve)))
  return performance.now() - started
}`
const paintTable = `async (columns) => {
  document.body.replaceChildren()
  const started = performance.now()
  const table = document.createElement('table')
  for (let y = 0; y < 40; y++) {
    const row = table.insertRow()
    for (let x = 0; x < columns; x++) row.insertCell().textContent = x + ' out'
  }
  document.body.append(table)
  await new Promise(resolve => requestAnimationFrame(() => setTimeout(resolve)))
  return performance.now() - started
}`
const paintCanvas = `async (columns) => {
  const canvas = document.createElement('canvas')
  Object.assign(canvas, { width: 1280, height: 800 })
  const scroller = document.createElement('div'); scroller.className = 'scroller'
  scroller.style.cssText = 'position:fixed;inset:0;overflow:auto'
  const inner = document.createElement('div'); inner.style.cssText = 'height:1200px;width:' + columns * 136 + 'px'
  canvas.style.cssText = 'position:sticky;left:0;top:0;display:block'
  inner.append(canvas); scroller.append(inner); document.body.replaceChildren(scroller)
  const pen = canvas.getContext('2d'); pen.font = '13px sans-serif'
  const draw = () => {
    pen.clearRect(0, 0, 1280, 800)
    for (let y = 0; y < 31; y++) for (let x = 0; x < 11; x++) {
      const left = x * 136 - scroller.scrollLeft % 136
      pen.strokeRect(left, y * 26, 136, 26); pen.fillText(x + Math.floor(scroller.scrollLeft / 136) + ' out', left + 80, y * 26 + 18)
    }
  }
  scroller.addEventListener('scroll', draw)
  const started = performance.now()
  draw()
  await new Promise(resolve => requestAnimationFrame(() => setTimeout(resolve)))
  return performance.now() - started
}`
const scrollOn = `async (frames) => {
  const scroller = document.querySelector('.scroller') ?? document.scrollingElement
  scroller.scrollTo(0, 0)
  const times = []
  let gaps = 0
  let last = await new Promise(requestAnimationFrame)
  for (let frame = 0; frame < frames; frame++) {
    scroller.scrollBy(20, 0)
    const now = await new Promise(requestAnimationFrame)
    times.push(now - last)
    last = now
    if (frame % 8 === 0 && document.querySelector('.grid') && !document.elementFromPoint(1200, 400)?.closest('.cell, .row-group') && !document.elementFromPoint(1200, 402)?.closest('.cell, .row-group')) gaps++
  }
  times.sort((a, b) => a - b)
  return { p95: times[Math.floor(frames * 0.95)], gaps }
}`
const changeOne = `async () => {
  let bytes = 0, touched = 0
  addEventListener('message', ({ data }) => { bytes += JSON.stringify(data).length }, { once: true })
  const watch = new MutationObserver((records) => { touched += new Set(records.map(({ target }) => target)).size })
  watch.observe(document.querySelector('.grid'), { subtree: true, childList: true, characterData: true, attributes: true })
  host.setCell({ row: 'shock_rebound', column: host.view.columns.at(-1).key }, { text: '13 out', state: 'set' })
  await new Promise(resolve => setTimeout(resolve, 150))
  watch.disconnect()
  return { bytes, touched }
}`

async function evaluated<T>(page: Page, work: string, argument?: unknown): Promise<T> {
  return page.evaluate(`(${work})(${JSON.stringify(argument) ?? ''})`) as Promise<T>
}

async function several(page: Page, runs: number, work: string, argument?: unknown): Promise<number> {
  const times: number[] = []
  for (let run = 0; run < runs; run++) times.push(await evaluated<number>(page, work, argument))
  return median(times)
}

/** Processor time of the page's main thread a frame, so that other work on the machine does not count. */
async function scrolled(page: Page, cdp: CDPSession): Promise<{ p95: number; gaps: number; mainThread: number }> {
  const busy = async () => (await cdp.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'TaskDuration')!.value
  const before = await busy()
  const found = await evaluated<{ p95: number; gaps: number }>(page, scrollOn, frames)
  return { ...found, mainThread: ((await busy()) - before) * 1000 / frames }
}

async function heap(cdp: CDPSession): Promise<number> {
  return (await cdp.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'JSHeapUsedSize')!.value / 2 ** 20
}

/** The real page with real cells, marks and pins, beside a plain table and a canvas, in a browser without an editor. */
export async function grid({ runs }: GridOptions): Promise<Benchmark> {
  // Plain JavaScript, shared with whoever only looks at the page.
  const { findBrowser } = await import('../workbench/browser.mjs' as string) as { findBrowser(): { path: string; environment: Record<string, string> } }
  const { servePage } = await import('../webview-browser/servePage.mjs' as string) as { servePage(): Promise<{ address: string; close(): Promise<unknown> }> }
  const { path, environment } = findBrowser()
  const browser = await chromium.launch({ executablePath: path, env: { ...process.env as Record<string, string>, ...environment }, args: ['--no-sandbox', '--disable-gpu'] })
  const served = await servePage()
  const measured: Measured[] = []
  const figures = new Map<string, number>()
  const keep = (what: string, ms: number, more: Partial<Measured> = {}) => {
    measured.push({ what, ms, ...more })
    figures.set(what, ms)
  }
  const opened = async (address: string) => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
    await page.goto(address)
    const cdp = await page.context().newCDPSession(page)
    await cdp.send('Performance.enable', { timeDomain: 'threadTicks' })
    return { page, cdp }
  }
  const changes: { bytes: number; touched: number }[] = []
  const elements: number[] = []
  let gaps = 0
  for (const size of sizes) {
    const { page, cdp } = await opened(`${served.address}?entries=${size}`)
    await page.waitForSelector('#app:not(.is-loading)')
    keep(`first paint, ${size} entries`, await several(page, runs + 2, paintOurs), { peakMiB: await heap(cdp) })
    const scroll = await scrolled(page, cdp)
    keep(`frame end to end, 95th percentile, ${size} entries`, scroll.p95)
    keep(`main thread a frame, ${size} entries`, scroll.mainThread)
    gaps += scroll.gaps
    changes.push(await evaluated(page, changeOne))
    elements.push(await page.evaluate('document.querySelectorAll("*").length'))
    await page.close()
  }
  const bare = await opened('about:blank')
  keep('first paint, canvas (floor; no accessibility)', await several(bare.page, runs + 2, paintCanvas, 3000), { version: browser.version() })
  keep('main thread a frame, canvas (floor)', (await scrolled(bare.page, bare.cdp)).mainThread)
  keep('first paint, plain table of 3000', await several(bare.page, 1, paintTable, 3000), { peakMiB: await heap(bare.cdp) })
  await browser.close()
  await served.close()
  const [first, , last] = changes
  const of = (what: string) => figures.get(what)!
  return {
    name: 'grid', title: 'The grid’s page: 40 rows; memory is the page’s own heap', measured,
    targets: [
      { what: 'first paint of 3000 entries over 30', ratio: of('first paint, 3000 entries') / of('first paint, 30 entries'), atMost: 1.3 },
      { what: 'times faster than the plain table of 3000', ratio: of('first paint, plain table of 3000') / of('first paint, 3000 entries'), atLeast: 40 },
      { what: 'frame end to end at 3000, ms', ratio: of('frame end to end, 95th percentile, 3000 entries'), atMost: 17 },
      { what: 'frames with a gap', ratio: gaps, atMost: 0 },
      { what: 'main thread a frame at 3000 over a canvas', ratio: of('main thread a frame, 3000 entries') / of('main thread a frame, canvas (floor)'), atMost: 1.5 },
      { what: 'bytes of one changed cell at 3000 over 30', ratio: last!.bytes / first!.bytes, atMost: 1.05 },
      { what: 'elements touched by it at 3000 over 30', ratio: last!.touched / first!.touched, atMost: 1.05 },
      { what: 'elements at 3000', ratio: elements.at(-1)!, atMost: 1500 },
      { what: 'elements at 3000 over 30', ratio: elements.at(-1)! / elements[0]!, atMost: 1.05 },
    ],
  }
}
