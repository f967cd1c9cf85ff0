// Benchmarks side by side with peers and floors, in one run, with a table and as JSON.
//   npm run bench                    all of them at their usual sizes
//   npm run bench -- logs            one of them
//   npm run bench -- logs --big      at the size of its targets (ten million rows; ten thousand entries)
//   npm run bench -- logs --huge     a log of a hundred million rows (2 GB) as well, for the memory it takes
//   npm run bench -- --runs 5        medians of so many runs
// Ends with exit code 1 where a target is missed. The JSON lies in test/bench/results, which git ignores.
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { editor } from './editor'
import { grid } from './grid'
import { logs } from './logs'
import { notebook } from './notebook'
import { packaged } from './package'
import { benchmarkText, isMet, type Benchmark } from './table'

interface Options {
  big: boolean
  huge: boolean
  runs: number
}

/** Every benchmark by its name. Another is a line here, and a file that measures. */
const benchmarks: Record<string, (options: Options) => Promise<Benchmark>> = {
  logs: ({ big, huge, runs }) => logs({ rows: big ? 10_000_000 : 1_000_000, runs, huge }),
  notebook: ({ big, runs }) => notebook({ big, runs }),
  grid: ({ runs }) => grid({ runs }),
  editor: () => editor(),
  package: ({ runs }) => packaged({ runs }),
}

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { big: { type: 'boolean', default: false }, huge: { type: 'boolean', default: false }, runs: { type: 'string', default: '3' } } })
  const names = positionals.length > 0 ? positionals : Object.keys(benchmarks)
  const unknown = names.filter((name) => !Object.hasOwn(benchmarks, name))
  if (unknown.length > 0) throw new Error(`there is no benchmark ${unknown.join(', ')}; there are ${Object.keys(benchmarks).join(', ')}`)
  const results: Benchmark[] = []
  for (const name of names) {
    const result = await benchmarks[name]!({ big: values.big === true, huge: values.huge === true, runs: Math.max(1, Number(values.runs) || 3) })
    console.log(`\n${benchmarkText(result)}`)
    results.push(result)
  }
  mkdirSync('test/bench/results', { recursive: true })
  const file = join('test/bench/results', `${new Date().toISOString().replaceAll(':', '-')}.json`)
  writeFileSync(file, `${JSON.stringify({ node: process.versions.node, platform: `${process.platform} ${process.arch}`, results }, null, 2)}\n`)
  console.log(`\nAs JSON: ${file}`)
  if (results.some(({ targets }) => targets.some((target) => isMet(target) === false))) process.exitCode = 1
}

void main()
