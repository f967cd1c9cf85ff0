import assert from 'node:assert/strict'
import fc from 'fast-check'
import { printHtmlTable, readHtmlTable, type HtmlNode } from '../../../webview/grid/model/htmlTable'

/** A node by its name and what is in it; texts are text nodes. */
function node(nodeName: string, inside: (HtmlNode | string)[] = [], attributes: Record<string, string> = {}): HtmlNode {
  const childNodes = inside.map((each) => (typeof each === 'string' ? { nodeName: '#text', textContent: each, childNodes: [] } : each))
  return { nodeName, textContent: null, childNodes, getAttribute: (name) => attributes[name] ?? null }
}
const cell = (...inside: (HtmlNode | string)[]) => node('TD', inside)
const table = (...rows: HtmlNode[][]) => node('BODY', [node('STYLE', ['td {}']), node('TABLE', [node('COLGROUP'), node('TBODY', rows.map((row) => node('TR', row)))])])

/** Our own printing, parsed as a browser would; it knows no other markup. */
function parsePrinted(html: string): HtmlNode {
  const plain = (text: string) => text.replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&quot;/g, '"').replace(/&amp;/g, '&')
  const rows = [...html.matchAll(/<tr>(.*?)<\/tr>/gs)].map(([, row]) => [...row!.matchAll(/<td>(.*?)<\/td>/gs)].map(([, inside]) => cell(...inside!.split('<br>').flatMap((line, at) => (at === 0 ? [plain(line)] : [node('BR'), plain(line)])))))
  return table(...rows)
}

describe('a table on the clipboard', () => {
  it('is read row by row, with lines within a cell and markup left out', () => {
    const rows = table([cell('3 out'), cell(node('SPAN', ['wet', node('BR'), '  and\n cold']))], [cell(node('P', ['one']), node('P', ['two'])), cell('\u00a0')])
    assert.deepEqual(readHtmlTable(rows), [['3 out', 'wet\nand cold'], ['one\ntwo', '']])
  })
  it('leaves the cells empty that a merged one covers', () => {
    const wide = node('TD', ['a'], { colspan: '2', rowspan: '2' })
    assert.deepEqual(readHtmlTable(table([wide, cell('b')], [cell('c')])), [['a', '', 'b'], ['', '', 'c']])
  })
  it('is not fooled by what a table claims, or by one within a cell', () => {
    assert.equal(readHtmlTable(table([node('TD', ['a'], { colspan: '99999999', rowspan: '-4' })]))![0]!.length, 100)
    assert.deepEqual(readHtmlTable(table([cell(node('TABLE', [node('TR', [cell('inner')])]))])), [['inner']])
    assert.equal(readHtmlTable(node('BODY', ['3 out'])), undefined)
    assert.equal(readHtmlTable(table([])), undefined)
  })
  it('is printed with nothing but text in its cells', () => {
    assert.equal(printHtmlTable([['<b>&"', 'a\r\nb']]), '<table><tbody><tr><td>&lt;b&gt;&amp;&quot;</td><td>a<br>b</td></tr></tbody></table>')
  })
  it('comes back as it was copied', () => {
    const text = fc.array(fc.constantFrom('3 out', '<td>', '&amp;', '"', 'ü', "it's", '</table>', '1 3/4'), { maxLength: 3 }).map((parts) => parts.join('\n'))
    fc.assert(fc.property(fc.array(fc.array(text, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 4 }), (rows) => {
      assert.deepEqual(readHtmlTable(parsePrinted(printHtmlTable(rows))), rows)
    }))
  })
})
