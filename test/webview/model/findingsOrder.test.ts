import assert from 'node:assert/strict'
import { listedFindings, nextFinding } from '../../../webview/grid/model/findingsOrder'
import { GridModel } from '../../../webview/grid/model/gridModel'
import { arrived, finding, smallView } from './small'

describe('the order of findings', () => {
  const model = new GridModel()
  model.show(arrived(smallView(3, [
    finding(1, 'info'), finding(2, 'warning', 'laps', 'e0'), finding(3, 'warning', 'rebound', 'e2'), finding(4, 'error', 'rebound', 'e1'), finding(5, 'warning', undefined, 'e2'),
  ])))

  it('lists the worst first, then the newest entry, then from the top', () => {
    assert.deepEqual(listedFindings(model).map(({ id }) => id), [4, 5, 3, 2, 1])
  })
  it('counts by severity', () => {
    assert.deepEqual(model.view.findings.counts, { error: 1, warning: 3, info: 1 })
  })
  it('goes from finding to finding entry by entry, headers too, round and round', () => {
    let spot = { row: 1, column: 0 }
    const way = [1, 2, 3, 4, 5].map(() => {
      spot = nextFinding(model, spot, false)!
      return `${spot.row},${spot.column}`
    })
    assert.deepEqual(way, ['5,0', '1,1', '-1,2', '1,2', '5,0'])
  })
  it('goes back the same way', () => {
    assert.deepEqual(nextFinding(model, { row: 1, column: 1 }, true), { row: 5, column: 0 })
    assert.deepEqual(nextFinding(model, { row: 5, column: 0 }, true), { row: 1, column: 2 })
  })
  it('goes nowhere when there is none in the grid', () => {
    const bare = new GridModel()
    bare.show(arrived(smallView(2, [finding(1, 'info')])))
    assert.equal(nextFinding(bare, { row: 1, column: 0 }, false), undefined)
  })
})
