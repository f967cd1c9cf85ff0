import assert from 'node:assert/strict'
import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { loadWASM, OnigScanner, OnigString } from 'vscode-oniguruma'
import { INITIAL, parseRawGrammar, Registry, type IGrammar } from 'vscode-textmate'

const ours = ['block', 'flow'].map((kind) => `syntaxes/positions.${kind}.tmLanguage.json`)

/** The editor's own grammar of YAML, where the embedded editor was fetched; else a small stand-in with its scopes. */
function yamlGrammars(): string[] {
  const cache = '.cache/workbench'
  const folders = existsSync(cache) ? readdirSync(cache) : []
  const found = folders.map((name) => join(cache, name, 'node_modules/code-server/lib/vscode/extensions/yaml/syntaxes')).find((folder) => existsSync(folder))
  return found ? readdirSync(found).map((name) => join(found, name)) : []
}

const standIn = 'test/language/yamlStandIn.tmLanguage.json'

async function load(yaml: readonly string[], injected: readonly string[]): Promise<IGrammar> {
  const raw = [...yaml, ...injected].map((file) => parseRawGrammar(readFileSync(file, 'utf8'), file))
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner: (sources) => new OnigScanner(sources), createOnigString: (text) => new OnigString(text) }),
    loadGrammar: async (scope) => raw.find(({ scopeName }) => scopeName === scope) ?? null,
    getInjections: (scope) => (scope === 'source.yaml' ? injected.map((file) => (JSON.parse(readFileSync(file, 'utf8')) as { scopeName: string }).scopeName) : []),
  })
  return (await registry.loadGrammar('source.yaml'))!
}

interface Token {
  text: string
  scopes: string[]
}

function tokensOf(grammar: IGrammar, text: string): Token[] {
  let stack = INITIAL
  return text.split('\n').flatMap((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, stack)
    stack = ruleStack
    return tokens.map(({ startIndex, endIndex, scopes }) => ({ text: line.slice(startIndex, endIndex), scopes }))
  })
}

/** What we colour in a text, as `number:3 unit:clicks direction:out`. */
function ourTokens(grammar: IGrammar, text: string): string {
  return tokensOf(grammar, text).flatMap(({ text: piece, scopes }) => {
    const own = scopes.filter((scope) => scope.includes('.detent.'))
    const kind = own.join().includes('numeric') ? 'number' : own.join().includes('unit') ? 'unit' : 'direction'
    return own.length > 0 ? [`${kind}:${piece}`] : []
  }).join(' ')
}

const coloured: [line: string, expected: string][] = [
  ['a: 3 clicks out', 'number:3 unit:clicks direction:out'],
  ['a: 1 click out', 'number:1 unit:click direction:out'],
  ['a: 1 3/4 turns in', 'number:1 3/4 unit:turns direction:in'],
  ['a: ¾ turn out', 'number:¾ unit:turn direction:out'],
  ['a: 1-1/2 turns in  # why', 'number:1-1/2 unit:turns direction:in'],
  ['a: 4 flats in', 'number:4 unit:flats direction:in'],
  ['a: 3 rings', 'number:3 unit:rings'],
  ['a: 12 mm', 'number:12 unit:mm'],
  ['a: 3 out', 'number:3 direction:out'],
  ['a:     3 out   ', 'number:3 direction:out'],
  ['a: 7 1/2 in', 'number:7 1/2 direction:in'],
  ['a: 5 out from fully closed', 'number:5 direction:out from fully closed'],
  ['a: 1 1/2', 'number:1 1/2'],
  ['a: 0.9 kgf/mm', 'number:0.9 unit:kgf/mm'],
  ['a: 207 lb', 'number:207 unit:lb'],
  ['a: -5 °C', 'number:-5 unit:°C'],
  ['a: {b: 3 out, c: 6 clicks in}', 'number:3 direction:out number:6 unit:clicks direction:in'],
  ['a: {b: {left: 3 out, right: 4 out}}', 'number:3 direction:out number:4 direction:out'],
  ['a: [24 %, 29 %]', 'number:24 unit:% number:29 unit:%'],
  ['a: {b: 3 out # why', 'number:3 direction:out'],
  ['- 3 out', 'number:3 direction:out'],
]

