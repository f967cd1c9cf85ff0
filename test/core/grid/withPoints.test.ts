import assert from 'node:assert/strict'
import fc from 'fast-check'
import { applyGesture } from '../../../src/core/grid/applyGesture'
import type { Gesture } from '../../../src/core/grid/gesture'
import { withPoints, writesComma } from '../../../src/core/grid/withPoints'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { applyChanges } from '../../../src/core/text'

const text = `format: 1
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: turns}
entries:
  - id: a
    settings: {fork_rebound: 1 out}
`

function typed(gesture: Gesture): string {
  const { changes = [], refused } = applyGesture(readNotebook(text), [], withPoints(gesture))
  assert.equal(refused, undefined)
  return applyChanges(text, changes)
}

const figure = (row: string, words: string) => (withPoints({ kind: 'setCell', column: 'a', row, text: words }) as { text: string }).text

describe('a decimal comma', () => {
  it('is written by German, French and Danish, and not by English or what is no language', () => {
    assert.deepEqual(['de', 'de-AT', 'fr', 'da', 'en', 'en-GB', 'ja', 'x_y', ''].map(writesComma), [true, true, true, true, false, false, false, false, false])
  })

  it('becomes the point of the file in a position', () => {
    assert.match(typed({ kind: 'setBothLegs', column: 'a', row: 'settings/fork_rebound/left', text: '1,5 out' }), /fork_rebound: 1\.5 out/)
    assert.match(typed({ kind: 'setCell', column: 'a', row: 'settings/fork_rebound/left', text: '0,75 out' }), /left: 0\.75 out/)
  })

  it('becomes a point in measured values, with a unit and without, and in what is pasted', () => {
    assert.equal(figure('sag.front.extended', '152,5'), '152.5')
    assert.equal(figure('sag.front.extended', ' 6,25 in'), ' 6.25 in')
    assert.equal(figure('ride.front_tyre_hot', '2,345'), '2.345')
    assert.equal(figure('conditions.air', '-1,5 °C'), '-1.5 °C')
    const pasted = withPoints({ kind: 'setCells', cells: [{ column: 'a', row: 'sag.front.extended', text: '152,5' }, { column: 'a', row: 'reason', text: 'nur 3,5 Klicks' }] })
    assert.deepEqual((pasted as { cells: { text: string }[] }).cells.map((cell) => cell.text), ['152.5', 'nur 3,5 Klicks'])
  })

  it('stays in words and between the figures of a list', () => {
    assert.equal(figure('reason', '3,5'), '3,5')
    assert.equal(figure('ride.felt', '1,5 besser'), '1,5 besser')
    assert.equal(figure('bounce.front', '40,14'), '40,14')
    assert.equal(figure('sag.front.extended', '152,5,3'), '152,5,3')
    assert.equal(figure('sag.front.extended', '152,5, 3'), '152,5, 3')
    assert.equal(figure('sag.front.extended', '1.152,5'), '1.152,5')
    assert.equal(figure('nonsense', '3,5'), '3,5')
  })

  it('leaves whatever has no comma alone', () => {
    fc.assert(fc.property(fc.string().filter((words) => !words.includes(',')), (words) => figure('settings/fork_rebound/left', words) === words))
  })
})
