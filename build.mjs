// Builds everything that ships into dist/: the extension, the command line, the webviews, the words of other languages.
// `node build.mjs` builds once, `--watch` keeps building, `--generate` only writes the compiled schema check.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { build, context } from 'esbuild'
import Ajv from 'ajv'
import standalone from 'ajv/dist/standalone/index.js'

const watch = process.argv.includes('--watch')

/** The schema check is compiled ahead of time: it starts faster, and no host we run in has to allow `new Function`. */
function generateShapeCheck() {
  const schema = JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8'))
  const ajv = new Ajv.default({ allErrors: true, verbose: false, strict: true, allowUnionTypes: true, code: { source: true } })
  const check = ajv.compile(schema)
  mkdirSync('src/core/notebook/generated', { recursive: true })
  writeFileSync('src/core/notebook/generated/shape.cjs', standalone.default(ajv, check))
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
if (process.argv.includes('--generate')) process.exit(0)
bundleWords()

const common = {
  bundle: true,
  minify: !watch,
  sourcemap: watch ? 'linked' : false,
  target: 'es2022',
  logLevel: 'warning',
  legalComments: 'none',
}
const targets = [
  { ...common, entryPoints: { extension: 'src/editor/extension.ts' }, outdir: 'dist', platform: 'node', format: 'cjs', external: ['vscode'] },
  { ...common, entryPoints: { cli: 'src/cli/main.ts' }, outdir: 'dist', platform: 'node', format: 'cjs', banner: { js: '#!/usr/bin/env node' } },
  { ...common, entryPoints: { 'webview/grid': 'webview/grid/main.ts' }, outdir: 'dist', platform: 'browser', format: 'iife' },
  { ...common, entryPoints: { 'webview/turns': 'webview/turns/main.ts' }, outdir: 'dist', platform: 'browser', format: 'iife' },
  { ...common, entryPoints: { 'webview/compare': 'webview/compare/main.ts' }, outdir: 'dist', platform: 'browser', format: 'iife' },
  // Loaded by the pages above when charts are first shown, hence a file of its own and a module.
  { ...common, entryPoints: { 'webview/charts': 'webview/charts/index.ts' }, outdir: 'dist', platform: 'browser', format: 'esm' },
]
for (const target of targets) {
  if (watch) await (await context(target)).watch()
  else await build(target)
}
