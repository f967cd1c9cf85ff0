import assert from 'node:assert/strict'
import { positionWords } from '../../../src/core/adjusters/positionWords'
import { printPosition } from '../../../src/core/notation/position'
import { findUnit, units } from '../../../src/core/notation/units'
import { speak } from '../../../src/core/words/say'

describe('a position in words', () => {
  afterEach(() => speak())

  it('is in English what a file says, in every unit, from either end', () => {
    for (const unit of units) {
      for (const amount of [0, 0.25, 0.5, 1, 1.75, 2, 12.5]) {
        for (const end of ['closed', 'open', undefined] as const) {
          const position = end ? { amount, unit, end } : { amount, unit }
          assert.equal(positionWords(position), printPosition(position))
        }
      }
    }
    assert.equal(positionWords({ amount: 3, end: 'closed' }), '3 out')
  })

  it('is in the words of another language where that is spoken, one click apart from several', () => {
    speak({ '{0} out': '{0} heraus', click: 'Klick', clicks: 'Klicks', 'step {0}': 'Stufe {0}' })
    assert.equal(positionWords({ amount: 3, unit: findUnit('clicks')!, end: 'closed' }), '3 Klicks heraus')
    assert.equal(positionWords({ amount: 1, unit: findUnit('clicks')!, end: 'closed' }), '1 Klick heraus')
    assert.equal(positionWords({ amount: 4, unit: findUnit('steps')! }), 'Stufe 4')
  })
})
