import assert from 'node:assert/strict'
import { labelLines, labelNeeds, labelsWidth } from '../../../webview/grid/model/labels'

/** Ten px a letter, so that one can reckon along. */
const measure = (text: string) => text.length * 10
const short = { label: 'Felt' }
const leg = { label: 'Fork rebound', detail: 'left', unit: 'clicks out' }

describe('the column of labels', () => {
  it('is as wide as the longest label, within bounds', () => {
    assert.equal(labelNeeds(leg, measure), 28 + 260 + 12)
    assert.equal(labelsWidth([short, leg], 1200, undefined, measure), 300)
    assert.equal(labelsWidth([short], 1200, undefined, measure), 180)
    assert.equal(labelsWidth([{ label: 'x'.repeat(90) }], 1200, undefined, measure), 340)
  })
  it('leaves a narrow page to the entries, and is as a person has drawn it within the page', () => {
    assert.equal(labelsWidth([leg], 600, undefined, measure), 228)
    assert.equal(labelsWidth([leg], 600, 400, measure), 400)
    assert.equal(labelsWidth([leg], 600, 600, measure), 420)
    assert.equal(labelsWidth([leg], 600, 1, measure), 120)
  })
  it('has labels on as many lines as they need, part by part', () => {
    assert.equal(labelLines(leg, 300, measure), 1)
    assert.equal(labelLines(leg, 299, measure), 2)
    assert.equal(labelLines(leg, 160, measure), 3)
    assert.equal(labelLines({ label: 'Shock compression, low speed' }, 208, measure), 2)
    assert.equal(labelLines({ label: 'a bb ccc dddd' }, 68, measure), 3)
  })
  it('breaks a word that is longer than a line, and ends at some time', () => {
    assert.equal(labelLines({ label: 'x'.repeat(30) }, 178, measure), 2)
    assert.equal(labelLines({ label: 'x'.repeat(3000) }, 178, measure), 4)
  })
})
