// Tabulates travel used against rebound clicks over a season, from a notebook and the logs beside it, with Detent's core
// as a library:
//
//   npx tsx samples/scripts/reboundAndTravel.ts samples/tern-650.setup.yaml
import { createReadStream, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { analyseLog, exportNotebook, loggerOf, logFactsOf, readNotebook, type ExportedEntry, type LogStatistics, type Notebook } from '../../src/core/index'

const ends = [['front', 'fork_rebound'], ['rear', 'shock_rebound']] as const

async function statisticsOf(notebook: Notebook, path: string): Promise<LogStatistics> {
  const mapping = loggerOf(notebook)
  const analysis = analyseLog({ ...(mapping ? { mapping } : {}), facts: logFactsOf(notebook) })
  for await (const chunk of createReadStream(path)) analysis.feed(chunk as Buffer)
  const { statistics, problem } = analysis.end()
  if (!statistics) throw new Error(`${path}: ${problem?.message ?? 'no statistics'}`)
  return statistics
}

/** Clicks out of one leg or, where they differ, of both. */
function clicks({ settings }: ExportedEntry, adjuster: string): string {
  const position = settings[adjuster]
  if (!position) return '-'
  const legs = 'value' in position ? [position] : Object.values(position)
  return [...new Set(legs.map((leg) => String((leg as { value: number }).value)))].join('/')
}

const millimetres = (value: number | undefined) => (value === undefined ? '-' : value.toFixed(1))

async function main(path: string): Promise<void> {
  const notebook = readNotebook(readFileSync(path, 'utf8'))
  const rows: string[][] = []
  for (const entry of exportNotebook(notebook).entries) {
    const log = entry.ride?.log === undefined ? undefined : await statisticsOf(notebook, join(dirname(path), entry.ride.log))
    for (const [end, adjuster] of ends) {
      const [tie, position] = [entry.ride?.[`${end}_travel_used_mm`], log?.[end]?.position]
      if (tie === undefined && !position) continue
      rows.push([end, clicks(entry, adjuster), entry.id, entry.date ?? '-', millimetres(tie), millimetres(position?.deepestMm), millimetres(position?.medianMm)])
    }
  }
  const inOrder = (row: string[]) => (row[1] === '-' ? -1 : Number.parseFloat(row[1]!))
  rows.sort((a, b) => (a[0]! < b[0]! ? -1 : a[0]! > b[0]! ? 1 : inOrder(a) - inOrder(b)))
  const table = [['end', 'clicks out', 'entry', 'date', 'tie mm', 'log mm', 'median mm'], ...rows]
  const widths = table[0]!.map((_, at) => Math.max(...table.map((row) => row[at]!.length)))
  for (const row of table) console.log(row.map((cell, at) => cell.padEnd(widths[at]!)).join('  ').trimEnd())
}

const [path] = process.argv.slice(2)
if (path === undefined) throw new Error('name a notebook')
void main(path)
