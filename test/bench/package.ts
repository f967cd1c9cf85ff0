import { spawnSync } from 'node:child_process'
import { mkdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { packExtension } from '../workbench/packExtension.mjs'
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

/** Starts the embedded editor and reads what its own table says of us, in whole ms. */
function activationInEditor(): number {
  const { stdout, stderr } = spawnSync(process.execPath, ['test/workbench/suite.mjs', '--grep', 'the activation'], { encoding: 'utf8' })
  const found = /activation: load (\d+) ms, call (\d+) ms/.exec(stdout)
  if (!found) throw new Error(`the editor did not tell its startup performance\n${stdout.slice(-500)}${stderr.slice(-500)}`)
  return Number(found[1]) + Number(found[2])
}

/** What is shipped: its size, and how long the extension takes to load. */
export async function packaged({ runs }: { runs: number }): Promise<Benchmark> {
  mkdirSync(benchFolder, { recursive: true })
  const vsix = join(benchFolder, 'detent.vsix')
  const built = spawnSync(process.execPath, ['build.mjs'], { encoding: 'utf8' })
  if (built.status !== 0) throw new Error(built.stderr)
  packExtension(vsix)
  const times: number[] = []
  for (let run = 0; run < runs + 4; run++) times.push(Number((await runOnce(process.execPath, ['-e', load, join(process.cwd(), 'dist/extension.js')])).out))
  const whole: number[] = []
  for (let run = 0; run < runs + 4; run++) whole.push(Number((await runOnce(process.execPath, ['-e', load, join(process.cwd(), 'dist/whole.js')])).out))
  const activations = Array.from({ length: Math.min(runs, 3) }, activationInEditor)
  const measured: Measured[] = [
    { what: 'extension.js, loaded by Node', ms: median(times) },
    { what: 'whole.js, loaded by Node when the first notebook is seen', ms: median(whole) },
    { what: 'activation as the editor tells it (Startup Performance: load and call)', ms: median(activations) },
  ]
  return {
    name: 'package', title: 'The package', measured,
    targets: [
      { what: 'size of the .vsix, kB', ratio: statSync(vsix).size / 1000, atMost: 600 },
      { what: 'activation in the editor, ms', ratio: median(activations), atMost: 30 },
    ],
  }
}
