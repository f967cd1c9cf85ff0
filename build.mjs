// Builds everything that ships into dist/: the extension, the command line, the webviews, the words of other languages.
// `node build.mjs` builds once, `--watch` keeps building, `--generate` only writes the compiled schema check.
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { build, context } from 'esbuild'
import Ajv from 'ajv'
import standalone from 'ajv/dist/standalone/index.js'
import asc from 'assemblyscript/asc'
import { writeExtensionPage } from './test/release/extensionPage.mjs'
import { writeSupply } from './test/release/supply.mjs'

const watch = process.argv.includes('--watch')

/** The schema check is compiled ahead of time: it starts faster, and no host we run in has to allow `new Function`. */
function generateShapeCheck() {
  const schema = withoutWords(JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')))
  // What is wrong is said in our own words (`shapeWords.ts`), from the keyword and its parameters.
  const ajv = new Ajv.default({ allErrors: true, messages: false, strict: true, allowUnionTypes: true, code: { source: true } })
  const check = ajv.compile(schema)
  mkdirSync('src/core/notebook/generated', { recursive: true })
  writeFileSync('src/core/notebook/generated/shape.cjs', standalone.default(ajv, check))
}

/** What reads the rows of a log is compiled to WebAssembly, and carried in the code. */
async function compileRows() {
  let program
  const options = ['-O3', '--runtime', 'stub', '--noAssert', '--importMemory', '--outFile', 'plainRows.wasm']
  const { error, stderr } = await asc.main(['src/core/logs/reading/assembly/plainRows.ts', ...options], { writeFile: (_, contents) => { program = contents } })
  if (error) throw new Error(`${error.message}\n${stderr}`)
  writeFileSync('src/core/logs/reading/generated/plainRows.cjs', `module.exports = new Uint8Array([${program}])\n`)
}

/** A schema as far as it decides anything: what it says to people would be a third of the compiled check. */
function withoutWords(schema) {
  const isNamed = (keyword) => keyword === 'properties' || keyword === 'definitions'
  const strip = (node, within) => {
    if (Array.isArray(node)) return node.map((each) => strip(each))
    if (typeof node !== 'object' || node === null) return node
    const kept = Object.entries(node).filter(([key]) => isNamed(within) || !['title', 'description', 'examples'].includes(key))
    return Object.fromEntries(kept.map(([key, value]) => [key, key === 'enum' ? value : strip(value, isNamed(within) ? undefined : key)]))
  }
  return strip(schema)
}

/** What VS Code loads by itself when it is shown in that language: one bundle of what `src/words` keeps part by part. */
function bundleWords() {
  mkdirSync('dist/l10n', { recursive: true })
  for (const language of readdirSync('src/words')) {
    const parts = readdirSync(`src/words/${language}`).sort().map((part) => JSON.parse(readFileSync(`src/words/${language}/${part}`, 'utf8')))
    writeFileSync(`dist/l10n/bundle.l10n.${language}.json`, JSON.stringify(Object.assign({}, ...parts)))
  }
}

generateShapeCheck()
await compileRows()
if (process.argv.includes('--generate')) process.exit(0)
bundleWords()
cpSync('src/editor/walkthrough', 'dist/walkthrough', { recursive: true })
writeExtensionPage()

const common = {
  bundle: true,
  minify: !watch,
  sourcemap: watch ? 'linked' : false,
  target: 'es2022',
  logLevel: 'warning',
  legalComments: 'none',
}
const targets = [
  // One bundle for every host: a browser's has no Node, so nothing of it may be asked for where there is none. It loads one
  // file alone; elsewhere what starts the extension asks for the whole by its file.
  { ...common, entryPoints: { whole: 'src/editor/whole.ts' }, outdir: 'dist', platform: 'browser', format: 'cjs', external: ['vscode', 'node:*'], loader: { '.yaml': 'text' } },
  {
    ...common, entryPoints: { extension: 'src/editor/extension.ts' }, outdir: 'dist', platform: 'browser', format: 'cjs',
    external: ['vscode', './whole'], supported: { 'dynamic-import': false },
  },
  // What tells how it is called starts without what does the work, which is asked for by its file.
  {
    ...common, entryPoints: { cli: 'src/cli/main.ts' }, outdir: 'dist', platform: 'node', format: 'cjs', banner: { js: '#!/usr/bin/env node' },
    external: ['./program', './checkProgram', './threads'], supported: { 'dynamic-import': false },
  },
  {
    ...common, entryPoints: { checkProgram: 'src/cli/checkProgram.ts', logsBeside: 'src/cli/logsBeside.ts' }, outdir: 'dist', platform: 'node', format: 'cjs',
    external: ['./logsBeside', './parquet'], supported: { 'dynamic-import': false }, alias: { yaml: './src/cli/lateYaml.ts' },
  },
  { ...common, entryPoints: { yaml: 'yaml' }, outdir: 'dist', platform: 'node', format: 'cjs' },
  {
    ...common, entryPoints: { program: 'src/cli/program.ts', threads: 'src/cli/threads.ts', core: 'src/core/index.ts' }, outdir: 'dist', platform: 'node', format: 'cjs',
    external: ['./parquet'], supported: { 'dynamic-import': false },
  },
  // What reads Parquet is asked for where a log is one, by all hosts.
  { ...common, entryPoints: { parquet: 'src/cli/parquet.ts' }, outdir: 'dist', platform: 'neutral', format: 'cjs' },
  // The pages are modules, so that what they share is there once. The charts are loaded by them when first shown.
  {
    ...common, entryPoints: { grid: 'webview/grid/main.ts', turns: 'webview/turns/main.ts', compare: 'webview/compare/main.ts', charts: 'webview/charts/index.ts' },
    outdir: 'dist/webview', platform: 'browser', format: 'esm', splitting: true, chunkNames: 'shared-[hash]',
  },
]
const made = new Set()
const bundled = new Set()
for (const target of targets) {
  if (watch) await (await context(target)).watch()
  else {
    const { outputs, inputs } = (await build({ ...target, metafile: true })).metafile
    for (const path of Object.keys(outputs)) made.add(resolve(path))
    for (const path of Object.keys(inputs)) bundled.add(path)
  }
}

// The name of what pages share holds a hash of its content, so that older ones would gather and be packed.
for (const name of watch ? [] : readdirSync('dist/webview')) {
  const path = resolve('dist/webview', name)
  if (!made.has(path)) rmSync(path)
}
if (!watch) writeSupply(bundled)
