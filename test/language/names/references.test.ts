import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { definitionAt, highlightsAt, referencesAt } from '../../../src/language/names/references'
import { marked } from '../marked'

const notebook = `format: 1
adjusters:
  rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks}
  'height': {on: fork, controls: fork_height, counts: mm}
entries:
  - id: a
    settings: {rebound: 3, "height": 5}
    remarks: {rebound/left: sticks, sag.front: by hand}
  - id: b
    from: a
    settings:
      rebound: 4
      nothing: 1
accepted:
  - {finding: legs-differ, entry: a, about: rebound/right, reason: looked at}
  - {finding: legs-differ, entry: b, about: settings/rebound, reason: looked at}
`

/** The places, as `line:column text`, lines and columns counted from 1. */
function places(text: string, ranges: { start: number; end: number }[]): string[] {
  return ranges.map(({ start, end }) => {
    const lines = text.slice(0, start).split('\n')
    return `${lines.length}:${lines.at(-1)!.length + 1} ${text.slice(start, end)}`
  })
}

function at(what: string): { text: string; offset: number } {
  return marked(notebook.replace(what.replace('|', ''), what))
}

function checkDefinition(what: string, expected: string[]) {
  const { text, offset } = at(what)
  assert.deepEqual(places(text, definitionAt(readNotebook(text), offset)?.to ?? []), expected)
}

function checkReferences(what: string, expected: string[]) {
  const { text, offset } = at(what)
  assert.deepEqual(places(text, referencesAt(readNotebook(text), offset, false)), expected)
}

describe('definitionAt', () => {
  it('leads from a setting to its adjuster', () => checkDefinition('reb|ound: 4', ['3:3 rebound']))
  it('leads from a quoted setting to its quoted adjuster', () => checkDefinition('"hei|ght"', ['4:4 height']))
  it('leads from the end of a name too', () => checkDefinition('rebound|: 4', ['3:3 rebound']))
  it('leads from a remark about one leg to the adjuster', () => checkDefinition('re|bound/left', ['3:3 rebound']))
  it('leads from an acceptance to the adjuster', () => checkDefinition('reb|ound/right', ['3:3 rebound']))
  it('leads from an acceptance by its row to the adjuster', () => checkDefinition('settings/reb|ound', ['3:3 rebound']))
  it('leads from `from` to the entry', () => checkDefinition('from: |a', ['6:9 a']))
  it('leads from an acceptance to the entry', () => checkDefinition('entry: b|', ['9:9 b']))
  it('leads from what an adjuster sits inside of to that', () => {
    const { text, offset } = marked('adjusters:\n  hex: {on: shock, controls: rebound, counts: turns}\n  screw: {on: shock, controls: rebound, counts: clicks, inside: h|ex}\n')
    assert.deepEqual(places(text, definitionAt(readNotebook(text), offset)!.to), ['2:3 hex'])
  })
  it('leads from a definition to itself', () => checkDefinition('id: |b', ['9:9 b']))
  it('leads nowhere from a leg', () => checkDefinition('rebound/le|ft', []))
  it('leads nowhere from an adjuster that is not defined', () => checkDefinition('noth|ing', []))
  it('leads nowhere from a remark about something else', () => checkDefinition('sag.fr|ont', []))
  it('leads nowhere from a value', () => checkDefinition('rebound: |4', []))
  it('leads to every entry of that name', () => {
    const { text, offset } = marked('entries:\n  - id: a\n  - id: a\n  - from: |a\n')
    assert.deepEqual(places(text, definitionAt(readNotebook(text), offset)!.to), ['2:9 a', '3:9 a'])
  })
  it('leads from inside an anchored group, and not from its alias', () => {
    const { text, offset } = marked('adjusters:\n  a: {on: fork, controls: rebound, counts: clicks}\nentries:\n  - settings: &s {|a: 1}\n  - settings: *s\n')
    const read = readNotebook(text)
    assert.deepEqual(places(text, definitionAt(read, offset)!.to), ['2:3 a'])
    assert.equal(definitionAt(read, text.indexOf('*s') + 1), undefined)
  })
})

describe('referencesAt', () => {
  it('finds every place of an adjuster', () =>
    checkReferences('  reb|ound: {on', ['7:16 rebound', '8:15 rebound', '12:7 rebound', '15:45 rebound', '16:54 rebound']))
  it('finds every place of an entry', () => checkReferences('id: |a', ['10:11 a', '15:35 a']))
  it('finds places of what is not defined', () => checkReferences('not|hing', ['13:7 nothing']))
  it('finds nothing elsewhere', () => checkReferences('form|at', []))
  it('tells the definition from its uses', () => {
    const { text, offset } = at('from: |a')
    assert.deepEqual(highlightsAt(readNotebook(text), offset).map(({ role }) => role), ['definition', 'reference', 'reference'])
    assert.equal(referencesAt(readNotebook(text), offset, true).length, 3)
  })
})
