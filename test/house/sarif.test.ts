import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import Ajv from 'ajv'
import { checkFile } from '../../src/cli/checkedFile'
import { reportAsSarif } from '../../src/cli/checkSarif'
import { descriptions } from '../../src/core/rules/index'
import { applyChanges, lineStarts } from '../../src/core/text'

// The schema that OASIS publishes with the standard, as the package carries it. It is written in JSON Schema draft 4;
// apart from `id` it uses no word that has come to mean something else.
const { $schema: draft, id, ...schema } = JSON.parse(readFileSync('node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json', 'utf8')) as Record<string, unknown>
const reference = /^(?:[a-z][a-z\d+.-]*:)?(?:[\w\-.~!$&'()*+,;=:@/?#]|%[\dA-F]{2})*$/i
const validate = new Ajv({ allErrors: true, strict: false, unicodeRegExp: false, formats: { uri: /^[a-z][a-z\d+.-]*:\S+$/i, 'uri-reference': reference, 'date-time': true } }).compile(schema)

interface Region { startLine: number; startColumn: number; endLine: number; endColumn: number }
interface Sarif {
  runs: [{
    tool: { driver: { rules: { id: string; shortDescription: { text: string }; fullDescription: { text: string }; defaultConfiguration: { level: string } }[] } }
    columnKind: string
    results: {
      ruleId: string; ruleIndex: number; level: string; message: { text: string }
      locations: [{ physicalLocation: { artifactLocation: { uri: string }; region: Region } }]
      partialFingerprints: Record<string, string>
      fixes?: { description: { text: string }; artifactChanges: [{ replacements: { deletedRegion: Region; insertedContent?: { text: string } }[] }] }[]
    }[]
  }]
}

function sarifOf(text: string, path = 'tern.setup.yaml'): Sarif['runs'][0] {
  const log = JSON.parse(reportAsSarif([checkFile(path, text)])) as Sarif
  assert.ok(validate(log), JSON.stringify(validate.errors, null, 1))
  return log.runs[0]
}

const tern = `format: 1
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
entries:
  - id: as-found
    as_found: true
    settings: {fork_rebound: {left: 3 out, right: 6 in}}
  - id: as-found
    settings: {fork_rebound: 3 out, "𝄞 {0}": 4}
    reason: right leg brought to the left
`
const read = (name: string) => readFileSync(`samples/${name}.setup.yaml`, 'utf8')
const samples = ['curlew-900', 'heron-980', 'snipe-350', 'tern-650', 'wren-250'].map(read)

/** The offset a line and a column in UTF-16 units stand for, as a reader of the standard would work it out. */
function offsetAt(text: string, line: number, column: number): number {
  return lineStarts(text)[line - 1]! + (line === 1 && text.startsWith('\ufeff') ? 1 : 0) + column - 1
}

describe('detent check --format sarif', () => {
  it('is checked against the published schema, which refuses what is no SARIF', () => {
    assert.match(`${draft} ${id}`, /draft-04.*sarif-2\.1\.0/)
    assert.equal(validate({ version: '2.1.0', runs: [{ tool: { driver: { name: 'x' } }, results: [{ ruleId: 'x' }] }] }), false)
    assert.equal(validate({ version: '2.1.0', runs: [{ tool: { driver: { name: 'x' } }, results: [{ message: { text: 'x' }, locations: [{ physicalLocation: { artifactLocation: { uri: 'a b' } } }] }] }] }), false)
  })

  it('is valid for every sample, for a clean notebook, for a broken one and for nothing at all', () => {
    for (const text of [...samples, 'format: 1\n', 'machine: {name: "Tern\n', '', '\ufeffentries: [[[', tern, tern.replaceAll('\n', '\r\n')]) sarifOf(text)
    assert.ok(validate(JSON.parse(reportAsSarif([]))))
  })

  it('tells of every rule what it says, why, and how loud it is by default', () => {
    const { rules } = sarifOf(tern).tool.driver
    assert.deepEqual(rules.map((rule) => rule.id), descriptions.map(({ code }) => code))
    const legs = rules.find((rule) => rule.id === 'legs-differ')!
    assert.equal(legs.shortDescription.text, 'The two legs of a pair stand differently.')
    assert.match(legs.fullDescription.text, /^A matched pair/)
    assert.deepEqual(['legs-differ', 'beyond-range', 'bottomed'].map((code) => rules.find((rule) => rule.id === code)!.defaultConfiguration.level), ['warning', 'error', 'note'])
  })

  it('points at the text a finding is about, in lines and columns from 1 and in UTF-16 units, with or without a byte order mark', () => {
    for (const text of [tern, `\ufeff${tern}`, tern.replaceAll('\n', '\r\n'), ...samples]) {
      const { findings } = checkFile('', text)
      const { results, columnKind } = sarifOf(text)
      assert.equal(columnKind, 'utf16CodeUnits')
      assert.equal(results.length, findings.length)
      results.forEach(({ ruleId, ruleIndex, locations: [{ physicalLocation: { region } }] }, at) => {
        assert.equal(descriptions[ruleIndex]!.code, ruleId)
        const { start, end } = findings[at]!.range
        assert.deepEqual([offsetAt(text, region.startLine, region.startColumn), offsetAt(text, region.endLine, region.endColumn)], [start, end], ruleId)
      })
    }
    const stranger = sarifOf(tern).results.find(({ ruleId }) => ruleId === 'unknown-adjuster')!
    assert.deepEqual(stranger.locations[0].physicalLocation.region, { startLine: 9, startColumn: 37, endLine: 9, endColumn: 45 })
  })

  it('carries fixes that do in the text what the fix of the finding does', () => {
    let compared = 0
    for (const text of [tern, `\ufeff${tern}`, ...samples]) {
      const fixes = checkFile('', text).findings.flatMap((finding) => finding.fixes ?? [])
      const told = sarifOf(text).results.flatMap((result) => result.fixes ?? [])
      assert.deepEqual(told.map(({ description }) => description.text.replaceAll('{{', '{').replaceAll('}}', '}')), fixes.map(({ title }) => title))
      told.forEach(({ artifactChanges: [{ replacements }] }, at) => {
        const changes = replacements.map(({ deletedRegion: region, insertedContent }) => ({
          start: offsetAt(text, region.startLine, region.startColumn), end: offsetAt(text, region.endLine, region.endColumn), text: insertedContent?.text ?? '',
        }))
        assert.equal(applyChanges(text, changes), applyChanges(text, fixes[at]!.changes))
        compared++
      })
    }
    assert.ok(compared >= 6, `${compared} fixes compared`)
  })

  it('places what stands behind the last line end in the last line', () => {
    const { results } = sarifOf('machine: {name: "Tern\n')
    for (const { locations: [{ physicalLocation: { region } }] } of results) assert.ok(region.startLine <= 1, JSON.stringify(region))
  })

  it('doubles braces in messages, which would be placeholders', () => {
    assert.match(sarifOf(tern).results.find(({ ruleId }) => ruleId === 'unknown-adjuster')!.message.text, /\{\{0\}\}/)
  })

  it('names files by relative references with everything odd percent-encoded', () => {
    const uri = (path: string) => sarifOf(tern, path).results[0]!.locations[0].physicalLocation.artifactLocation.uri
    assert.equal(uri('./garage/grün 1#2%.setup.yaml'), 'garage/gr%C3%BCn%201%232%25.setup.yaml')
    assert.equal(uri('garage\\a:b.setup.yaml'), 'garage/a%3Ab.setup.yaml')
    assert.equal(uri('../a.setup.yaml'), '../a.setup.yaml')
    assert.equal(uri('/home/me/a b.setup.yaml'), 'file:///home/me/a%20b.setup.yaml')
    assert.equal(uri('C:\\me\\a.setup.yaml'), 'file:///C:/me/a.setup.yaml')
    assert.equal(uri('half \ud834.yaml'), 'half%20%EF%BF%BD.yaml')
  })

  it('gives findings fingerprints of their own that stay when lines are added above or the line ends change', () => {
    const prints = (text: string) => sarifOf(text).results.map(({ partialFingerprints }) => partialFingerprints['detentFinding/v1']!)
    for (const text of [tern, ...samples]) {
      const before = prints(text)
      assert.equal(new Set(before).size, before.length)
      assert.deepEqual(prints(`# a comment\n\n${text}`), before)
      assert.deepEqual(prints(text.replaceAll('\n', '\r\n')), before)
    }
    const without = prints(tern)
    const more = prints(tern.replace('    reason:', '    vedict: keep\n    reason:'))
    assert.equal(more.length, without.length + 1)
    assert.ok(without.every((print) => more.includes(print)))
  })
})
