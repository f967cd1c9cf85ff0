import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { EditorFigures } from '../editor/season.measure'
import { median, type Measured } from './measure'
import { benchFolder } from './peers/install.mjs'
import type { Benchmark } from './table'

/** What a season in one file costs in the running editor, with real keys, its own host and its own frames. */
export function editor(): Promise<Benchmark> {
  mkdirSync(benchFolder, { recursive: true })
  const built = spawnSync(process.execPath, ['build.mjs'], { encoding: 'utf8' })
  if (built.status !== 0) throw new Error(built.stderr)
  const results = join(benchFolder, 'editor.json')
  const run = spawnSync(process.execPath, ['test/workbench/suite.mjs', '--measure', '--results', results], { encoding: 'utf8' })
  if (run.status !== 0) throw new Error(run.stdout.slice(-2000) + run.stderr)
  const { opened, keystrokes, ways, frames } = JSON.parse(readFileSync(results.replace(/\.json$/, '.figures.json'), 'utf8')) as EditorFigures
  // The first one of all waits for the extension too.
  const openings = opened.slice(1)
  const measured: Measured[] = []
  for (const entries of [30, 300, 3000]) {
    const of = openings.filter((each) => each.entries === entries)
    measured.push({ what: `from opening to the first paint, ${entries} entries`, ms: median(of.map(({ untilSeenMs }) => untilSeenMs)) })
    measured.push({ what: `from opening to all of it worked out, ${entries} entries`, ms: median(of.map(({ untilFinishedMs }) => untilFinishedMs)) })
    measured.push({ what: `first paint after the first message, ${entries} entries`, ms: paintOf(openings, entries) })
    measured.push({ what: `frame end to end, 95th percentile, ${entries} entries`, ms: percentile(frames.filter((each) => each.entries === entries).flatMap(({ ms }) => ms)) })
  }
  for (const { entries, ms } of keystrokes) {
    measured.push({ what: `keystroke to findings painted, ${entries} entries`, ms: median(ms) })
    measured.push({ what: `keystroke to findings painted, 95th percentile, ${entries} entries`, ms: percentile(ms) })
  }
  for (const { entries, ms } of ways) measured.push({ what: `the same key where nothing is to be written: to the answer painted, 95th percentile, ${entries} entries`, ms: percentile(ms) })
  const typed = keystrokes.find(({ entries }) => entries === 1000)
  const way = ways.find(({ entries }) => entries === 1000)
  const [least, most] = [keystrokes[0], keystrokes.at(-1)]
  const grown = (what: string, of: 'bytes' | 'touched') => ({
    what: `${what} at ${most?.entries} (${most?.[of]}) over ${least?.entries} (${least?.[of]})`, ...(least && most ? { ratio: most[of] / least[of] } : {}), atMost: 1.05,
  })
  return Promise.resolve({
    name: 'editor', title: 'The grid in the running editor: a server, a browser without a screen, real keys', measured,
    targets: [
      { what: 'first paint of 3000 entries over 30', ratio: paintOf(openings, 3000) / paintOf(openings, 30), atMost: 1.3 },
      { what: 'frame end to end at 3000, 95th percentile, ms', ratio: percentile(frames.filter(({ entries }) => entries === 3000).flatMap(({ ms }) => ms)), atMost: 17 },
      { what: 'keystroke to findings painted at 1000, 95th percentile, ms', ...(typed ? { ratio: percentile(typed.ms) } : {}), atMost: 50 },
      { what: 'the same over the way to the host and back alone', ...(typed && way ? { ratio: percentile(typed.ms) / percentile(way.ms) } : {}) },
      grown('bytes of what the host says to a keystroke', 'bytes'),
      grown('elements of the grid changed by one', 'touched'),
    ],
  })
}

const paintOf = (opened: EditorFigures['opened'], entries: number) => median(opened.filter((each) => each.entries === entries).map(({ paintMs }) => paintMs))

const percentile = (all: readonly number[]) => [...all].sort((a, b) => a - b)[Math.floor(all.length * 0.95)]!
