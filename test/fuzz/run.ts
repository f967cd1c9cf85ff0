// npm run fuzz -- --minutes 5        as many cases as fit, each from its number, on from the moment
// npm run fuzz -- --from 1 --minutes 5   the same ones again
// npm run fuzz -- --case 4711        one case, with what it was made of
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { runCase, type Broken } from './runCase'

const { values } = parseArgs({ options: { minutes: { type: 'string', default: '1' }, from: { type: 'string' }, case: { type: 'string' } } })
const first = Number(values.case ?? values.from ?? Date.now() % 2 ** 31)
const until = Date.now() + (values.case === undefined ? Number(values.minutes) * 60_000 : 0)
const counts = new Map<string, number>()
const slowest = new Map<string, { ms: number; number: number; size: number }>()
const broken = new Map<string, Broken>()
let [number, failures, bytes, peak] = [first, 0, 0, 0]

do {
  const ran = runCase(number)
  counts.set(ran.kind, (counts.get(ran.kind) ?? 0) + 1)
  bytes += ran.size
  for (const [driver, ms] of Object.entries(ran.ms)) if (ms > (slowest.get(driver)?.ms ?? 0)) slowest.set(driver, { ms, number, size: ran.size })
  failures += ran.broken.length
  for (const each of ran.broken) {
    const sign = `${each.driver}: ${messageOf(each.error).split('\n')[0]!.slice(0, 150)}`
    const known = broken.get(sign)
    if (!known || known.input.length > each.input.length) broken.set(sign, each)
  }
  if (number % 50 === 0) peak = Math.max(peak, process.memoryUsage.rss())
  number++
} while (Date.now() < until)

report()

function report(): void {
  console.log(`${number - first} cases from ${first} on, ${(bytes / 1e6).toFixed(1)} MB, at most ${(peak / 2 ** 20).toFixed(0)} MiB of memory`)
  console.log([...counts].map(([kind, count]) => `${kind} ${count}`).join(', '))
  console.log(`slowest: ${[...slowest].map(([driver, { ms, number, size }]) => `${driver} ${ms.toFixed(0)} ms (${(size / 1000).toFixed(1)} kB, ${number})`).join(', ')}`)
  if (broken.size === 0) return console.log('no promise was broken')
  const folder = mkdtempSync(join(tmpdir(), 'detent-fuzz-'))
  for (const [sign, { number, kind, error, input }] of broken) {
    const file = join(folder, `${number}.${kind}.txt`)
    writeFileSync(file, input)
    console.log(`\n${sign}\n  case ${number}, ${kind}, ${file}`)
    if (values.case !== undefined && error instanceof Error) console.log(error.stack)
  }
  console.log(`\n${failures} failures of ${broken.size} sorts`)
  process.exitCode = 1
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message || error.name : String(error)
}
