// The steps of the one test command: runs them, keeps the sums, tries once more what failed in a window, and tells the end.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { endChild, endOnSignal, startChild } from './children.mjs'
import { cache, root } from './install.mjs'

/** More than this at once is no busy machine. */
const mostTriedAgain = 10

const sums = { passed: 0, failed: 0, skipped: 0 }
const failures = []
/** What failed, once more at the end, where a forge that shows the last lines alone shows it. */
const told = []
const toTryAgain = []
const passedAgain = []
const running = new Set()

endOnSignal(async () => {
  await Promise.all([...running].map(child => endChild(child)))
})

/**
 * A test suite.
 * @typedef {object} Suite
 * @property {string} name as it is told
 * @property {number} limitSeconds it is ended for running longer
 * @property {(results: string, grep: string | undefined) => string[]} command Node's arguments to run it; it leaves its sums in the
 *   file `results`; `grep` leaves those tests alone whose title it matches
 * @property {'pipe' | 'inherit'} [output] `pipe` tells what it said when it has ended
 * @property {string[]} [again] more of its arguments where it is tried once more
 * @property {boolean} [windowed] a busy machine can keep its window from its keys: what fails is tried once more when all else has ended
 */

/** Runs a suite; one that ends without its sums, or hangs, is a failure of its own. */
export async function suite(/** @type {Suite} */ wanted, grep) {
  const { name, windowed } = wanted
  const sum = await runSuite(wanted, grep)
  const again = windowed && !sum.trouble && sum.failed > 0 && sum.failed <= mostTriedAgain
  if (again) toTryAgain.push({ wanted, failures: [...new Map(sum.told.map(each => [each.title, each])).values()] })
  add(again ? { ...sum, failed: 0, told: [] } : sum, name)
  console.log(`${name}: ${sum.passed} passed, ${sum.failed} failed${again ? ' and to be tried once more' : ''}, ${sum.skipped} skipped (${sum.took})\n`)
}

/** Runs what failed in a window once more, when nothing else keeps the machine busy. A fault fails again. */
export async function tryAgain() {
  for (const { wanted, failures: before } of toTryAgain) {
    const name = `${wanted.name}, once more`
    const grep = `^(?:${before.map(patternOf).join('|')})$`
    const command = (...given) => [...wanted.command(...given), ...(wanted.again ?? [])]
    const sum = await runSuite({ ...wanted, name, command, output: 'inherit', limitSeconds: 240 }, grep)
    // One that did not run is one that failed.
    const failed = Math.max(sum.failed, before.length - sum.passed)
    add({ ...sum, failed, told: failed === sum.failed ? sum.told : before }, name)
    if (failed === sum.failed) passedAgain.push(...before.map(({ title }) => title).filter(title => !sum.told.some(each => each.title.startsWith(title))))
    console.log(`${name}: ${sum.passed} passed, ${failed} failed (${sum.took})\n`)
  }
}

/** A test is meant by its title, a group by how the titles of its tests begin. */
function patternOf({ title, group }) {
  return title.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&') + (group ? ' .*' : '')
}

function add({ passed, failed, skipped, told: these, trouble }, name) {
  sums.passed += passed
  sums.failed += failed
  sums.skipped += skipped
  if (failed > 0) failures.push(name)
  told.push(...these.map(({ title, message }) => `${title}: ${message}`))
  if (trouble) fail(`${name} (${trouble})`)
}

async function runSuite({ name, limitSeconds, command, output = 'inherit' }, grep) {
  const results = join(cache, `${name.replaceAll(/[ ,]+/g, '-')}-${process.pid}.json`)
  mkdirSync(cache, { recursive: true })
  const started = Date.now()
  if (output === 'inherit') console.log(`\n${name}:`)
  const { code, said } = await run(command(results, grep), limitSeconds, output)
  if (said) console.log(`\n${name}:\n${said.trimEnd()}`)
  const { passed = 0, failed = 0, skipped = 0, finished = false, running: last, told: these = [] } = existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : {}
  rmSync(results, { force: true })
  return { passed, failed, skipped, told: these, trouble: troubleOf(), took: since(started) }

  function troubleOf() {
    if (!finished) return last ? `ended during "${last}"` : 'ended before the first test'
    return code !== 0 && failed === 0 ? `ended with code ${code}` : undefined
  }
}

/** Adds one to the sums for a step that is a test in itself. */
export async function counted(name, step) {
  const good = await step()
  if (good) sums.passed++
  else fail(name)
  return good
}

export function fail(name) {
  sums.failed++
  failures.push(name)
}

/** Runs programs one after the other, quietly, and shows their words only when one fails. */
export async function check(name, ...programs) {
  const started = Date.now()
  const ended = []
  for (const args of programs) ended.push(await run(args, 300, 'pipe'))
  const good = ended.every(({ code }) => code === 0)
  console.log(`${name}: ${good ? 'good' : 'FAILED'} (${since(started)})`)
  for (const { code, said } of ended) if (code !== 0) console.log(said.trimEnd())
  return good
}

/** The last lines; the very last is the sum of all. Gives the exit code. */
export function tellEnd() {
  if (passedAgain.length > 0) console.log(`\nPassed at the second try only, and to be mended:\n${passedAgain.map(title => `  ${title}`).join('\n')}`)
  if (failures.length > 0) console.log(`\nFailed: ${failures.join(', ')}`)
  for (const text of told) console.log(`  ${text.slice(0, 600).replaceAll('\n', '\n    ')}`)
  console.log(`\n${sums.passed} passed, ${sums.failed} failed${sums.skipped > 0 ? `, ${sums.skipped} skipped` : ''}`)
  return sums.failed > 0 ? 1 : 0
}

/** Runs a Node program to its end, or to the limit. */
async function run(args, limitSeconds, output) {
  const child = startChild(process.execPath, args, { cwd: root, output })
  running.add(child)
  let said = ''
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', chunk => said += chunk)
  const limit = setTimeout(() => {
    said += `\nStill running after ${limitSeconds} s and ended for that: node ${args.join(' ')}`
    endChild(child)
  }, limitSeconds * 1000)
  const code = await new Promise(resolve => child.once('close', resolve))
  clearTimeout(limit)
  running.delete(child)
  return { code, said }
}

export function since(started) {
  return `${((Date.now() - started) / 1000).toFixed(1)} s`
}
