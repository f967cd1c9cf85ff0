import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { hoverAt } from '../../src/language/hover'
import { yamlDocument, yamlServer } from '../house/yamlServer'
import { bundled, builtCli } from './builtCli'
import { TypedInto, typedInto, type Typing } from './keystrokes'
import { median, runOnce, type Measured } from './measure'
import { benchFolder } from './peers/install.mjs'
import { longSeason, seasonNotebook } from './seasonNotebook'
import type { Benchmark, Target } from './table'

export interface NotebookOptions {
  runs: number
  /** Also ten thousand entries. */
  big: boolean
}

const { version: peer } = JSON.parse(readFileSync('node_modules/yaml-language-server/package.json', 'utf8')) as { version: string }
const { version: yaml } = JSON.parse(readFileSync('node_modules/yaml/package.json', 'utf8')) as { version: string }

/** Where a person types: at the end of the season, as is usual, and early in it, where the rest comes from. */
const places = (entries: number): Record<string, Typing> => ({
  'a position of the last entry': { entry: entries, where: /(front_fork_rebound: \{left: )(\d+)/, typed: (time) => String(1 + (time % 19)) },
  'a position early in the season': { entry: 5, where: /(front_fork_rebound: \{left: )(\d+)/, typed: (time) => String(1 + (time % 19)) },
  'a note early in the season': { entry: 5, where: /(felt: steadier)()/, typed: () => 'x' },
  'a length early in the season': { entry: 5, where: /(extended: )(\d+)/, typed: (time) => String(150 + (time % 5)) },
})

async function validated(text: string, typing: Typing, runs: number): Promise<number> {
  const server = yamlServer()
  await server.doValidation(yamlDocument(text), false)
  const times: number[] = []
  for (let run = 0; run < runs; run++) {
    text = typedInto(text, typing, run)
    const document = yamlDocument(text)
    const start = performance.now()
    await server.doValidation(document, false)
    times.push(performance.now() - start)
  }
  return median(times)
}

/** Keystrokes in notebooks of several lengths, beside what the common YAML extension takes for the same text. */
async function keystrokes({ runs, big }: NotebookOptions, measured: Measured[], targets: Target[]): Promise<void> {
  for (const entries of [100, 1000]) {
    const typedIn = new TypedInto(seasonNotebook(entries))
    const typings = places(entries)
    let last = NaN
    // The first keystrokes are the compiler's.
    typedIn.type(typings['a position of the last entry']!, 5)
    for (const [what, typing] of Object.entries(typings)) {
      const { findings, grid, bytes, cells } = typedIn.type(typing, Math.max(7, runs))
      measured.push({ what: `${entries} entries, ${what}: to the findings`, ms: findings })
      measured.push({ what: `${entries} entries, ${what}: on to the grid’s changes, ${cells} cells, ${bytes} bytes`, ms: grid })
      last = typing.entry === entries ? findings : last
    }
    const ms = await validated(typedIn.text, typings['a position of the last entry']!, runs)
    measured.push({ what: `${entries} entries: yaml-language-server, doValidation`, version: peer, ms })
    targets.push({ what: `times faster than doValidation, keystroke to findings, ${entries} entries`, ratio: ms / last, ...(entries === 1000 ? { atLeast: 100 } : {}) })
  }
  if (big) growth(runs, measured, targets)
}

/** Of entries with fewer positions: ten thousand of the others are longer than a notebook may be, and would be refused. */
function growth(runs: number, measured: Measured[], targets: Target[]): void {
  const last = [100, 10_000].map((entries) => {
    const typedIn = new TypedInto(longSeason(entries))
    const typings = places(entries)
    typedIn.type(typings['a position of the last entry']!, 20)
    return Object.entries(typings).map(([what, typing]) => {
      const { findings } = typedIn.type(typing, Math.max(7, runs))
      measured.push({ what: `${entries} entries of two positions, ${what}: to the findings`, ms: findings })
      return findings
    })[0]!
  })
  targets.push({ what: 'keystroke to findings, 10,000 entries over 100', ratio: last[1]! / last[0]!, atMost: 1.05 })
}

function hover({ runs }: NotebookOptions, measured: Measured[], targets: Target[]): void {
  for (const entries of [100, 1000]) {
    const notebook = readNotebook(seasonNotebook(entries))
    const at = notebook.text.lastIndexOf('front_fork_rebound')
    const times = Array.from({ length: runs + 55 }, () => {
      const start = performance.now()
      hoverAt(notebook, at)
      return performance.now() - start
    }).slice(50)
    measured.push({ what: `hover, ${entries} entries, warm`, ms: median(times) })
    if (entries === 1000) targets.push({ what: 'hover, ms, warm', ratio: median(times), atMost: 1 })
  }
}

/** Whole processes, from their start on: what a person waits for at a prompt, or a pipeline in a check. */
async function processes({ runs }: NotebookOptions, measured: Measured[], targets: Target[]): Promise<void> {
  const [cli, parse, validate] = [builtCli(), await bundled('test/bench/peers/parseOnly.ts', 'parseOnly.cjs'), await bundled('test/bench/peers/validate.ts', 'validate.cjs', ['yaml-language-server', 'vscode-languageserver-textdocument'])]
  const folder = join(benchFolder, 'workspace')
  mkdirSync(folder, { recursive: true })
  const file = (name: string, entries: number, verdict = 'verdict: keep') => {
    const path = join(folder, '..', name)
    writeFileSync(path, seasonNotebook(entries).replace('verdict: keep', verdict))
    return path
  }
  const [ten, thousand] = [file('ten.setup.yaml', 10), file('thousand.setup.yaml', 1000)]
  const workspace = Array.from({ length: 100 }, (_, index) => join(folder, `machine-${index}.setup.yaml`))
  for (const path of workspace) writeFileSync(path, seasonNotebook(100))
  const time = async (what: string, args: string[], version?: string, times = runs) => {
    const all = []
    for (let run = 0; run < times; run++) all.push(await runOnce(process.execPath, args))
    const ms = median(all.map((each) => each.ms))
    const peaks = all.flatMap(({ peakMiB }) => peakMiB ?? [])
    measured.push({ what, ms, ...(version ? { version } : {}), ...(peaks.length > 0 ? { peakMiB: Math.max(...peaks) } : {}) })
    return ms
  }
  const node = await time('Node start', ['-e', '0'], process.versions.node, runs + 4)
  const help = await time('detent --help', [cli, '--help'], undefined, runs + 4)
  const small = await time('detent check, 10 entries', [cli, 'check', ten, '--fail-on', 'never'], undefined, runs + 4)
  const floor = await time('yaml, parseDocument alone, 1000 entries', [parse, thousand], yaml)
  const large = await time('detent check, 1000 entries', [cli, 'check', thousand, '--fail-on', 'never'])
  const read = await bundled('test/bench/readOnly.ts', 'readOnly.cjs')
  const plain = await time('our parsing alone, 1000 entries', [read, thousand])
  const anchored = await time('our parsing alone, 1000 entries, left to yaml for an anchor', [read, file('anchored.setup.yaml', 1000, 'verdict: &kept keep')])
  const many = await time('detent check, 100 notebooks of 100 entries', [cli, 'check', folder, '--fail-on', 'never'], undefined, 1)
  const peers = await time('yaml-language-server, doValidation over the same 100', [validate, ...workspace], peer, 1)
  targets.push(
    { what: 'detent --help over Node start', ratio: help / node, atMost: 1.5 },
    { what: 'detent check of 10 entries over Node start', ratio: small / node, atMost: 1.4 },
    { what: 'detent check of 1000 entries over parseDocument alone', ratio: large / floor, atMost: 0.3 },
    { what: 'our parsing of 1000 entries over parseDocument alone', ratio: plain / floor, atMost: 0.4 },
    { what: 'the same with an anchor, which is left to the library', ratio: anchored / floor, atMost: 1.3 },
    { what: 'detent check of 100 notebooks over doValidation', ratio: many / peers, atMost: 0.5 },
  )
}

/** Reading and checking notebooks: keystroke to findings, hover, whole processes. */
export async function notebook(options: NotebookOptions): Promise<Benchmark> {
  const measured: Measured[] = []
  const targets: Target[] = []
  await processes(options, measured, targets)
  hover(options, measured, targets)
  await keystrokes(options, measured, targets)
  return { name: 'notebook', title: 'Notebooks: twenty positions and eight lengths an entry', measured, targets }
}
