import assert from 'node:assert/strict'
import fc from 'fast-check'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { makeSheet } from '../../../src/core/sheet/makeSheet'
import type { Sheet } from '../../../src/core/sheet/sheet'
import { sheetHtml } from '../../../src/core/sheet/sheetHtml'
import { sheetSize } from '../../../src/core/sheet/sheetSize'
import { Choices } from '../grid/choices'
import { writeRandomNotebook } from '../grid/writeRandomNotebook'

const plain: Sheet = { machine: 'Tern 650', about: [], entry: 'run-1', marks: [], positions: [], measures: [], watch: [], cautions: [] }

/** A sheet in which a text stands wherever one can. */
const everywhere = (text: string): Sheet => ({
  machine: text, about: [text], entry: text, date: text, marks: [text], reason: text, notes: text, cautions: [text],
  positions: [{ label: text, rows: [{ label: text, where: text, stands: [{ leg: text, text }], counted: text, way: text, changed: text }] }],
  measures: [{ label: text, note: text, rows: [{ label: text, text }] }], watch: [{ severity: 'error', message: text }],
})

/** The tags of a page, without what stands in them. */
const tags = (html: string) => [...html.matchAll(/<\/?([a-z0-9!]+)[^>]*>/gi)].map(([, name]) => name!.toLowerCase())

describe('a sheet as a page', () => {
  it('stands by itself: no script, no picture, no address, and a policy that would load none', () => {
    const html = sheetHtml(everywhere('x'))
    assert.match(html, /^<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">/)
    assert.doesNotMatch(html, /<(script|img|link|iframe|object|svg|a)\b|\bon\w+=|url\(|@import|https?:|javascript:/i)
    assert.ok(html.endsWith('</html>\n'))
  })

  it('makes nothing of what a person wrote but text', () => {
    for (const text of ['<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '\'" onload="x', '&lt;b&gt;', '</style><style>*{display:none}', '</title>', ']]>', '<!--', '${x}']) {
      const html = sheetHtml(everywhere(text))
      assert.deepEqual(tags(html), tags(sheetHtml(everywhere('x'))), text)
      const said = html.match(/<p class="said">([^]*?)<\/p>/)![1]!
      assert.equal(said.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&#39;', '\'').replaceAll('&amp;', '&'), text)
    }
  })

  it('drops characters that print nothing and could hide what stands beside them, and keeps lines of prose', () => {
    const html = sheetHtml({ ...plain, reason: 'first\nsecond \u202e\u0007\u0000third' })
    assert.match(html, /<p class="said">first\nsecond third<\/p>/)
  })

  it('keeps its form for any notebook', () => {
    fc.assert(fc.property(fc.array(fc.nat(9999), { minLength: 200, maxLength: 900 }), (tape) => {
      const notebook = readNotebook(writeRandomNotebook(new Choices(tape)))
      for (const entry of notebook.entries) {
        const html = sheetHtml(makeSheet(notebook, entry))
        const open: string[] = []
        for (const [, end, name] of html.slice(html.indexOf('<body')).matchAll(/<(\/?)([a-z0-9]+)[^>]*>/g)) {
          if (!end) open.push(name!)
          else if (name !== 'html') assert.equal(open.pop(), name)
        }
        assert.deepEqual(open, [])
        assert.doesNotMatch(html, /undefined|NaN|\[object/)
      }
    }), { numRuns: 25, seed: Number(process.env['DETENT_SEED'] ?? 20260418) })
  })

  it('says so where nothing can be adjusted and nothing stands open', () => {
    assert.match(sheetHtml(plain), /Nothing on this machine can be adjusted\.[^]*Nothing stands open in the notebook\./)
  })

  it('marks legs that differ, and faults before things to watch', () => {
    const row = { label: 'Fork rebound', where: '', counted: '', way: '' }
    const html = sheetHtml({ ...plain, positions: [{ label: 'Fork', rows: [{ ...row, stands: [{ leg: 'left leg', text: '3' }, { leg: 'right leg', text: '6' }] }] }], watch: [{ severity: 'error', message: 'a' }, { severity: 'warning', message: 'b' }] })
    assert.match(html, /<td class="uneven"><div><b>3<\/b> <span>left leg<\/span><\/div><div><b>6<\/b>/)
    assert.match(html, /<li><b>Fault:<\/b> a<\/li><li><b>Watch:<\/b> b<\/li>/)
  })

  it('takes smaller type the more there is on it', () => {
    const row = { label: 'Fork rebound', where: 'fork caps', counted: 'counted out from closed', way: 'clockwise, seen from above, turns it in: more rebound damping', stands: [{ leg: '', text: '3' }] }
    const sized = (count: number) => sheetSize({ ...plain, positions: [{ label: 'Fork', rows: Array.from({ length: count }, () => row) }] })
    assert.deepEqual([1, 10, 18, 22, 60].map(sized), ['large', 'medium', 'small', 'tiny', 'tiny'])
  })
})
