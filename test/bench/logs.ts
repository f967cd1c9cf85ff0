import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { builtCli } from './builtCli'
import { madeLog, madeParquet } from './madeLog'
import { median, runOnce, type Measured, type Run } from './measure'
import { benchFolder, ensurePeers } from './peers/install.mjs'
import type { Benchmark } from './table'

export interface LogsOptions {
  rows: number
  runs: number
  /** A hundred million rows as well, for the memory they take. */
  huge: boolean
}

const notebook = `format: 1
machine:
  front: {travel: 120}
  rear: {travel: 130}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
  logger: {time: {column: Time}, front: {column: Fork}, rear: {column: Shock}}
`

/** Our command line as it ships, and the notebook it reads. */
async function ours(): Promise<{ cli: string; notebookFile: string }> {
  const notebookFile = join(benchFolder, 'bench.setup.yaml')
  const cli = builtCli()
  writeFileSync(notebookFile, notebook)
  return { cli, notebookFile }
}

function floor(): string | undefined {
  const program = join(benchFolder, 'floor')
  const compiler = ['cc', 'gcc', 'clang'].find((name) => spawnSync(name, ['--version']).status === 0)
  return compiler && spawnSync(compiler, ['-O2', '-o', program, 'test/bench/floor/logs.c', '-lm']).status === 0 ? program : undefined
}

type Program = { what: string; version?: string; command?: string; args: readonly string[]; absent?: string; runs?: number }

function programs(file: string, options: LogsOptions, { cli, notebookFile }: { cli: string; notebookFile: string }): Program[] {
  const peers = ensurePeers()
  const node = process.execPath
  const peer = (name: string, packageName: string, runs?: number): Program => {
    const { version } = JSON.parse(readFileSync(join(peers, 'node_modules', packageName, 'package.json'), 'utf8')) as { version: string }
    return { what: name, version, command: node, args: [`test/bench/peers/${name}.mjs`, peers, file], ...(runs ? { runs } : {}) }
  }
  const python = (reader: string): Program => {
    const { status, stdout } = spawnSync('python3', ['-c', `import ${reader}, scipy; print(${reader}.__version__, '+ scipy', scipy.__version__)`], { encoding: 'utf8' })
    return status === 0 ? { what: reader, version: stdout.trim(), command: 'python3', args: ['test/bench/peers/scipy_savgol.py', reader, file] } : { what: `${reader} + scipy`, args: [], absent: 'not installed' }
  }
  const program = floor()
  return [
    { what: 'Node start', version: process.versions.node, command: node, args: ['-e', '0'] },
    program ? { what: 'C -O2, one pass (floor)', command: program, args: [file] } : { what: 'C (floor)', args: [], absent: 'no C compiler' },
    { what: 'detent log', command: node, args: [cli, 'log', file, '--notebook', notebookFile, '--format', 'json'] },
    python('pandas'), python('numpy'), peer('polars', 'nodejs-polars'), peer('duckdb', '@duckdb/node-api'), peer('udsv', 'udsv'), ...(options.rows > 3e6 ? [] : [peer('papaparse', 'papaparse', 1)]),
  ]
}

/** Each in turn, and then all again: what else the machine does meanwhile falls on all of them alike. */
async function measureAll(programs: readonly Program[], runs: number): Promise<Measured[]> {
  const all = programs.map(() => [] as Run[])
  const failed = new Map<number, string>()
  for (let round = 0; round < runs; round++) {
    for (const [at, { command, args, runs: most = runs }] of programs.entries()) {
      if (command === undefined || failed.has(at) || round >= most) continue
      try {
        all[at]!.push(await runOnce(command, args))
      } catch (error) {
        failed.set(at, (error as Error).message.slice(0, 120))
      }
    }
  }
  return programs.map(({ what, version, command, absent }, at) => {
    const named = { what, ...(version ? { version } : {}) }
    if (command === undefined || failed.has(at)) return { ...named, absent: failed.get(at) ?? absent ?? 'not there' }
    const peaks = all[at]!.flatMap(({ peakMiB }) => peakMiB ?? [])
    return { ...named, ms: median(all[at]!.map(({ ms }) => ms)), ...(peaks.length > 0 ? { peakMiB: Math.max(...peaks) } : {}), out: all[at]![0]!.out }
  })
}

