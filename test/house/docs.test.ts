import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import Ajv from 'ajv'
import { parse } from 'yaml'
import { cautions } from '../../src/core/grid/cautions'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { descriptions } from '../../src/core/rules/index'
import { codeBlocks } from './docs/codeBlocks'
import { keysUnder, schemasUnder } from './docs/keysTable'
import { generated, groups, pathOfGroup, withSections } from './docs/sections'

const validate = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true }).compile(JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')) as object)
const documents = Object.entries(generated).map(([file, sections]) => ({ file, sections, text: readFileSync(file, 'utf8') }))

/** The paths of every key the schema describes: `*` for an item of a list and for names of one's own. */
function schemaPaths(path: readonly string[] = []): string[] {
  const below = keysUnder(path).flatMap((key) => [[...path, key].join('.'), ...schemaPaths([...path, key])])
  const anything = schemasUnder(path).some((node) => node.items ?? node.additionalProperties) ? schemaPaths([...path, '*']) : []
  return [...below, ...anything]
}

/** Every name that stands under `properties` anywhere in the schema's own text. */
function namesIn(schema: unknown): string[] {
  if (typeof schema !== 'object' || schema === null) return []
  return Object.entries(schema).flatMap(([key, value]) => [...(key === 'properties' ? Object.keys(value as object) : []), ...namesIn(value)])
}

/** The paths of every key a value has, in the same form. */
function pathsOf(value: unknown, path: readonly string[] = []): string[] {
  if (Array.isArray(value)) return value.flatMap((item) => pathsOf(item, [...path, '*']))
  if (typeof value !== 'object' || value === null) return []
  const known = keysUnder(path)
  return Object.entries(value).flatMap(([key, below]) => {
    const next = [...path, known.includes(key) ? key : '*']
    return [next.join('.'), ...pathsOf(below, next)]
  })
}

describe('the documents', () => {
  for (const { file, sections, text } of documents) {
    it(`${file} has its generated sections as the code makes them (npm run docs writes them anew)`, () => {
      const lines = new Set(text.split('\n'))
      const made = withSections(text, sections)
      assert.deepEqual(made.split('\n').filter((line) => !lines.has(line)), [], 'npm run docs would write these lines')
      assert.ok(made === text, 'npm run docs would take lines out, or move them')
    })

    for (const { info, text: block, line } of codeBlocks(text).filter((each) => each.info.startsWith('yaml'))) {
      if (info === 'yaml bad') continue
      it(`${file}, line ${line}: the notebook is read without an error and keeps to the schema`, () => {
        const findings = checkNotebook(readNotebook(block)).filter(({ severity }) => severity === 'error')
        assert.deepEqual(findings.map(({ code, message }) => `${code}: ${message}`), [])
        assert.ok(validate(parse(block)), JSON.stringify(validate.errors))
      })
    }
  }

  it('show every key of the schema in an example of the format', () => {
    const format = documents.find(({ file }) => file === 'schemas/FORMAT.md')!
    // A reading is the same thing at either end and for either load, and so is a weighing or a spring; it is enough to show it once by name.
    const once = (path: string) => path.replace(/(sag)\.(front|rear)\.(bike|rider)\./, '$1.front.bike.')
      .replace(/^machine\.(front|rear)\.(spring|stack)\b/, 'machine.front.$2').replace(/(?:machine|entries\.\*)\.(axle_loads)\.(bike|rider)\./, '$1.')
    const shown = new Set(codeBlocks(format.text).filter(({ info }) => info === 'yaml').flatMap(({ text }) => pathsOf(parse(text)).map(once)))
    assert.deepEqual(schemaPaths().map(once).filter((path) => !shown.has(path)), [])
    assert.ok(shown.size > 110, `${shown.size}`)
  })

  it('have every key of the schema in a table', () => {
    const told = new Set(groups.flatMap((group) => keysUnder(pathOfGroup(group))))
    const names = namesIn(JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')))
    assert.ok(names.length > 100)
    // The legs of a spring rate are told in its own line.
    assert.deepEqual(names.filter((name) => !told.has(name)), ['left', 'right'])
  })

  it('tell every code and every caution once', () => {
    const readme = documents.find(({ file }) => file === 'README.md')!.text
    for (const { code } of descriptions) assert.equal(readme.split(`| \`${code}\` |`).length, 2, code)
    // A turn list that is shown as an example carries them too.
    for (const caution of cautions) assert.equal(readme.split(`\n- ${caution}\n`).length, 2, caution)
  })
})

describe('withSections', () => {
  it('writes what is made between the markers and keeps everything else', () => {
    assert.equal(withSections('a\n<!-- x:begin -->\nold\n<!-- x:end -->\nb\n', { x: () => 'new' }), 'a\n<!-- x:begin -->\nnew\n<!-- x:end -->\nb\n')
  })

  it('refuses a document without the markers, or with two pairs of them', () => {
    assert.throws(() => withSections('a\n', { x: () => '' }), /‘x’ needs one pair/)
    const pair = '<!-- x:begin -->\n<!-- x:end -->\n'
    assert.throws(() => withSections(pair + pair, { x: () => '' }), /‘x’ needs one pair/)
  })
})
