import { parseArgs } from 'node:util'
import { loggerOf, logFactsOf, logGeometryOf } from '../core/derived/loggerOf'
import { logPathsOf, withLogs } from '../core/derived/logOf'
import type { Finding } from '../core/finding'
import { plainNumber } from '../core/export/plainNumber'
import { analyseLog, planLog, type LogReport, type LogRequest } from '../core/logs/analyseLog'
import { told } from '../core/logs/problem'
import { describeDialect } from '../core/logs/reading/dialect'
import { logCsv } from '../core/logs/report/logCsv'
import { logText } from '../core/logs/report/logText'
import type { Window } from '../core/logs/series/rows'
import { wordsAt } from '../core/notebook/machine'
import type { Notebook } from '../core/notebook/notebook'
import { checkNotebook } from '../core/rules/checkNotebook'
import { logRules } from '../core/rules/index'
import { oneOf } from './check'
import { headOf } from '../core/logs/reading/headOf'
import { atHand } from './logsBeside'
import { UsageError, type Outcome, type World } from './outcome'
import { readWhole } from './readWhole'
import type { RowsThread } from './rowsThread'
import { toSnakeCase } from './toSnakeCase'
import { forTerminal } from './forTerminal'

/** `detent log`. */
export async function log(args: readonly string[], world: World): Promise<Outcome> {
  const { values, positionals } = parseArgs({
    args: [...args], allowPositionals: true,
    options: { notebook: { type: 'string' }, from: { type: 'string' }, to: { type: 'string' }, lap: { type: 'string' }, format: { type: 'string', default: 'text' } },
  })
  const format = oneOf(values.format!, ['text', 'json', 'csv'] as const, '--format')
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('name one log')
  if (!world.stream) throw new UsageError('no log can be read here')
  const { notebook, report } = await readBoth(path, { notebookFile: values.notebook, window: windowFrom(values) }, world)
  if (!report.statistics) throw new UsageError([`${path}: ${told(report.problem!)}`, ...doubts(report)].join('\n'))
  const machine = notebook && wordsAt(notebook, ['machine', 'name'])
  const isWhole = values.from === undefined && values.to === undefined && values.lap === undefined
  const findings = notebook && isWhole ? findingsOn(path, report, { notebook, file: values.notebook! }, world) : []
  if (format === 'text') return { out: forTerminal(logText(report, [path, machine].filter(Boolean).join(' · ')) + asText(findings)), code: 0 }
  const plain = plainReport(report, { file: path, machine, findings })
  return { out: format === 'json' ? `${JSON.stringify(plain, null, 2)}\n` : logCsv(plain), code: 0 }
}

/** The notebook, where one is named, and what the log says by it. The thread for its rows, where there is one, starts meanwhile. */
async function readBoth(path: string, { notebookFile, window }: { notebookFile: string | undefined; window: Window }, world: World): Promise<{ notebook: Notebook | undefined; report: LogReport }> {
  const thread = path === '-' ? undefined : world.rows
  try {
    const notebook = notebookFile === undefined ? undefined : readWhole(notebookFile, world)
    return { notebook, report: await reportOn(path, { ...(notebook ? machineOf(notebook) : {}), window }, { stream: world.stream!, thread }) }
  } finally {
    void thread?.stop()
  }
}

/** A large file is read on a thread of its own, with the same outcome. */
async function reportOn(path: string, request: LogRequest, { stream, thread }: { stream: NonNullable<World['stream']>; thread: RowsThread | undefined }): Promise<LogReport> {
  const plan = thread && planLog(await headOf(stream(path)), false, request)
  if (thread && plan && 'sink' in plan) return plan.end(await thread.read(path, plan.task, plan.sink))
  const analysis = analyseLog(request)
  for await (const chunk of stream(path)) if (!analysis.feed(chunk)) break
  return analysis.end()
}

/** What the rules say of the entries that name this log. */
function findingsOn(path: string, report: LogReport, { notebook, file }: { notebook: Notebook; file: string }, world: World): Finding[] {
  const mine = logPathsOf(notebook).filter((log) => {
    const beside = world.logBeside?.(file, log)
    return beside && 'path' in beside && world.isSame?.(path, beside.path)
  })
  if (mine.length === 0) return []
  const codes = new Set(logRules.map(({ code }) => code))
  const known = withLogs(notebook, new Map(mine.map((log) => [log, atHand(report, log)])))
  return checkNotebook(known).filter(({ code }) => codes.has(code))
}

function asText(findings: readonly Finding[]): string {
  const lines = findings.map(({ severity, message, code, place }) => `  ${severity}: ${[place?.entry, message].filter(Boolean).join(': ')} [${code}]`)
  return lines.length === 0 ? '' : `\n${['What the notebook makes of it:', ...lines].join('\n')}\n`
}

function machineOf(notebook: Notebook): LogRequest {
  const [mapping, geometry] = [loggerOf(notebook), logGeometryOf(notebook)]
  return { facts: logFactsOf(notebook), ...(mapping ? { mapping } : {}), ...(geometry ? { geometry } : {}) }
}

function windowFrom({ from, to, lap }: { from?: string | undefined; to?: string | undefined; lap?: string | undefined }): Window {
  if (lap !== undefined && (from !== undefined || to !== undefined)) throw new UsageError('--lap and --from or --to exclude one another')
  const [fromS, toS, lapNumber] = [numberFrom(from, '--from'), numberFrom(to, '--to'), numberFrom(lap, '--lap')]
  if (fromS !== undefined && toS !== undefined && fromS >= toS) throw new UsageError('--from must come before --to')
  return { ...(fromS === undefined ? {} : { fromS }), ...(toS === undefined ? {} : { toS }), ...(lapNumber === undefined ? {} : { lap: lapNumber }) }
}

function numberFrom(text: string | undefined, option: string): number | undefined {
  if (text === undefined) return undefined
  const value = Number(text)
  if (text.trim() === '' || !Number.isFinite(value)) throw new UsageError(`${option} takes a number, not ‘${text}’`)
  return value
}

function doubts({ proposed }: LogReport): string[] {
  return proposed ? proposed.unsure.map((doubt) => `  not sure: ${doubt}`) : []
}

/** As plain data for scripts: names carry their units, numbers have twelve digits. */
function plainReport({ dialect, mapping, proposed, statistics, notes }: LogReport, { file, machine, findings }: { file: string; machine: string | undefined; findings: readonly Finding[] }): unknown {
  const plain = toSnakeCase({
    version: 1, file, ...(machine === undefined ? {} : { machine }), ...(dialect ? { written: describeDialect(dialect) } : {}),
    mapping, mappingIs: proposed ? 'proposed' : 'given', ...statistics, notes,
    ...(findings.length > 0 ? { findings: findings.map(({ code, severity, message, place }) => ({ code, severity, message, entry: place?.entry })) } : {}),
  })
  return JSON.parse(JSON.stringify(plain, (_, value: unknown) => (typeof value === 'number' ? plainNumber(value) : value)))
}