const untouched = [
  'a: 3 clicks out, felt good', 'a: 3 out of 10', 'a: three out', 'a: turned 3 out', 'a: 3 out"', 'a: closed', 'state: open', 'name: step 5', 'a: 25%', 'timeout: 5 m', 'a: 30s',
  'a: 3/4', 'a: 1.2.3', 'a: 2026-04-18', 'a: 10.0.0.1', 'a: 3', 'a: 3 in a row', 'ports: ["80:80"]', 'a: "3 out"', "a: '3 out'", '3 out: x', '{3 out: x}', 'a: |', '# 3 out',
  'a: {b: 3 out here, c: x}', 'a: 3  out', 'a: 5 N', 'run: make 3 rings', 'a: *b', 'a: &c 3', 'a: !t', 'a: 50 % off', 'if: 1 in list', 'a: 16 kgs of it',
]

const fetched = yamlGrammars()
const suites: [name: string, yaml: string[]][] = [...(fetched.length > 0 ? [['the editor’s own grammar of YAML', fetched] as [string, string[]]] : []), ['a stand-in for the grammar of YAML', [standIn]]]

describe('the grammar of positions and quantities', () => {
  before(async () => {
    const wasm = readFileSync(createRequire(join(process.cwd(), 'package.json')).resolve('vscode-oniguruma/release/onig.wasm'))
    await loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength))
  })

  for (const [name, yaml] of suites) {
    describe(`in ${name}`, () => {
      let withOurs: IGrammar
      let without: IGrammar
      before(async () => {
        withOurs = await load(yaml, ours)
        without = await load(yaml, [])
      })

      for (const [line, expected] of coloured) it(`colours ${line}`, () => assert.equal(ourTokens(withOurs, line), expected))

      for (const line of untouched) {
        it(`leaves ${line} alone`, () => assert.deepEqual(tokensOf(withOurs, line), tokensOf(without, line)))
      }

      it('leaves texts of several lines alone', () => {
        // The stand-in takes each line of a plain text for a text of its own.
        const plain = yaml[0] === standIn ? [] : ['a: some words\n  3 out\n  more']
        for (const text of ['a: |\n  3 out\n  b: 3 out', 'a: >-\n  3 clicks out', 'a: "x\n  3 out"', ...plain]) {
          assert.deepEqual(tokensOf(withOurs, text), tokensOf(without, text), text)
        }
      })

      it('changes nothing but the inside of the values it colours', () => {
        for (const file of readdirSync('samples').filter((each) => each.endsWith('.yaml'))) {
          const text = readFileSync(`samples/${file}`, 'utf8')
          const plain = (grammar: IGrammar) => tokensOf(grammar, text).flatMap(({ text: piece, scopes }) => [...piece].map((letter) => `${letter} ${scopes.filter((scope) => !scope.includes('.detent.')).join(' ')}`))
          const numbers = (each: string[]) => each.map((letter) => letter.replace(/ constant\.numeric\S*/g, ''))
          assert.deepEqual(numbers(plain(withOurs)), numbers(plain(without)), file)
        }
      })
    })
  }

  it('is held against the editor’s own grammar', function () {
    // The editor is fetched where its own tests run as well; in a fresh checkout the unit tests alone have none.
    if (fetched.length === 0) this.skip()
    assert.ok(fetched.some((file) => file.endsWith('yaml-1.2.tmLanguage.json')))
  })

  it('differs between its twins only in where a value ends', () => {
    const [block, flow] = ours.map((file) => (JSON.parse(readFileSync(file, 'utf8')) as { patterns: { match: string }[] }).patterns.map(({ match }) => match))
    const ends = ['(?=[\\t ]*$|[\\t ]+#)', '(?=[\\t ]*(?:[,\\]}]|$)|[\\t ]+#)']
    assert.deepEqual(block!.map((match) => match.slice(0, -ends[0]!.length)), flow!.map((match) => match.slice(0, -ends[1]!.length)))
    assert.ok(block!.every((match) => match.endsWith(ends[0]!)) && flow!.every((match) => match.endsWith(ends[1]!)))
  })

  it('is in the manifest, put into YAML alone', () => {
    const { contributes } = JSON.parse(readFileSync('package.json', 'utf8')) as { contributes: { grammars: { path: string; injectTo: string[]; scopeName: string }[] } }
    assert.deepEqual(contributes.grammars.map(({ path }) => path), ours.map((file) => `./${file}`))
    for (const { path, injectTo, scopeName } of contributes.grammars) {
      assert.deepEqual(injectTo, ['source.yaml'])
      assert.equal((JSON.parse(readFileSync(path, 'utf8')) as { scopeName: string }).scopeName, scopeName)
    }
  })
})
