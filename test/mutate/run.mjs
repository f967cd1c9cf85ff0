// `npm run mutate`: changes the code a little, again and again, and sees which changes no test notices.
//   npm run mutate -- compute     src/core/compute with its own tests
//   npm run mutate -- rules       src/core/rules with their fixtures
//   npm run mutate -- counting    notations and adjusters: what a position means, which way it is turned
//   npm run mutate -- compare     comparisons and turn lists
//   npm run mutate -- merge       the three-way merge
//   npm run mutate -- compute --only src/core/compute/sag/friction.ts,src/core/compute/sag/sag.ts
// Works on a copy, and leaves its report in .cache/mutation. The tools are fetched on first use, apart from ours.
// What is neither noticed nor explained in explained.json is told at the end, and ends it with exit code 1.
import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { cache, npm, root } from '../workbench/install.mjs'
import { holdAgainst, survivorsOf } from './survivors.ts'

/** What is changed, and which tests are to notice. */
const parts = {
  compute: { mutate: ['src/core/compute/**/*.ts'], spec: ['test/core/compute/*/*.test.ts', 'test/house/computedTold.test.ts'] },
  rules: { mutate: ['src/core/rules/**/*.ts', '!src/core/rules/index.ts'], spec: ['test/core/rules/**/*.test.ts', 'test/house/ruleFixtures.test.ts'] },
  counting: { mutate: ['src/core/{notation,adjusters}/**/*.ts'], spec: ['test/core/{notation,adjusters}/**/*.test.ts'] },
  compare: { mutate: ['src/core/compare/**/*.ts'], spec: ['test/core/compare/**/*.test.ts'] },
  merge: { mutate: ['src/core/merge/**/*.ts'], spec: ['test/core/merge/**/*.test.ts'] },
}

const { values, positionals } = parseArgs({ allowPositionals: true, options: { only: { type: 'string' }, concurrency: { type: 'string', default: '2' } } })
const folder = join(cache, 'mutation')
const tools = join(folder, 'tools')
const names = positionals.length > 0 ? positionals : Object.keys(parts)
const unknown = names.find(name => !(name in parts))
if (unknown) throw new Error(`There is no part ‘${unknown}’; there are ${Object.keys(parts).join(', ')}.`)
install()
for (const name of names) {
  const config = join(folder, `${name}.json`)
  const { mutate, spec } = parts[name]
  const common = JSON.parse(readFileSync(join(root, 'test/mutate/stryker.json'), 'utf8'))
  writeFileSync(config, JSON.stringify({
    ...common, mutate: values.only?.split(',') ?? mutate, concurrency: Number(values.concurrency),
    mochaOptions: { 'no-config': true, spec }, jsonReporter: { fileName: join(folder, `${name}.report.json`) },
  }))
  const { status } = spawnSync(process.execPath, [join(tools, 'node_modules/@stryker-mutator/core/bin/stryker.js'), 'run', config], { cwd: root, stdio: 'inherit' })
  if (status !== 0 || !tell(JSON.parse(readFileSync(join(folder, `${name}.report.json`), 'utf8')))) process.exitCode = 1
}

/** Says what is left; tells whether that is nothing. */
function tell(report) {
  const explained = JSON.parse(readFileSync(join(root, 'test/mutate/explained.json'), 'utf8'))
  const survivors = survivorsOf(report)
  const { unexplained, noticed } = holdAgainst(survivors, explained, Object.keys(report.files))
  for (const { file, line, original, replacement } of unexplained) console.log(`${file}:${line}: ‘${original}’ may as well be ‘${replacement}’`)
  for (const { file, original, replacement } of noticed) console.log(`${file}: ‘${original}’ as ‘${replacement}’ is explained in explained.json, and noticed by now`)
  console.log(`${survivors.length} changes were not noticed, ${survivors.length - unexplained.length} of them explained, ${unexplained.length} not`)
  return unexplained.length + noticed.length === 0
}

function install() {
  if (existsSync(join(tools, 'node_modules'))) return
  mkdirSync(tools, { recursive: true })
  for (const file of ['package.json', 'package-lock.json']) cpSync(join(root, 'test/mutate', file), join(tools, file))
  npm(['ci', '--ignore-scripts'], tools)
}
