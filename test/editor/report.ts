// How the suite speaks: line by line on the extension host's console, each line marked, because the editor around it writes
// to the same stream. The launcher of the embedded editor shows the marked lines alone.
import { writeFileSync } from 'node:fs'
import { findSourceMap } from 'node:module'
import { format } from 'node:util'
import Mocha from 'mocha'
import failureOf from '../workbench/failureOf.cjs'

/** Begins every line of the suite. */
const mark = 'test| '

/** Prints a text, which may have several lines. */
export function say(text: string): void {
  for (const line of text.split('\n')) console.log(mark + line)
}

/**
 * Keeps the sums in `file` as JSON for the runner, with what failed, and the title of the test that is running: should the
 * editor hang or die, they tell where.
 */
export function keepSums(runner: Mocha.Runner, file: string): void {
  const told: ReturnType<typeof failureOf>[] = []
  const keep = (state: { running?: string; finished?: true }): void => {
    const { passes, failures, pending } = runner.stats ?? {}
    writeFileSync(file, JSON.stringify({ passed: passes, failed: failures, skipped: pending, told, ...state }))
  }
  runner.on('test', test => keep({ running: test.fullTitle() }))
  runner.on('fail', (test, error: Error) => told.push(failureOf(test, error)))
  runner.once('end', () => keep({ finished: true }))
}

/** Gives failures the lines of the source in place of the bundle's. */
export function mapStacks(runner: Mocha.Runner): void {
  runner.on('fail', (_test, error: Error) => {
    if (error.stack) error.stack = mapStack(error.stack)
  })
}

/** Makes mocha's reporters print through `say`. */
export function redirectReporters(): void {
  // The one door through which every reporter of mocha prints; the typings leave it out.
  const base = Mocha.reporters.Base as unknown as { consoleLog: (...words: unknown[]) => void }
  base.consoleLog = (...words) => say(format(...words))
}

// The extension host prints stacks in its own way, so Node's own translation to source lines does not reach them. All our
// code is in one bundle, this file included; mocha has shortened its path by the time a failure is told.
function mapStack(stack: string): string {
  const map = findSourceMap(__filename)
  return stack.replace(/\(?[^()\s]*suite\.js:(\d+):(\d+)\)?/g, (whole, line: string, column: string) => {
    const entry = map?.findEntry(Number(line) - 1, Number(column) - 1)
    if (!entry || !('originalSource' in entry)) return whole
    return `(${entry.originalSource.replace(/^.*\/(?=(?:test|src)\/)/, '')}:${entry.originalLine + 1}:${entry.originalColumn + 1})`
  })
}
