// Builds everything that ships into dist/: the extension, the command line, the webviews.
// `node build.mjs` builds once, `--watch` keeps building, `--generate` only writes the compiled schema check.
import { readFileSync, writeFileSync, mkdirSync } from 'node:fs'
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

generateShapeCheck()
if (process.argv.includes('--generate')) process.exit(0)

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
