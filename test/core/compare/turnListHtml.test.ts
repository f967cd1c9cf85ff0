import assert from 'node:assert/strict'
import { turnList } from '../../../src/core/compare/turnList'
import { turnListHtml } from '../../../src/core/compare/turnListHtml'
import { turnListText } from '../../../src/core/compare/turnListText'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const notebook = (text: string) => readNotebook(`format: 1
machine: {name: ${text.includes('<') ? JSON.stringify(text) : 'Tern 650'}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10, place: ${JSON.stringify(text)}, faces: up, worked_from: above}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
  - {id: a, settings: {fork_rebound: {left: 3 out, right: 6 out}, shock_rebound: 7 out}}
  - {id: b, settings: {fork_rebound: 5 out, shock_rebound: 30 out}, reason: ${JSON.stringify(text)}}
`)
const html = (text: string, from = 0, to = 1) => {
  const read = notebook(text)
  return turnListHtml(turnList({ notebook: read, entry: read.entries[from]!, file: text }, { notebook: read, entry: read.entries[to]!, file: text }))
}
const plain = (page: string) => page.replace(/<style>[^]*?<\/style>/, '').replace(/<[^>]*>/g, '\n').replace(/&#(\d+);/g, (_, code) => String.fromCharCode(Number(code)))

describe('the turn list as a page', () => {
  it('says all that the text says', () => {
    const read = notebook('fork caps')
    const list = turnList({ notebook: read, entry: read.entries[0]!, file: 'x' }, { notebook: read, entry: read.entries[1]!, file: 'x' })
    const squeezed = (words: string) => words.replace(/[\s()[\],:·!-]+/g, '')
    const said = squeezed(plain(turnListHtml(list)))
    for (const line of turnListText(list).split('\n')) assert.ok(said.includes(squeezed(line.replace(/^\s*(?:\[ \]|!|-)/, ''))), line)
  })

  it('has a box for each turn and a drawing for each way, and what cannot be reached first', () => {
    const page = html('fork caps')
    assert.equal(page.match(/class="box"/g)!.length, 3, 'the stand and two legs')
    assert.equal(page.match(/<svg /g)!.length, 2)
    assert.ok(page.indexOf('Cannot be reached') < page.indexOf('Take care') && page.indexOf('Take care') < page.indexOf('class="box"'))
  })

  it('holds what a person wrote as text, and loads and runs nothing', () => {
    const page = html('<img src=x onerror=alert(1)> & "fork\' caps</style><script>alert(1)</script>')
    assert.doesNotMatch(page, /<img|<script|<\/style>[^]*<\/style>/)
    assert.match(page, /default-src 'none'/)
    assert.match(plain(page), /<img src=x onerror=alert\(1\)> & "fork' caps/)
  })

  it('says why there is no list, and that there is nothing to turn', () => {
    assert.match(html('x', 0, 0), /Nothing to turn: it stands there already/)
    const other = readNotebook('machine: {name: Heron}\nentries: [{id: a}]\n')
    const read = notebook('x')
    assert.match(plain(turnListHtml(turnList({ notebook: read, file: 'x' }, { notebook: other, file: 'y' }))), /These are two machines/)
  })
})
