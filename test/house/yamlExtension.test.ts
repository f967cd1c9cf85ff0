import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { architectures } from '../../src/core/adjusters/architectures'
import { writeNotebook } from '../../src/core/adjusters/architectures/writeNotebook'
import type { Finding } from '../../src/core/finding'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { lineOf, lineStarts } from '../../src/core/text'
import { speaksOfShape, withoutTold } from '../../src/language/toldBesides'
import { plainYamlServer, yamlDocument, yamlServer } from './yamlServer'

const server = yamlServer()

/** What that extension lists, as `line: message`, lines from 1. */
async function told(text: string): Promise<{ lines: Set<number>; words: string[] }> {
  const problems = await server.doValidation(yamlDocument(text), false)
  for (const { source } of problems) assert.ok(speaksOfShape(source), source)
  return { lines: new Set(problems.map(({ range }) => range.start.line)), words: problems.map(({ range, message }) => `${range.start.line + 1}: ${message}`) }
}

const findingsOf = (text: string) => checkNotebook(readNotebook(text))
const isShape = ({ code }: Finding) => code === 'wrong-shape' || code === 'yaml-syntax'
/** Where a `|` stands in a text, and the text without it. */
function cursor(marked: string) {
  const at = marked.indexOf('|')
  const text = marked.replace('|', '')
  const document = yamlDocument(text)
  return { document, position: document.positionAt(at) }
}

const files = (folder: string, pattern: RegExp) => readdirSync(folder).filter((name) => pattern.test(name)).map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }))
const fixtures = files('test/fixtures/rules', /^(wrong-shape|yaml-syntax)\./)

describe('beside the common YAML extension', () => {
  describe('it finds nothing wrong with', () => {
    for (const { name, text } of files('samples', /\.setup\.yaml$/)) it(name, async () => assert.deepEqual((await told(text)).words, []))
    for (const each of architectures) it(`a notebook begun from ${each.key}`, async () => assert.deepEqual((await told(writeNotebook(each, { date: '2026-04-18', cautions: ['Slowly.'] }))).words, []))
  })

  describe('it finds what is wrong', () => {
    it('with a value that is none of the choices, in its own words and on the same line', async () => {
      const { words } = await told('format: 1\nmachine: {use: race}\n')
      assert.equal(words.length, 1)
      assert.match(words[0]!, /^2: Value is not accepted\. Valid values: "road", "track"/)
    })
    it('with an adjuster that lacks what it cannot do without', async () =>
      assert.deepEqual((await told('format: 1\nadjusters:\n  x: {on: fork}\n')).words, ['3: Missing property "controls".', '3: Missing property "counts".']))
    it('with a file that is no YAML', async () => assert.ok((await told('format: 1\nmachine: {name: a\n')).words.length > 0))
  })

  describe('nothing is told twice', () => {
    for (const { name, text } of fixtures) {
      it(`of ${name}`, async () => {
        const { lines } = await told(text)
        const starts = lineStarts(text)
        const left = withoutTold(findingsOf(text), starts, lines)
        for (const finding of left.filter(isShape)) assert.ok(!lines.has(lineOf(starts, finding.range.start)), finding.message)
      })
    }

    it('nor is anything left untold: what it does not see is ours to say', async () => {
      let [dropped, kept] = [0, 0]
      for (const { text } of fixtures) {
        const { lines } = await told(text)
        const [all, left] = [findingsOf(text).filter(isShape), withoutTold(findingsOf(text), lineStarts(text), lines).filter(isShape)]
        dropped += all.length - left.length
        kept += left.length
        assert.ok(all.length === 0 || lines.size > 0 || left.length === all.length)
      }
      // Two documents in one file it lets pass.
      assert.ok(dropped >= 20 && kept >= 1, `${dropped} dropped, ${kept} kept`)
    })

    it('and whatever is not about the shape stays ours', async () => {
      const text = 'format: 1\nadjusters: {r: {on: shock, controls: rebound, counts: clicks, range: 20, place: 5}}\nentries: [{id: a, as_found: true, settings: {r: 30}, verdict: kep}]\n'
      const { lines } = await told(text)
      assert.deepEqual(findingsOf(text).map(({ code }) => code), ['wrong-shape', 'beyond-range', 'wrong-shape'])
      assert.deepEqual(withoutTold(findingsOf(text), lineStarts(text), lines).map(({ code }) => code), ['beyond-range'])
    })

    it('everything is ours where no such extension speaks', () => {
      for (const { text } of fixtures) assert.deepEqual(withoutTold(findingsOf(text), lineStarts(text), new Set()), findingsOf(text))
      for (const source of [undefined, 'detent', 'eslint', 'yamllint']) assert.equal(speaksOfShape(source), false)
      for (const source of ['YAML', 'yaml-schema: Setup notebook']) assert.equal(speaksOfShape(source), true)
    })
  })

  describe('by the schema we hand it', () => {
    it('it says what a key is for', async () => {
      const { document, position } = cursor('format: 1\nmachine:\n  service_man|ual: x\n')
      assert.match(JSON.stringify((await server.doHover(document, position))?.contents), /Which service manual applies/)
    })
    it('it completes keys and choices', async () => {
      const labels = async (marked: string) => {
        const { document, position } = cursor(marked)
        return (await server.doComplete(document, position, false)).items.map(({ label }) => label)
      }
      assert.ok((await labels('format: 1\nmachine:\n  na|\n')).includes('service_manual'))
      assert.deepEqual((await labels('format: 1\nmachine:\n  use: |\n')).sort(), ['adventure', 'enduro', 'motocross', 'road', 'touring', 'track'])
    })
  })
})

describe('a notebook in an editor that has only the server', () => {
  const line = /`(# yaml-language-server: \$schema=\S+)`/.exec(readFileSync('README.md', 'utf8'))![1]!
  const path = line.slice(line.indexOf('=') + 1)
  const plain = plainYamlServer({ [`file:///workshop/${path}`]: readFileSync('schemas/setup.schema.json', 'utf8') })
  plain.configure({ validate: true, hover: true, completion: true, yamlVersion: '1.2', schemas: [] })

  it('is checked by the line that the README tells, and not without it', async () => {
    const wrong = 'format: 1\nmachine: {name: a, use: sailing}\n'
    assert.equal((await plain.doValidation(yamlDocument(`${line}\n${wrong}`), false)).length, 1)
    assert.equal((await plain.doValidation(yamlDocument(wrong), false)).length, 0)
    for (const { text } of files('samples', /\.setup\.yaml$/)) assert.deepEqual(await plain.doValidation(yamlDocument(`${line}\n${text}`), false), [])
  })

  it('names a file of the package', () => {
    assert.ok(path.startsWith('node_modules/detent/'))
    assert.ok(readFileSync(path.slice('node_modules/detent/'.length)).length > 0)
  })
})

describe('the schema', () => {
  it('is known by one name, whatever the version', () => {
    assert.equal((JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')) as { $id: string }).$id, 'urn:detent:schema:setup:1')
  })
})
