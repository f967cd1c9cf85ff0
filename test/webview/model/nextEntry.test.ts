import assert from 'node:assert/strict'
import { nextEntryId, printDay } from '../../../webview/grid/model/nextEntry'

describe('the name of the next entry', () => {
  const cases: [ids: string[], next: string][] = [
    [[], 'run-1'], [['as-found'], 'run-1'], [['as-found', 'run-3'], 'run-4'], [['run-3', 'run-4', 'baseline'], 'run-5'],
    [['run-4', 'run-3'], 'run-5'], [['day2 run09'], 'day2 run10'], [['7'], '8'],
  ]
  for (const [ids, next] of cases) it(`after ${ids.join(', ') || 'none'} is ${next}`, () => assert.equal(nextEntryId(ids), next))

  it('comes with the day as a person’s calendar has it', () => {
    assert.equal(printDay(new Date(2026, 0, 5, 23, 59)), '2026-01-05')
  })
})
