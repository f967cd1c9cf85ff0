import assert from 'node:assert/strict'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildSync } from 'esbuild'
import { checkFile } from '../../src/cli/checkedFile'
import { checkOnThreads } from '../../src/cli/checkThreads'
import { files } from '../../src/cli/files'
import { UsageError } from '../../src/cli/outcome'

const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const script = join(folder, 'cli.cjs')
const notebookOf = (at: number) => `\ufeffformat: 1\nadjusters: {fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}}\nentries:\n${
  Array.from({ length: 3 + (at % 4) }, (_, entry) => `  - id: run-${entry}\n    settings: {fork_rebound: {left: ${at + entry}, right: ${at + 2 * entry}}}\n`).join('')}`
const texts = Array.from({ length: 30 }, (_, at) => notebookOf(at))
const paths = texts.map((_, at) => join(folder, `machine-${at}.setup.yaml`))

describe('checkOnThreads', () => {
  before(() => {
    buildSync({ entryPoints: ['src/cli/main.ts'], outfile: script, bundle: true, platform: 'node', format: 'cjs', target: 'es2022', logLevel: 'error' })
    texts.forEach((text, at) => writeFileSync(paths[at]!, text))
  })
  after(() => rmSync(folder, { recursive: true }))

  it('says of each file what one thread says, in the order they were named', async () => {
    const checked = await checkOnThreads(script, paths, true, files)
    assert.deepEqual(checked, texts.map((text, at) => checkFile(paths[at]!, text)))
    assert.ok(checked.every(({ findings }) => findings.length > 0))
  })

  it('says which file cannot be read: the first of them', async () => {
    const some = [...paths.slice(0, 9), join(folder, 'none.setup.yaml'), ...paths.slice(9), join(folder, 'nor-this.setup.yaml')]
    await assert.rejects(checkOnThreads(script, some, true, files), (error) => error instanceof UsageError && /none\.setup\.yaml: there is no such file/.test(error.message))
  })
})