/** Ours on other logs: another dialect, Parquet, and other sizes for the memory they take. */
function others({ rows, huge }: LogsOptions, { cli, notebookFile }: { cli: string; notebookFile: string }): Program[] {
  const ours = (what: string, file: string, runs?: number): Program => ({
    what: `detent log, ${what}`, command: process.execPath, args: [cli, 'log', file, '--notebook', notebookFile, '--format', 'json'], ...(runs ? { runs } : {}),
  })
  return [
    ours('semicolons and decimal commas', madeLog(rows, ';', ',')), ours('Parquet, 1,000,000 rows of 4 columns', madeParquet(1_000_000)),
    ...(rows === 1_000_000 ? [] : [ours('1,000,000 rows', madeLog(1_000_000))]), ...(huge ? [ours(hugeRows, madeLog(100_000_000), 1)] : []),
  ]
}

const hugeRows = '100,000,000 rows'

/** Statistics of a plain comma log: ours, all of them; the floor and the peers percentiles, velocity histogram and bottoming. */
export async function logs(options: LogsOptions): Promise<Benchmark> {
  mkdirSync(benchFolder, { recursive: true })
  const built = await ours()
  const measured = await measureAll([...programs(madeLog(options.rows), options, built), ...others(options, built)], options.runs)
  // It is two thousand megabytes, and not needed again.
  if (options.huge) rmSync(madeLog(100_000_000))
  agree(measured)
  const find = (start: string) => measured.find(({ what }) => what.startsWith(start))
  const us = find('detent log')
  const peak = (what: string) => measured.flatMap((each) => (each.what === what && each.peakMiB !== undefined ? [{ what: `peak memory of ${what}, MiB`, ratio: each.peakMiB, atMost: 120 }] : []))
  const over = (start: string) => ratio(find(start)?.ms, us?.ms)
  // The start of a process outweighs a small log: the ratios are held to at ten million rows, and shown below that.
  const isHeld = options.rows >= 1e7
  const against = (start: string, atLeast: number) => ({ what: `times faster than ${start}`, ...over(start), ...(isHeld ? { atLeast } : {}) })
  return {
    name: 'logs', title: `Statistics of a log of ${options.rows.toLocaleString('en')} rows, cold process, median of ${options.runs}`,
    measured: measured.map(({ out: _, ...others }) => others),
    targets: [
      against('pandas', 4), against('numpy', 4), against('polars', 4), against('duckdb', 4),
      { what: 'times the C floor', ...ratio(us?.ms, find('C')?.ms), ...(isHeld ? { atMost: 2.5 } : {}) },
      ...peak('detent log'), ...peak('detent log, 1,000,000 rows'), ...peak(`detent log, ${hugeRows}`),
      { what: 'other dialect: times udsv', ...ratio(find('detent log, semicolons')?.ms, find('udsv')?.ms), atMost: 1 },
    ],
  }
}

function ratio(a: number | undefined, b: number | undefined): { ratio?: number } {
  return a === undefined || b === undefined ? {} : { ratio: a / b }
}

interface Said {
  median: number
  high: number
  bottomed: number
}

/** All must have found the same, or the comparison means nothing. @throws Error naming who differs */
function agree(measured: readonly Measured[]): void {
  const us = JSON.parse(measured.find(({ what }) => what === 'detent log')?.out ?? '{}') as Partial<Record<'front' | 'rear', { position: { median_mm: number }; bottoming: { times: number }; velocity: { shares_pct: { high_compression: number } } }>>
  for (const { what, out } of measured) {
    if (!out?.startsWith('{') || what.startsWith('detent')) continue
    const said = JSON.parse(out) as Record<'front' | 'rear', Said>
    for (const end of ['front', 'rear'] as const) {
      const { position, bottoming, velocity } = us[end]!
      const same = Math.abs(said[end].median - position.median_mm) <= 0.011 && said[end].bottomed === bottoming.times && Math.abs(said[end].high - velocity.shares_pct.high_compression) <= 0.05
      if (!same) throw new Error(`${what} found ${JSON.stringify(said[end])} at the ${end}, we ${position.median_mm}, ${velocity.shares_pct.high_compression}, ${bottoming.times}`)
    }
  }
}
