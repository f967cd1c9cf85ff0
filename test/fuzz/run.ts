// npm run fuzz -- --minutes 5        as many cases as fit, each from its number, on from the moment
// npm run fuzz -- --from 1 --minutes 5   the same ones again
// npm run fuzz -- --case 4711        one case, with where it broke a promise
// The cases run in a child process, so that one that never ends is told as well.
import { fork } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import type { Told } from './cases'

/** A case that takes longer hangs. */
const longestMs = 20_000

const { values } = parseArgs({ options: { minutes: { type: 'string', default: '1' }, from: { type: 'string' }, case: { type: 'string' } } })
const first = Number(values.case ?? values.from ?? Date.now() % 2 ** 31)
const until = Date.now() + (values.case === undefined ? Number(values.minutes) * 60_000 : 0)
const counts = new Map<string, number>()
const slowest = new Map<string, { ms: number; number: number; size: number }>()
const broken = new Map<string, { number: number; kind: string; stack: string; input: string; bytes: boolean }>()
let [number, failures, size, peak] = [first, 0, 0, 0]

void runFrom(first).then(report)

/** Has a child run cases from a number on, until the time is up or one of them hangs; then another goes on behind that. */
async function runFrom(from: number): Promise<void> {
  const child = fork(join(__dirname, 'cases.ts'), [String(from)], { execArgv: ['--import', 'tsx'] })
  const hung = await new Promise<boolean>((resolve, reject) => {
    let timer = setTimeout(() => resolve(true), longestMs)
    child.on('message', (told: Told) => {
      clearTimeout(timer)
      take(told)
      if (Date.now() >= until) return resolve(false)
      timer = setTimeout(() => resolve(true), longestMs)
      child.send('next')
    })
    child.on('exit', (code) => code && reject(new Error(`case ${number} ended the process (${code})`)))
  })
  child.removeAllListeners('exit')
  child.kill('SIGKILL')
  if (!hung) return
  failures++
  broken.set(`hangs: case ${number}`, { number, kind: '?', stack: '', input: '', bytes: false })
  number++
  if (Date.now() < until) await runFrom(number)
}

function take(told: Told): void {
  counts.set(told.kind, (counts.get(told.kind) ?? 0) + 1)
  size += told.size
  peak = Math.max(peak, told.memory)
  for (const [driver, ms] of Object.entries(told.ms)) if (ms > (slowest.get(driver)?.ms ?? 0)) slowest.set(driver, { ms, number, size: told.size })
  failures += told.broken.length
  for (const { driver, message, stack, input, bytes } of told.broken) {
    const sign = `${driver}: ${message.split('\n')[0]!.slice(0, 150)}`
    const known = broken.get(sign)
    if (!known || known.input.length > input.length) broken.set(sign, { number, kind: told.kind, stack, input, bytes })
  }
  number++
}

function report(): void {
  console.log(`${number - first} cases from ${first} on, ${(size / 1e6).toFixed(1)} MB, at most ${(peak / 2 ** 20).toFixed(0)} MiB of memory`)
  console.log([...counts].map(([kind, count]) => `${kind} ${count}`).join(', '))
  console.log(`slowest: ${[...slowest].map(([driver, { ms, number, size }]) => `${driver} ${ms.toFixed(0)} ms (${(size / 1000).toFixed(1)} kB, ${number})`).join(', ')}`)
  if (broken.size === 0) return console.log('no promise was broken')
  const folder = mkdtempSync(join(tmpdir(), 'detent-fuzz-'))
  for (const [sign, { number, kind, stack, input, bytes }] of broken) {
    const file = join(folder, `${number}.${kind}.txt`)
    writeFileSync(file, bytes ? Buffer.from(input, 'base64') : input)
    console.log(`\n${sign}\n  case ${number}, ${kind}, ${file}`)
    if (values.case !== undefined) console.log(stack)
  }
  console.log(`\n${failures} failures of ${broken.size} sorts`)
  process.exitCode = 1
}
