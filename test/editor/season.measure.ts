import { writeFileSync } from 'node:fs'
import type { Frame } from 'playwright-core'
import { seasonNotebook } from '../bench/seasonNotebook'
import { settings } from './settings'
import { until } from './waiting'
import { gridFrame, page, press, takeKeyboard, type } from './window'
import { closeEverything, openGrid, write } from './workspace'

/** What is measured in the window as a person has it; `npm run bench -- editor` runs this and says what it is held to. */
export interface EditorFigures {
  opened: { entries: number; untilSeenMs: number; untilFinishedMs: number; paintMs: number; messageBytes: number }[]
  /** `bytes` and `touched`: of what the host says to a keystroke, as JSON, and the elements of the grid that change by it; the most of any. */
  keystrokes: { entries: number; ms: number[]; bytes: number; touched: number }[]
  /** The same key behind what stands there already, so that nothing is written and nothing found: the way to the host and back, painted. */
  ways: { entries: number; ms: number[] }[]
  frames: { entries: number; ms: number[] }[]
}

/** A grid that was shown anew, as the page saw it. */
interface Shown {
  from: number
  to: number
  bytes: number
}

const figures: EditorFigures = { opened: [], keystrokes: [], ways: [], frames: [] }
const keystrokes = 40
const frames = 180

/**
 * Put into every page before its own script: when messages of the host and keys come, and when what they led to is painted. The editor
 * writes a webview's document anew, which takes all listeners off its window, so that ours come along with the page's own.
 */
const watch = `(() => {
  if (window.top === window) return
  const seen = window.measured = { keys: [], shown: [], changed: [], answered: [], touched: 0 }
  const bytesOf = (said) => {
    let binary = 0
    return JSON.stringify(said, (_, each) => (ArrayBuffer.isView(each) ? (binary += each.byteLength, 0) : each)).length + binary
  }
  const watchGrid = () => new MutationObserver((records) => { seen.touched += new Set(records.map(({ target }) => target)).size }).observe(document.querySelector('.grid'), { subtree: true, childList: true, characterData: true, attributes: true })
  const painted = (into, from, data) => requestAnimationFrame(() => setTimeout(() => into.push({ from, to: performance.now(), bytes: bytesOf(data), finished: !data.view?.words.includes('"unfinished":true') })))
  const add = EventTarget.prototype.addEventListener
  EventTarget.prototype.addEventListener = function (type, listener, options) {
    const isOurs = (this === window || this === undefined) && type === 'message' && document.getElementById('app')
    if (isOurs) {
      add.call(window, 'message', (event) => {
        const from = performance.now()
        if (event.data?.type === 'gridShown') { painted(seen.shown, from, event.data); if (seen.watched !== true) setTimeout(watchGrid, 100); seen.watched = true }
        if (event.data?.type === 'gridChanged') painted(seen.changed, from, event.data)
        if (event.data?.type === 'gestureAnswered') painted(seen.answered, from, event.data)
      })
      add.call(window, 'keydown', (event) => { if (event.key === 'Enter') seen.keys.push(event.timeStamp) }, { capture: true })
    }
    return add.call(this ?? window, type, listener, options)
  }
})()`

const scrollOn = `(async () => {
  const scroller = document.querySelector('.scroller')
  scroller.scrollTo(0, 0)
  const times = []
  let last = await new Promise(requestAnimationFrame)
  for (let frame = 0; frame < ${frames}; frame++) {
    scroller.scrollBy(20, 0)
    const now = await new Promise(requestAnimationFrame)
    times.push(now - last)
    last = now
  }
  return times
})()`

async function open(entries: number): Promise<Frame> {
  const uri = write(`season-${entries}.setup.yaml`, seasonNotebook(entries))
  const started = performance.now()
  await openGrid(uri)
  const grid = await gridFrame()
  await until('it is painted', () => grid.evaluate<boolean>('window.measured?.shown.length > 0'), 50_000)
  await until('all of it is worked out', () => grid.evaluate<boolean>('measured.shown.at(-1).finished'), 50_000)
  // By the page's own clock: this runs where the notebook is worked out, and has to wait for that.
  const { first, last, origin } = await grid.evaluate<{ first: Shown; last: Shown; origin: number }>('({ first: measured.shown[0], last: measured.shown.find(({ finished }) => finished), origin: performance.timeOrigin })')
  const since = ({ to }: Shown) => origin + to - (performance.timeOrigin + started)
  const [untilSeenMs, untilFinishedMs, paintMs, messageBytes] = [since(first), since(last), first.to - first.from, first.bytes]
  figures.opened.push({ entries, untilSeenMs, untilFinishedMs, paintMs, messageBytes })
  return grid
}

/** From Enter behind a text to what the host says of it as painted, ms. */
async function timed(grid: Frame, text: string, said: 'changed' | 'answered'): Promise<number> {
  await grid.evaluate('measured.keys.length = measured.changed.length = measured.answered.length = measured.touched = 0')
  await type(text)
  await press('Enter')
  return until('it is painted', () => grid.evaluate<number | undefined>(`measured.keys.length > 0 && measured.answered.length > 0 && measured.${said}.length > 0 ? measured.${said}[0].to - measured.keys[0] : undefined`))
}

describe('a season in one file', () => {
  before(() => page().addInitScript(watch))
  after(() => writeFileSync(settings().results.replace(/\.json$/, '.figures.json'), JSON.stringify(figures)))

  for (const entries of [30, 30, 300, 3000, 30, 3000, 30, 300, 3000, 30, 3000]) {
    it(`opens with ${entries} entries, and scrolls`, async () => {
      const grid = await open(entries)
      figures.frames.push({ entries, ms: await grid.evaluate<number[]>(scrollOn) })
      await closeEverything()
    })
  }
  for (const entries of [30, 1000, 3000]) {
    it(`is typed into, with ${entries} entries`, async () => {
      const grid = await open(entries)
      await takeKeyboard(grid)
      await press('Home', 'End')
      const typed: number[] = []
      const figure = { entries, ms: typed, bytes: 0, touched: 0 }
      figures.keystrokes.push(figure)
      for (let time = 0; time < keystrokes; time++) {
        // Beyond its range and within it by turns, so that a finding comes and goes with each of them.
        typed.push(await timed(grid, time % 2 === 0 ? `${30 + time} in` : '3 in', 'changed'))
        const { bytes, touched } = await grid.evaluate<{ bytes: number; touched: number }>('({ bytes: measured.changed.reduce((sum, each) => sum + each.bytes, 0), touched: measured.touched })')
        Object.assign(figure, { bytes: Math.max(figure.bytes, bytes), touched: Math.max(figure.touched, touched) })
        await press('ArrowUp')
      }
      const ways: number[] = []
      figures.ways.push({ entries, ms: ways })
      for (let time = 0; time < keystrokes; time++) {
        ways.push(await timed(grid, '3 in ', 'answered'))
        await press('ArrowUp')
      }
    })
  }
})
