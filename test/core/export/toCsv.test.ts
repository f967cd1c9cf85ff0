import assert from 'node:assert/strict'
import { exportNotebook } from '../../../src/core/export/exportNotebook'
import { toCsv } from '../../../src/core/export/toCsv'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { ternSketch } from '../derived/ternSketch'

const csv = (text: string) => toCsv(exportNotebook(readNotebook(text)))

/** A table without quoted cells, by column. */
function rows(text: string): Record<string, string>[] {
  const [head, ...body] = text.trimEnd().split('\n').map((line) => line.split(','))
  return body.map((cells) => Object.fromEntries(head!.map((name, at) => [name, cells[at]!])))
}

describe('toCsv', () => {
  it('has a row an entry and the names of the JSON flattened by dots', () => {
    const [asFound, run1] = rows(csv(ternSketch))
    assert.equal(asFound!.id, 'as-found')
    assert.equal(run1!.from, 'as-found')
    assert.equal(run1!['settings.fork_rebound.right.value'], '3')
    assert.equal(run1!['settings.fork_rebound.right.counted'], 'out')
    assert.equal(run1!['settings.shock_rebound.unit'], 'clicks')
    assert.equal(asFound!['derived.front.rider_sag_mm'], '38')
    assert.equal(asFound!['derived.front.rider_sag_mm_u'], '0.707106781187')
    assert.equal(asFound!['derived.geometry.rake_deg'], '24')
  })

  it('leaves absent numbers empty, in columns that are always there', () => {
    const [, run1] = rows(csv(ternSketch))
    assert.equal(run1!['derived.front.rider_sag_mm'], '')
    assert.equal(run1!['derived.bounce.rear.natural_hz'], '')
    assert.equal(csv('format: 1\n').split('\n')[0]!.split(',').length, 2 + 2 * 12 + 8 + 2 * 6 + 1 + 3)
  })

  it('makes texts harmless that a spreadsheet would take for a formula, and quotes what needs it', () => {
    for (const id of ['=1+1', '+1', '-1+2', '@SUM(A1)']) assert.equal(csv(`format: 1\nentries:\n  - id: '${id}'\n`).split('\n')[1]!.split(',')[0], `'${id}`)
    assert.match(csv('format: 1\nentries:\n  - id: "=a, \\"b\\""\n'), /^"'=a, ""b""",/m)
    assert.match(csv('format: 1\nadjusters:\n  "=x": {on: shock, controls: rebound, counts: clicks}\nentries:\n  - {id: a, settings: {"=x": 3}}\n').split('\n')[0]!, /,settings\.=x\.value,/)
  })

  it('keeps a number below zero a number', () => {
    const text = ternSketch.replace('fork_height: 5', 'fork_height: -2')
    assert.equal(rows(csv(text))[0]!['settings.fork_height.left.value'], '-2')
  })
})
