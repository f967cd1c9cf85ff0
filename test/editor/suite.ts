// The part of the suite that runs in the editor's extension host: hands every test file to mocha, reports each test on the
// console as it ends, and leaves the sums in a file for the runner. The runner (test/workbench/suite.mjs) finds all
// `test/editor/**/*.test.ts` by pattern, bundles them with this file and calls `run`.
//
// To add a test, add a file there; it may use `vscode`, Playwright's page and frames, and what stands in window.ts (keys,
// pictures, themes), workspace.ts (files, documents, problems), waiting.ts and accessibility.ts:
//
//   it('writes what was typed into the cell', async () => {
//     const notebook = sample('tern-650.setup.yaml')           // in this test's own copy of the samples
//     await openGrid(notebook)
//     await (await gridFrame()).getByRole('gridcell', { name: '6 in' }).first().click()
//     await type('5 in')
//     await press('Enter')
//     await until('the text has it', async () => (await textOf(notebook)).includes('5 in'))
//   })
//
// Before each test no editor is open and the window has its usual size and theme. A failed test leaves a picture of the
// window in .cache/editor-suite/pictures, and the editor's own logs are in .cache/editor-suite/logs (-web of a browser’s host, -only of a part).
import Mocha from 'mocha'
import { forgetPageWorker } from './pageWorker'
import { keepSums, mapStacks, redirectReporters, say } from './report'
import { settings } from './settings'
import { connect, disconnect, restore, screenshot } from './window'
import { closeEverything, copySamples, removeCopy } from './workspace'

/** One test file: its path, and a function that executes it so that it declares its tests. */
export interface TestFile { path: string; load(): void }

/**
 * Runs the tests of `files` one after the other.
 * @returns when all are done; the promise is rejected when any failed, which is how the editor learns its exit code
 */
export async function runSuite(files: TestFile[]): Promise<void> {
  const { results, grep } = settings()
  const mocha = new Mocha({ ui: 'bdd', timeout: 60_000, slow: 5000, reporter: 'spec', color: false, grep: grep || undefined, forbidOnly: true })
  mocha.rootHooks({ beforeAll: connect, beforeEach: prepare, afterEach: tidy, afterAll: disconnect })
  for (const { path, load } of files) {
    mocha.suite.emit('pre-require', globalThis, path, mocha)
    load()
    mocha.suite.emit('require', {}, path, mocha)
    mocha.suite.emit('post-require', globalThis, path, mocha)
  }
  redirectReporters()
  const failed = await new Promise<number>(resolve => {
    const runner = mocha.run(resolve)
    mapStacks(runner)
    keepSums(runner, results)
  })
  if (failed > 0) throw new Error(`${failed} failed`)
}

// Every test starts with no editor open and a copy of the samples of its own.
async function prepare(this: Mocha.Context): Promise<void> {
  await forgetPageWorker()
  copySamples(this.currentTest?.fullTitle() ?? 'test')
}

// What a person would have seen when a test failed is worth more than its stack.
async function tidy(this: Mocha.Context): Promise<void> {
  const test = this.currentTest
  if (test?.state === 'failed') {
    say(`      picture: ${await screenshot(`failed ${test.fullTitle()}`)}`)
  }
  await closeEverything()
  await restore()
  removeCopy()
}
