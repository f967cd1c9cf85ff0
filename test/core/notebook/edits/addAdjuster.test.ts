import assert from 'node:assert/strict'
import { addAdjuster, type NewAdjuster } from '../../../../src/core/notebook/edits/addAdjuster'
import { Refusal } from '../../../../src/core/notebook/edits/refusal'
import { readNotebook } from '../../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../../src/core/text'

const rebound: NewAdjuster = { id: 'fork_rebound', on: 'fork', legs: ['left', 'right'], controls: 'rebound', counts: 'clicks', range: '20' }
const line = 'fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}'

function added(text: string, adjuster = rebound): string {
  return applyChanges(text, addAdjuster(readNotebook(text), adjuster))
}

describe('adding an adjuster', () => {
  it('puts a line behind the last one, and touches nothing else', () => {
    const before = 'format: 1\nadjusters:\n  shock_rebound: {on: shock, controls: rebound, counts: clicks}  # kept\nentries: []\n'
    assert.equal(added(before), before.replace('# kept\n', `# kept\n  ${line}\n`))
  })

  it('makes the group where there is none, and writes no range that nobody counted', () => {
    const text = added('format: 1\n', { ...rebound, legs: [], range: ' ' })
    assert.equal(text, 'format: 1\nadjusters:\n  fork_rebound: {on: fork, controls: rebound, counts: clicks}\n')
  })

  it('keeps the line ends of the file', () => {
    assert.equal(added('format: 1\r\nadjusters:\r\n  a: {on: shock, controls: rebound, counts: clicks}\r\n').match(/(?<!\r)\n/g), null)
  })

  it('is found in order by every rule', () => {
    assert.deepEqual(checkNotebook(readNotebook(added('format: 1\n'))), [])
  })

  it('refuses a name that is taken or cannot be one, and a range that is no number', () => {
    for (const change of [{ id: 'a' }, { id: '' }, { id: '1st' }, { id: 'a: b' }, { id: 'x\ny' }, { range: 'many' }, { range: '-3' }]) {
      assert.throws(() => addAdjuster(readNotebook('adjusters:\n  a: {on: shock, controls: rebound, counts: clicks}\n'), { ...rebound, ...change }), Refusal, JSON.stringify(change))
    }
  })
})
