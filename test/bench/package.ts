import { spawnSync } from 'node:child_process'
import { mkdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { median, runOnce, type Measured } from './measure'
import { benchFolder } from './peers/install.mjs'
import type { Benchmark } from './table'

/** Loads the extension as a host does, with a stand-in for the host's own module that answers anything. */
const load = `
const any = new Proxy(class {}, { get: (target, key) => key === 'prototype' ? target.prototype : key === Symbol.toPrimitive ? () => '' : key === Symbol.iterator ? function* () {} : any, apply: () => any, construct: () => any, getPrototypeOf: () => any })
const Module = require('node:module')
const usual = Module._load
Module._load = (name, ...rest) => name === 'vscode' ? any : usual(name, ...rest)
const started = performance.now()
require(process.argv[1])
console.log(performance.now() - started)
`

/** What is shipped: its size, and how long the extension takes to load. */
export async function packaged({ runs }: { runs: number }): Promise<Benchmark> {
  mkdirSync(benchFolder, { recursive: true })
  const vsix = join(benchFolder, 'detent.vsix')
  const built = spawnSync(process.execPath, ['build.mjs'], { encoding: 'utf8' })
  if (built.status !== 0) throw new Error(built.stderr)
  const packed = spawnSync('npx', ['vsce', 'package', '--no-dependencies', '--allow-missing-repository', '--no-rewrite-relative-links', '--out', vsix], { encoding: 'utf8' })
  if (packed.status !== 0) throw new Error(packed.stderr)
  const times: number[] = []
  for (let run = 0; run < runs + 4; run++) times.push(Number((await runOnce(process.execPath, ['-e', load, join(process.cwd(), 'dist/extension.js')])).out))
  const measured: Measured[] = [{ what: 'extension.js, loaded by Node (activation itself is told by the editor alone)', ms: median(times) }]
  return {
    name: 'package', title: 'The package', measured,
    targets: [
      { what: 'size of the .vsix, kB', ratio: statSync(vsix).size / 1000, atMost: 600 },
      { what: 'load of the extension, ms', ratio: median(times), atMost: 30 },
    ],
  }
}
