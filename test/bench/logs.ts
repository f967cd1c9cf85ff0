import { spawnSync } from 'node:child_process'
import { closeSync, existsSync, mkdirSync, openSync, readFileSync, renameSync, writeFileSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { builtCli } from './builtCli'
import { median, runOnce, type Measured, type Run } from './measure'
import { benchFolder, ensurePeers } from './peers/install.mjs'
import type { Benchmark } from './table'

export interface LogsOptions {
  rows: number
  runs: number
}

const notebook = `format: 1
machine:
  front: {travel: 120}
  rear: {travel: 130}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
  logger: {time: {column: Time}, front: {column: Fork}, rear: {column: Shock}}
`

/** A made log of time, fork and shock at 1 kHz, the same every time, written once. */
function madeLog(rows: number, separator: string, decimal: string): string {
  const file = join(benchFolder, `log-${rows}${separator === ',' ? '' : '-other'}.csv`)
  if (existsSync(file)) return file
  const partial = `${file}.${process.pid}`
  const handle = openSync(partial, 'w')
  let [state, a, b, text] = [12345, 0, 0, ['Time', 'Fork', 'Shock'].join(separator) + '\n']
  const next = () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32 - 0.5
  const field = (value: number, digits: number) => decimal === '.' ? value.toFixed(digits) : value.toFixed(digits).replace('.', decimal)
  for (let row = 0; row < rows; row++) {
    const t = row / 1000
    a += next() * 1.2 - a * 0.01
    b += next() * 1.1 - b * 0.01
    const fork = Math.min(119, Math.max(0.3, 60 + 25 * Math.sin(t * 2) + 18 * Math.sin(t * 11.3) + a * 3))
    const shock = Math.min(129, Math.max(0.3, 55 + 20 * Math.sin(t * 2 + 1) + 15 * Math.sin(t * 9.1) + b * 3))
    text += field(t, 3) + separator + field(fork, 2) + separator + field(shock, 2) + '\n'
    if (text.length > 1 << 20) {
      writeSync(handle, text)
      text = ''
    }
  }
  writeSync(handle, text)
  closeSync(handle)
  renameSync(partial, file)
  return file
}

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

async function measure(program: Program, runs: number): Promise<Measured> {
  const { what, version, command, args, absent } = program
  const named = { what, ...(version ? { version } : {}) }
  if (command === undefined) return { ...named, absent: absent ?? 'not there' }
  try {
    const all: Run[] = []
    for (let run = 0; run < (program.runs ?? runs); run++) all.push(await runOnce(command, args))
    const peaks = all.flatMap(({ peakMiB }) => peakMiB ?? [])
    return { ...named, ms: median(all.map(({ ms }) => ms)), ...(peaks.length > 0 ? { peakMiB: Math.max(...peaks) } : {}), out: all[0]!.out }
  } catch (error) {
    return { ...named, absent: (error as Error).message.slice(0, 120) }
  }
}

/** Statistics of a plain comma log: ours, all of them; the floor and the peers percentiles, velocity histogram and bottoming. */
export async function logs(options: LogsOptions): Promise<Benchmark> {
  mkdirSync(benchFolder, { recursive: true })
  const file = madeLog(options.rows, ',', '.')
  const built = await ours()
  const measured: Measured[] = []
  for (const program of programs(file, options, built)) measured.push(await measure(program, options.runs))
  const other = madeLog(options.rows, ';', ',')
  measured.push({ ...await measure({ what: 'detent log, semicolons and decimal commas', command: process.execPath, args: [built.cli, 'log', other, '--notebook', built.notebookFile, '--format', 'json'] }, 1) })
  agree(measured)
  const find = (start: string) => measured.find(({ what }) => what.startsWith(start))
  const us = find('detent log')
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
      { what: 'peak memory, MiB', ...(us?.peakMiB === undefined ? {} : { ratio: us.peakMiB }), atMost: 120 },
      { what: 'other dialect: times udsv', ...ratio(measured.at(-1)?.ms, find('udsv')?.ms), atMost: 1 },
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
